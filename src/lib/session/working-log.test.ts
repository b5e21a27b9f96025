import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fold, foldOnto, sortLog } from '#lib/core/survey/log.ts';
import type { Command } from '#lib/core/survey/command.ts';
import type { Checkpoint } from '#lib/storage/port.ts';
import {
	anyBody,
	asCommands,
	startCommand,
	startedSurvey
} from '../../../tests/arbitrary/commands.ts';
import { CHECKPOINT_EVERY, KEPT_AFTER_CHECKPOINT, WorkingLog } from './working-log.ts';

const start = startCommand();

/** The log of one device, and commands of another that belong anywhere in it. */
const meeting = fc.record({
	mine: fc.array(anyBody, { minLength: 5, maxLength: 30 }).map((bodies) => asCommands(bodies)),
	theirs: fc
		.tuple(fc.array(anyBody, { minLength: 1, maxLength: 8 }), fc.integer({ min: 0, max: 30 }))
		.map(([bodies, from]) => asCommands(bodies, 'device-b', from)),
	cut: fc.nat({ max: 30 })
});

function checkpointAfter(commands: readonly Command[]): Checkpoint {
	const last = commands.at(-1) ?? start;
	const { time, device, id } = last;
	return {
		...foldOnto(startedSurvey(), commands),
		upTo: { time, device, id },
		commandCount: commands.length + 1
	};
}

function given(log: ReturnType<typeof WorkingLog.from>): WorkingLog {
	if (!log.ok) throw new Error(log.error.code);
	return log.value;
}

function expectWhole(log: WorkingLog, commands: readonly Command[]): void {
	const whole = fold(commands);
	expect(whole).toEqual({ ok: true, value: { survey: log.survey, conflicts: log.conflicts } });
	expect(log.commandCount).toBe(commands.length);
	expect(log.nextTime).toBe(Math.max(...commands.map(({ time }) => time)) + 1);
}

describe('commands from elsewhere', () => {
	test('take their place in the log, wherever the checkpoint is', () => {
		let refolded = 0;
		fc.assert(
			fc.property(meeting, ({ mine, theirs, cut }) => {
				const covered = mine.slice(0, cut);
				const log = given(WorkingLog.from(checkpointAfter(covered), mine.slice(cut)));
				expectWhole(log, [start, ...mine]);
				if (!log.merge(theirs)) {
					refolded++;
					expectWhole(log, [start, ...mine]);
					log.readOlder([start, ...covered]);
					expect(log.merge(theirs)).toBe(true);
				}
				const all = sortLog([start, ...mine, ...theirs]);
				expectWhole(log, all);
				log.readOlder([start, ...covered]);
				expect(log.merge([...theirs, ...mine])).toBe(true);
				expectWhole(log, all);
				expect(log.commands?.toSorted(byId)).toEqual(all.toSorted(byId));
			}),
			{ numRuns: 300 }
		);
		expect(refolded).toBeGreaterThan(20);
	});
});

test('a checkpoint leaves the last steps after it, and changes nothing that is seen', () => {
	const bodies = fc.sample(anyBody, 2 * (KEPT_AFTER_CHECKPOINT + CHECKPOINT_EVERY));
	const commands = asCommands(bodies);
	const log = given(WorkingLog.from(undefined, [start, ...commands]));
	const checkpoint = log.nextCheckpoint('device-a');
	expect(checkpoint?.commandCount).toBe(1 + commands.length - KEPT_AFTER_CHECKPOINT);
	if (checkpoint) log.adopt(checkpoint);
	expectWhole(log, [start, ...commands]);
	expect(log.sinceCheckpoint.tail).toHaveLength(KEPT_AFTER_CHECKPOINT);
	expect(log.commands).toEqual([start, ...commands]);
	expect(log.nextCheckpoint('device-a')).toBeUndefined();
	if (checkpoint) log.adopt(checkpoint);
	expectWhole(log, [start, ...commands]);
});

test('a log without a start is refused', () => {
	expect(WorkingLog.from(undefined, asCommands([]))).toEqual({
		ok: false,
		error: { code: 'log-without-start' }
	});
});

function byId(a: Command, b: Command): number {
	return a.id < b.id ? -1 : 1;
}

describe('a checkpoint leaves enough to take back', () => {
	const noted = (device: string, from: number, count: number) =>
		asCommands(
			Array.from({ length: count }, (_, index) => ({
				kind: 'set-site' as const,
				changes: { note: `${from + index}` }
			})),
			device,
			from
		);

	test('and cuts no step in two, also one that another device wrote into', () => {
		const all = noted('device-a', 1, 400).map((command, index) =>
			index >= 330 && index < 360 ? { ...command, step: 'step-long' } : command
		);
		const theirs = noted('device-b', 340, 1);
		const log = given(WorkingLog.fromLog([start, ...all]));
		expect(log.merge(theirs)).toBe(true);
		const checkpoint = log.nextCheckpoint('device-a');
		expect(checkpoint?.upTo.time).toBe(330);
	});

	test('of this device, when the last changes are all of another', () => {
		const commands = [start, ...noted('device-a', 1, 400), ...noted('device-b', 401, 120)];
		const log = given(WorkingLog.fromLog(commands));
		const checkpoint = log.nextCheckpoint('device-a');
		expect(checkpoint?.upTo.time).toBe(380);
		expect(log.nextCheckpoint('device-b')?.upTo.time).toBe(470);
		expect(log.nextCheckpoint('device-c')?.upTo.time).toBe(470);
	});
});
