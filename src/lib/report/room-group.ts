import { roomCautions, type Caution } from '../core/mend/cautions.ts';
import { roomChecksOf, type RoomFinding } from '../core/mend/room-findings.ts';
import { coverage } from '../core/survey/coverage.ts';
import type { Survey } from '../core/survey/schema.ts';
import { coverageSentence } from '../words/coverage.ts';
import { compressorRoom } from '../words/compressor-room.ts';
import { files } from '../words/files.ts';
import { ROOM_POINT_WORDS, roomActionWords, roomFoundWords, roomTag } from '../words/room.ts';
import type { CautionLine, JobGroup, JobRow, PrintFormat } from './model.ts';

/** The findings of the compressor room as a group of jobs; nothing when nothing was found. */
export function roomGroup(findings: readonly RoomFinding[], format: PrintFormat): JobGroup[] {
	if (findings.length === 0) return [];
	const open = findings.filter(({ done }) => !done).length;
	return [
		{
			heading: 'Compressor room',
			valve: compressorRoom.madeSafe,
			valveKnown: false,
			facts: [compressorRoom.rotaryScrews],
			jobCount: `${format.count(open)} of ${format.count(findings.length)} to do`,
			costPerYear: '',
			steps: boxes('Mains locked off', 'Cooled', 'Vented', 'Zero proved', 'Restored'),
			cautions: roomCautions().map(line),
			rows: findings.map(roomRow)
		}
	];
}

/** What was and was not walked, plan by plan, and what was looked at in the compressor room. */
export function walkedLines(survey: Survey, roundId: string, format: PrintFormat): string[] {
	const plans = coverage(survey, roundId);
	const checks = roomChecksOf(survey, roundId);
	const count = (outcome: string) =>
		format.count(checks.filter((check) => check.outcome === outcome).length);
	return [
		...plans.map((plan) => coverageSentence(plan, format)),
		...(plans.length > 0 ? [files.elsewhere] : []),
		checks.length === 0
			? 'Compressor room: no check recorded in this round.'
			: `Compressor room: ${count('in-order')} in order, ${count('finding')} found, ${count('not-done')} not done.`
	];
}

function roomRow({ check, number, forEngineer, done, pinnedFirst, cautions }: RoomFinding): JobRow {
	const [first, ...rest] = cautions;
	if (first === undefined) throw new RangeError(`room check ${check.id} has no caution`);
	const flag = done ? 'Done' : pinnedFirst ? 'Do this first' : undefined;
	return {
		tag: roomTag(number),
		shape: done ? 'done' : pinnedFirst ? 'first' : 'open',
		priority: pinnedFirst && !done ? 'first' : 'normal',
		place: check.machine,
		plan: 'Compressor room',
		part: `${ROOM_POINT_WORDS[check.point].name}: ${roomFoundWords(check).toLowerCase()}`,
		action: roomActionWords(check),
		state: done ? 'Put right' : 'To be put right',
		...(flag && { flag }),
		hazards: forEngineer ? ['Rotary screw machine'] : [],
		costPerYear: '',
		costOfWaiting: '',
		...(check.note && { note: check.note }),
		...(check.couldNot && { couldNot: check.couldNot }),
		cautions: [line(first), ...rest.map(line)],
		ticks: boxes('Locked off', 'Vented', 'Zero proved').concat({
			label: 'Put right',
			ticked: done
		}),
		values: {
			...(check.mendedAt !== undefined && { mendedOn: check.mendedAt.slice(0, 10) }),
			...(check.couldNot && { couldNot: check.couldNot })
		}
	};
}

function boxes(...labels: string[]) {
	return labels.map((label) => ({ label, ticked: false }));
}

function line({ id, text }: Caution): CautionLine {
	return { id, text };
}
