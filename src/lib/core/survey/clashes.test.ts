import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
	ANY_BODY,
	anyBody,
	asCommands,
	startCommand
} from '../../../../tests/arbitrary/commands.ts';
import { times } from '../../../../tests/faults/long.ts';
import { clashesBetween } from './clashes.ts';
import type { Command, CommandBody } from './command.ts';
import { fold, mergeLogs } from './log.ts';

const start = startCommand();
const leak = (tag: number): CommandBody => ({
	kind: 'add-leak',
	leak: { id: `leak-${tag}`, tag, part: 'hose', hazards: [], sightings: {}, mendings: {} }
});
const common = [start, ...asCommands([leak(1), leak(2), leak(3), leak(4)])];

function surveyOf(commands: readonly Command[]) {
	const folded = fold(commands);
	if (!folded.ok) throw new Error(folded.error.code);
	return folded.value.survey;
}

function clashes(here: readonly CommandBody[], file: readonly CommandBody[]) {
	const mine = [...common, ...asCommands(here, 'device-a', 10)];
	const theirs = [...common, ...asCommands(file, 'device-b', 10)];
	return clashesBetween(mine, theirs, surveyOf(mergeLogs(mine, theirs)));
}

const note = (text: string): CommandBody => ({
	kind: 'set-leak',
	leakId: 'leak-2',
	changes: { note: text }
});

test('the later of two notes is kept, and the other is told', () => {
	expect(clashes([note('mine')], [note('first'), note('theirs')])).toEqual([
		{ noun: 'leak', name: '2', field: 'note', kept: 'theirs', lost: 'mine', lostFrom: 'here' }
	]);
	expect(clashes([note('one'), note('two'), note('mine')], [note('theirs')])).toMatchObject([
		{ kept: 'mine', lost: 'theirs', lostFrom: 'file' }
	]);
});

test('what one alone changed, or both alike, is no clash', () => {
	expect(clashes([note('same')], [note('same')])).toEqual([]);
	const part: CommandBody = { kind: 'set-leak', leakId: 'leak-2', changes: { part: 'valve' } };
	expect(clashes([note('mine')], [part])).toEqual([]);
	expect(clashes([], [note('theirs')])).toEqual([]);
});

test('what one removed and the other changed is told', () => {
	const remove: CommandBody = { kind: 'remove-leak', leakId: 'leak-2' };
	expect(clashes([remove], [note('theirs')])).toEqual([
		{ noun: 'leak', name: '2', field: 'removed', kept: true, lost: false, lostFrom: 'file' }
	]);
	expect(clashes([note('mine')], [remove])).toMatchObject([{ field: 'removed', lostFrom: 'here' }]);
});

// The other way round, from the surveys instead of the commands: whatever field of a leak both
// copies have made differ from what they had in common, and from each other, has to be told.
test('no value that both changed is passed over', { timeout: times(10_000, 600_000) }, () => {
	let seen = 0;
	const bodies = fc.array(fc.oneof(ANY_BODY['set-leak'], anyBody), { maxLength: 12 });
	fc.assert(
		fc.property(bodies, bodies, (here, file) => {
			const before = surveyOf(common).leaks;
			const mine = surveyOf([...common, ...asCommands(here, 'device-a', 10)]).leaks;
			const theirs = surveyOf([...common, ...asCommands(file, 'device-b', 10)]).leaks;
			const told = clashes(here, file);
			for (const id of Object.keys(before)) {
				for (const field of ['note', 'tag', 'sectionId', 'action'] as const) {
					const [was, a, b] = [before, mine, theirs].map((leaks) => leaks[id]?.[field]);
					if (a === was || b === was || a === b) continue;
					seen++;
					expect(told.some((clash) => clash.noun === 'leak' && clash.field === field)).toBe(true);
				}
			}
		}),
		{ numRuns: times(600, 5_000) }
	);
	expect(seen).toBeGreaterThan(10);
});
