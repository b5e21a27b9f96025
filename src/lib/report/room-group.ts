import { roomCautions, type Caution } from '../core/mend/cautions.ts';
import { roomChecksOf, type RoomFinding } from '../core/mend/room-findings.ts';
import { coverage } from '../core/survey/coverage.ts';
import type { Survey } from '../core/survey/schema.ts';
import { cautionText } from '../words/cautions.ts';
import { coverageSentence } from '../words/coverage.ts';
import { compressorRoom } from '../words/compressor-room.ts';
import { files } from '../words/files.ts';
import { fixList as words } from '../words/fix-list.ts';
import { HAZARD_WORDS } from '../words/parts.ts';
import { ROOM_POINT_WORDS, roomActionWords, roomFoundWords, roomTag } from '../words/room.ts';
import type { CautionLine, JobGroup, JobRow, PrintFormat, Step } from './model.ts';

/** The findings of the compressor room as a group of jobs; nothing when nothing was found. */
export function roomGroup(findings: readonly RoomFinding[], format: PrintFormat): JobGroup[] {
	if (findings.length === 0) return [];
	const open = findings.filter(({ done }) => !done).length;
	return [
		{
			heading: words.room,
			valve: compressorRoom.madeSafe,
			valveKnown: false,
			facts: [compressorRoom.rotaryScrews],
			jobCount: words.toDo(format.count(open), format.count(findings.length)),
			costPerYear: '',
			steps: boxes('mainsLocked', 'cooled', 'vented', 'zeroProved', 'restored'),
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
			? words.roomUnchecked
			: words.roomChecked(count('in-order'), count('finding'), count('not-done'))
	];
}

function roomRow({ check, number, forEngineer, done, pinnedFirst, cautions }: RoomFinding): JobRow {
	const [first, ...rest] = cautions;
	if (first === undefined) throw new RangeError(`room check ${check.id} has no caution`);
	const flag = done ? words.done : pinnedFirst ? words.first : undefined;
	return {
		tag: roomTag(number),
		shape: done ? 'done' : pinnedFirst ? 'first' : 'open',
		priority: pinnedFirst && !done ? 'first' : 'normal',
		place: check.machine,
		plan: words.room,
		part: words.roomPart(ROOM_POINT_WORDS[check.point].name, roomFoundWords(check)),
		action: roomActionWords(check),
		state: done ? words.steps.putRight : words.toBePutRight,
		...(flag && { flag }),
		hazards: forEngineer ? [HAZARD_WORDS['rotary-screw']] : [],
		takes: '',
		costPerYear: '',
		costOfWaiting: '',
		...(check.note && { note: check.note }),
		...(check.couldNot && { couldNot: check.couldNot }),
		cautions: [line(first), ...rest.map(line)],
		ticks: [
			...boxes('lockedOff', 'vented', 'zeroProved'),
			{ step: 'putRight' as const, label: words.steps.putRight, ticked: done }
		],
		values: {
			...(check.mendedAt !== undefined && { mendedOn: check.mendedAt.slice(0, 10) }),
			...(check.couldNot && { couldNot: check.couldNot })
		}
	};
}

function boxes(...steps: Step[]) {
	return steps.map((step) => ({ step, label: words.steps[step], ticked: false }));
}

function line(caution: Caution): CautionLine {
	return { id: caution.id, text: cautionText(caution) };
}
