import { expect, test } from 'vitest';
import { fileNews, isPlainlyNew, type FileOutcome } from './file-news.ts';

const plain: FileOutcome = {
	siteName: 'Works',
	isNew: true,
	addedCommands: 12,
	conflicts: 0,
	quarantined: 0,
	missingPictures: 0,
	clashes: [],
	tagsTwice: []
};

test('a new site needs no more than its name', () => {
	expect(isPlainlyNew(plain)).toBe(true);
	expect(fileNews(plain, String)).toEqual(['Works is on this device now.']);
});

test('a site that was here says what the file added, or that it added nothing', () => {
	const merged = { ...plain, isNew: false };
	expect(isPlainlyNew(merged)).toBe(false);
	expect(fileNews(merged, String)[0]).toMatch(/^12 changes were taken into Works/u);
	expect(fileNews({ ...merged, addedCommands: 0 }, String)[0]).toMatch(/nothing new/u);
});

test('nothing that went amiss is left unsaid', () => {
	const amiss = { ...plain, conflicts: 1, quarantined: 2, missingPictures: 3, tagsTwice: [4, 7] };
	expect(isPlainlyNew(amiss)).toBe(false);
	const told = fileNews(amiss, String);
	expect(told).toHaveLength(5);
	expect(told.join(' ')).toContain('used twice: 4, 7.');
});

test('what both sides changed is told one by one, up to a number that can be read', () => {
	const clash = { noun: 'leak', field: 'note', kept: 'a', lost: 'b', lostFrom: 'here' } as const;
	const clashes = Array.from({ length: 23 }, (_, index) => ({ ...clash, name: String(index) }));
	const told = fileNews({ ...plain, isNew: false, clashes }, String);
	expect(told).toHaveLength(22);
	expect(told[3]).toMatch(/^Leak 2, note/u);
	expect(told.at(-1)).toMatch(/^3 more/u);
});
