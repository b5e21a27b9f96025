import { fold, foldOnto } from '#lib/core/survey/log.ts';
import { readSurveyFile } from '#lib/storage/file/read-survey-file.ts';
import { writeSurveyFile } from '#lib/storage/file/write-survey-file.ts';
import { median, type Row } from './measure.ts';
import { syntheticLog } from './synthetic.ts';

const LEAKS = 10_000;

export async function opening(): Promise<Row[]> {
	const log = syntheticLog(LEAKS);
	const folded = fold(log);
	if (!folded.ok) throw new Error(folded.error.code);
	const { survey } = folded.value;
	const text = JSON.stringify(survey);
	const parse = { what: 'JSON.parse of the survey', ms: await median(9, () => JSON.parse(text)) };
	const replay = await median(5, () => fold(log));
	const tail = log.slice(-50);
	const checkpoint = await median(5, () =>
		foldOnto(
			structuredClone(survey),
			tail.filter(({ body }) => body.kind !== 'add-leak')
		)
	);
	const bytes = await writeSurveyFile({
		commands: log,
		survey,
		blobs: [],
		savedAt: '2026-01-05T08:00:00Z'
	});
	const file = await median(3, () => readSurveyFile(bytes));
	return [
		{ what: `open ${LEAKS} leaks from a checkpoint`, ms: checkpoint, against: parse },
		{ what: `replay the whole log of ${LEAKS} leaks`, ms: replay, against: parse },
		{ what: `open the survey file of ${LEAKS} leaks, checksums and all`, ms: file, against: parse }
	];
}
