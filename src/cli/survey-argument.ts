import { latestRound, roundsInOrder } from '#lib/core/survey/leak-state.ts';
import type { Round, Survey } from '#lib/core/survey/schema.ts';
import { ok, refuse } from '#lib/core/units/result.ts';
import { readSurveyFile, type OpenedFile } from '#lib/storage/file/read-survey-file.ts';
import { complain, type Answer } from './complaint.ts';
import type { Io } from './io.ts';
import { may } from './options.ts';
import { oneLine } from './plain-text.ts';
import { words } from './reading.ts';

export const ROUND_OPTION = {
	round: may('First round', 'id or name of a round; the latest when not given', words)
};

export const SURVEY_WORD = {
	as: 'FILE',
	says: 'a survey file, or the plain JSON of a survey; it is only read'
};

/** Opens the survey that a command was given the path of. */
export async function openSurvey(path: string, io: Io): Promise<Answer<OpenedFile>> {
	const about = `"${oneLine(path)}"`;
	const bytes = await io.readFile(path);
	if (!bytes.ok) return complain(bytes.error, about);
	const opened = await readSurveyFile(bytes.value);
	return opened.ok ? opened : complain(opened.error, about);
}

/** The round that was asked for, by id or by name; the latest where none was. */
export function chooseRound(survey: Survey, asked: string | undefined): Answer<Round> {
	if (asked === undefined) {
		const latest = latestRound(survey);
		return latest ? ok(latest) : complain(refuse('survey-without-round').error);
	}
	const rounds = roundsInOrder(survey);
	const byId = rounds.find(({ id }) => id === asked);
	if (byId) return ok(byId);
	const named = rounds.filter(({ name }) => name.trim() === asked.trim());
	const [only, second] = named;
	if (only && !second) return ok(only);
	const list = (second ? named : rounds).map(({ id, name }) => `${oneLine(name)} (${id})`);
	return complain(
		refuse(second ? 'round-ambiguous' : 'round-unknown', {
			round: oneLine(asked),
			rounds: list.join(', ')
		}).error
	);
}

/** What was set aside on opening, said beside every answer. */
export function openingNotes({ quarantined, conflicts }: OpenedFile): string[] {
	const notes: string[] = [];
	if (quarantined.length > 0)
		notes.push(
			`Records of the file that could not be read and are left out: ${quarantined.length}.`
		);
	if (conflicts.length > 0)
		notes.push(`Changes in the file that no longer applied and are left out: ${conflicts.length}.`);
	return notes;
}
