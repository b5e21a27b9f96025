import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	anyBody,
	asCommands,
	startCommand,
	startedSurvey
} from '../../../../tests/arbitrary/commands.ts';
import { tally, times } from '../../../../tests/faults/long.ts';
import type { Command, CommandBody } from './command.ts';
import { fold, foldOnto, latestTime, mergeLogs, readLog, sortLog } from './log.ts';

const start = startCommand();
const addLeak: CommandBody = {
	kind: 'add-leak',
	leak: { id: 'leak-1', tag: 1, part: 'hose', hazards: [], sightings: {}, mendings: {} }
};

/** Logs of three devices that started from one site and worked apart. */
const threeLogs = fc
	.tuple(
		...['device-a', 'device-b', 'device-c'].map((device) =>
			fc
				.tuple(fc.array(anyBody, { maxLength: 15 }), fc.integer({ min: 1, max: 5 }))
				.map(([bodies, from]) => [start, ...asCommands(bodies, device, from)])
		)
	)
	.map((logs) => logs);

function folded(commands: readonly Command[]) {
	const result = fold(commands);
	if (!result.ok) throw new Error(result.error.code);
	return result.value;
}

describe('three tablets that walked one site apart', { timeout: times(10_000, 600_000) }, () => {
	test('agree after merging, in whatever order and however often', () => {
		fc.assert(
			fc.property(
				threeLogs,
				fc.shuffledSubarray([0, 1, 2, 0, 1, 2], { minLength: 6, maxLength: 6 }),
				(logs, order) => {
					const merge = (indices: readonly number[]) =>
						indices.reduce<readonly Command[]>((all, i) => mergeLogs(all, logs[i] ?? []), []);
					const one = merge([0, 1, 2]);
					const other = merge(order);
					expect(other).toEqual(one);
					expect(folded(other)).toEqual(folded(one));
					const [a = [], b = [], c = []] = logs;
					expect(mergeLogs(a, mergeLogs(b, c))).toEqual(one);
					expect(mergeLogs(mergeLogs(a, b), c)).toEqual(one);
					expect(mergeLogs(one, one)).toEqual(one);
				}
			),
			{ numRuns: times(300, 3_000) }
		);
		tally('Logs of three devices merged in random order, twice', times(300, 3_000), 0);
	});

	test('lose no command: each is in the survey or among the conflicts', () => {
		fc.assert(
			fc.property(threeLogs, (logs) => {
				const merged = logs.reduce<readonly Command[]>(mergeLogs, []);
				const ids = new Set(logs.flat().map((command) => command.id));
				expect(new Set(merged.map((command) => command.id))).toEqual(ids);
				const { survey, conflicts } = folded(merged);
				const inConflict = new Set(conflicts.map((conflict) => conflict.command.id));
				const fitting = merged.filter((command) => !inConflict.has(command.id));
				expect(folded(fitting)).toEqual({ survey, conflicts: [] });
			}),
			{ numRuns: times(100, 1_000) }
		);
	});

	test('keep the edit when one removes what another edits', () => {
		const added = asCommands([addLeak]);
		const remove = asCommands([{ kind: 'remove-leak', leakId: 'leak-1' }], 'device-b', 2);
		const edit = asCommands(
			[{ kind: 'set-leak', leakId: 'leak-1', changes: { note: 'still here' } }],
			'device-c',
			2
		);
		for (const order of [
			[remove, edit],
			[edit, remove]
		]) {
			const merged = order.reduce<readonly Command[]>(mergeLogs, [start, ...added]);
			const { survey, conflicts } = folded(merged);
			expect(conflicts).toEqual([]);
			expect(survey.leaks['leak-1']).toMatchObject({ note: 'still here', removed: true });
		}
	});

	test('see the later of two values of one field, and both of two fields', () => {
		const set = (device: string, time: number, changes: object) =>
			asCommands([{ kind: 'set-leak', leakId: 'leak-1', changes }], device, time);
		const merged = [
			set('device-c', 3, { note: 'late' }),
			set('device-b', 2, { note: 'early', tag: 5 })
		].reduce<readonly Command[]>(mergeLogs, [start, ...asCommands([addLeak])]);
		expect(folded(merged).survey.leaks['leak-1']).toMatchObject({ note: 'late', tag: 5 });
	});

	test('show the second of two leaks that were given one name', () => {
		const twin = asCommands([addLeak], 'device-b', 1);
		const { conflicts } = folded(mergeLogs([start, ...asCommands([addLeak])], twin));
		expect(conflicts).toEqual([
			{
				command: twin[0],
				refusal: { code: 'entity-exists', detail: { table: 'leaks', id: 'leak-1' } }
			}
		]);
	});
});

describe('a log folds', () => {
	test('to the same survey whether at once or from a point on the way', () => {
		fc.assert(
			fc.property(fc.array(anyBody, { maxLength: 40 }), fc.nat({ max: 40 }), (bodies, cut) => {
				const commands = asCommands(bodies);
				const whole = foldOnto(startedSurvey(), commands);
				const head = foldOnto(startedSurvey(), commands.slice(0, cut));
				const tail = foldOnto(head.survey, commands.slice(cut));
				expect(tail.survey).toEqual(whole.survey);
				expect([...head.conflicts, ...tail.conflicts]).toEqual(whole.conflicts);
			}),
			{ numRuns: 150 }
		);
	});

	test('only with a start', () => {
		expect(fold(asCommands([addLeak]))).toEqual({
			ok: false,
			error: { code: 'log-without-start' }
		});
		expect(fold([])).toEqual({ ok: false, error: { code: 'log-without-start' } });
	});

	test('with the first of two starts, the other shown as a conflict', () => {
		const late: Command = { ...startCommand(), id: 'command-other', device: 'file-plain' };
		const { conflicts } = folded([late, start]);
		expect(conflicts.map((conflict) => conflict.command.id)).toEqual(['command-other']);
	});

	test('in order of time, then device, then name', () => {
		const shuffled = [
			{ ...start, id: 'command-z', time: 1 },
			{ ...start, id: 'command-b', device: 'device-b', time: 1 },
			{ ...start, id: 'command-c', time: 1 },
			start
		];
		expect(sortLog(shuffled).map((command) => command.id)).toEqual([
			'command-start',
			'command-c',
			'command-z',
			'command-b'
		]);
		expect(latestTime(shuffled)).toBe(1);
	});
});

test('an entry that is no command is set aside as it was', () => {
	const { commands, quarantined } = readLog([start, { id: 'x' }, null, { ...start, time: -1 }]);
	expect(commands).toEqual([start]);
	expect(quarantined.map((bad) => bad.entry)).toEqual([{ id: 'x' }, null, { ...start, time: -1 }]);
	expect(quarantined.every((bad) => bad.reason.length > 2)).toBe(true);
});
