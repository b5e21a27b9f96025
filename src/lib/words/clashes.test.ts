import { expect, test } from 'vitest';
import { clashSentence } from './clashes.ts';

const clash = { noun: 'leak', name: '12', field: 'note', lostFrom: 'here' } as const;

test('both values of a clash are said, and whose each was', () => {
	expect(clashSentence({ ...clash, kept: 'behind the press', lost: null }, String)).toBe(
		'Leak 12, note, was changed on both sides: “behind the press” from the file stays, “nothing” from this device does not.'
	);
	expect(
		clashSentence(
			{ ...clash, field: 'mending round-1 minutes', kept: 20, lost: 5, lostFrom: 'file' },
			String
		)
	).toBe(
		'Leak 12, what was done about it, was changed on both sides: 20 from this device stays, 5 from the file does not.'
	);
	expect(clashSentence({ ...clash, field: 'pin', kept: { x: 1 }, lost: { x: 2 } }, String)).toBe(
		'Leak 12, where its pin is, was changed on both sides: one value from the file stays, another from this device does not.'
	);
});

test('what was removed here and changed there is said', () => {
	const removed = { ...clash, field: 'removed', kept: true, lost: false } as const;
	expect(clashSentence(removed, String)).toBe(
		'Leak 12 was removed in the file and changed on this device: it stays removed.'
	);
});
