import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { german } from './de/index.ts';
import { createFormat } from './format.ts';
import { frame } from './frame.ts';
import { currentLanguage, readerLanguage, speak } from './language.ts';
import { signed } from './signed.ts';
import { siteList } from './site-list.ts';

afterEach(() => speak('en'));

const settings = {
	currency: 'EUR',
	units: { pressure: 'bar', flow: 'L/s', length: 'mm' }
} as const;

describe('the language that is spoken', () => {
	it('is in the words of every room at once, tables within them included, and can be left again', async () => {
		const { places } = frame;
		await speak('de', 'de-AT');
		expect(currentLanguage()).toBe('de');
		expect(frame.undo).toBe(german.frame.undo);
		expect(places.walk).toBe(german.frame.places.walk);
		expect(siteList.leaks(1)).toBe('Leckage');
		await speak('en');
		expect(frame.undo).toBe('Undo');
		expect(places.walk).toBe('Walk');
		expect(siteList.leaks(2)).toBe('leaks');
	});

	it('writes and reads numbers its own way', async () => {
		await speak('de', 'de-DE');
		const format = createFormat(settings);
		expect(format.number(1234.5)).toBe('1.234,5');
		expect(format.readNumber('6,5')).toEqual({ ok: true, value: 6.5 });
		expect(format.date('2026-05-03')).toBe('03.05.2026');
		// One minus sign, alone or before a change, and what is shown can be typed.
		expect(format.money(-1_097_200)).toBe('−10.972\u00a0€');
		expect(signed(-1_097_200, format.money)).toBe(format.money(-1_097_200));
		expect(format.readNumber(format.significant(-6.5))).toEqual({ ok: true, value: -6.5 });
	});
});

describe('which language a reader gets', () => {
	it('is the one that the browser wants most and the app has, in the reader’s own country', () => {
		expect(readerLanguage(undefined, ['fr-FR', 'de-CH', 'en-US'])).toEqual({
			language: 'de',
			locale: 'de-CH'
		});
	});

	it('is the chosen one before all others, even where the browser never heard of it', () => {
		expect(readerLanguage('de', ['en-GB'])).toEqual({ language: 'de', locale: 'de' });
		expect(readerLanguage('en', ['de-DE', 'en-IE'])).toEqual({ language: 'en', locale: 'en-IE' });
	});

	it('is English with the machine’s own numbers where the app has none of those wanted', () => {
		expect(readerLanguage(undefined, ['fr-FR'])).toEqual({ language: 'en', locale: undefined });
		expect(readerLanguage('klingon', [])).toEqual({ language: 'en', locale: undefined });
	});
});

/** Every word of a catalogue, by its path. */
function paths(words: object, before = ''): string[] {
	return Object.entries(words).flatMap(([key, word]) =>
		typeof word === 'object' && word !== null
			? paths(word as object, `${before}${key}.`)
			: [`${before}${key}`]
	);
}

describe('the catalogue', () => {
	it('has every word of English in German, tables by code included, and none besides', () => {
		const rooms = (files: Record<string, Record<string, object>>) =>
			Object.values(files).flatMap((file) => paths(file));
		const english = rooms(import.meta.glob('./en/*.ts', { eager: true }));
		const translated = paths(german);
		expect(translated.sort()).toEqual(english.sort());
		expect(translated.length).toBeGreaterThan(80);
	});

	it('is drawn on: each word is read somewhere by its name', () => {
		const source = join(import.meta.dirname, '../..');
		const text = readdirSync(source, { recursive: true, encoding: 'utf8' })
			.filter((file) => /\.(ts|svelte)$/.test(file) && !/words\/(en|de)\//.test(file))
			.map((file) => readFileSync(join(source, file), 'utf8'))
			.join('\n');
		// Those of refusals and cautions are read by code: their own tests hold them.
		const { refusals: _, cautions: __, ...named } = german;
		const unread = Object.entries(named).flatMap(([room, words]) =>
			Object.keys(words as object)
				.filter((key) => !new RegExp(`\\.${key}\\b|\\b${key}[,} ]`).test(text))
				.map((key) => `${room}.${key}`)
		);
		expect(unread).toEqual([]);
	});
});
