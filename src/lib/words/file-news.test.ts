import { expect, test } from 'vitest';
import { fileNews, isPlainlyNew, type FileOutcome } from './file-news.ts';

const plain: FileOutcome = {
	siteName: 'Works',
	isNew: true,
	addedCommands: 12,
	conflicts: 0,
	quarantined: 0,
	missingPictures: 0
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
	const amiss = { ...plain, conflicts: 1, quarantined: 2, missingPictures: 3 };
	expect(isPlainlyNew(amiss)).toBe(false);
	expect(fileNews(amiss, String)).toHaveLength(4);
});
