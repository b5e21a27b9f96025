import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { refusals as german } from './de/refusals.ts';
import { speak } from './language.ts';
import { REFUSAL_SENTENCES } from './refusal-table.ts';
import { refusalSentence } from './refusals.ts';

const SOURCE = join(import.meta.dirname, '../..');
/** `refuse('code'` and its relatives, refusals written out, and codes that storage falls back on. */
const CODE =
	/(?:\brefus\w*\(|\.run\(|\bcode:(?: string =)?|\botherwise:)\s*'([a-z]+(?:-[a-z0-9]+)+)'/g;

const sources = readdirSync(SOURCE, { recursive: true, encoding: 'utf8' })
	.filter((file) => /\.(ts|svelte)$/.test(file) && !file.endsWith('.test.ts'))
	.map((file) => ({ file, text: readFileSync(join(SOURCE, file), 'utf8') }));

function codesInSource(): Map<string, string> {
	const codes = new Map<string, string>();
	for (const { file, text } of sources)
		for (const [, code = ''] of text.matchAll(CODE)) codes.set(code, file);
	return codes;
}

describe('sentences for refusals', () => {
	it('every code in the source has a sentence', () => {
		const codes = codesInSource();
		expect(codes.size).toBeGreaterThan(50);
		const wanting = [...codes].filter(([code]) => !Object.hasOwn(REFUSAL_SENTENCES, code));
		expect(wanting).toEqual([]);
	});

	it('no sentence is kept for a code that nothing refuses with any more', () => {
		const text = sources
			.filter(({ file }) => !/words[/\\](en|de)[/\\]/.test(file))
			.map((source) => source.text)
			.join('\n');
		const unused = Object.keys(REFUSAL_SENTENCES).filter((code) => !text.includes(`'${code}'`));
		expect(unused).toEqual([]);
	});

	it('each says what is wrong and what to do next, in plain sentences', () => {
		for (const [code, sentence] of Object.entries(REFUSAL_SENTENCES)) {
			const shown = refusalSentence({ code });
			expect(shown, code).not.toMatch(/[[\]{}]/);
			expect(shown, code).toMatch(/^[A-Z“…].*\.$/);
			expect(sentence.match(/\[/g)?.length, code).toBe(sentence.match(/\]/g)?.length);
		}
	});

	it('German fills in the same quantities, and leaves out the same ones', () => {
		const filled = (sentence: string) => (sentence.match(/\{\w+\}/g) ?? []).sort();
		const left = (sentence: string) => filled((sentence.match(/\[[^\]]*\]/g) ?? []).join(' '));
		for (const [code, sentence] of Object.entries(REFUSAL_SENTENCES)) {
			const translated = (german as Readonly<Record<string, string>>)[code] ?? '';
			expect(filled(translated), code).toEqual(filled(sentence));
			expect(left(translated), code).toEqual(left(sentence));
			expect(translated, code).toMatch(/^[A-ZÄÖÜ„{].*\.$/);
		}
	});

	it('writes numbers and limits the German way, too', async () => {
		await speak('de');
		expect(
			refusalSentence({
				code: 'pressure-out-of-range',
				detail: { pressureBarGauge: 90.5, lowestBarGauge: 0, highestBarGauge: 60 }
			})
		).toBe(
			'Dieser Druck liegt außerhalb des Bereichs: 90,5 bar; zulässig ab 0 bar bis 60 bar. Prüfen Sie ihn.'
		);
		await speak('en');
	});

	it('names the quantity that offended and what is accepted, with units', () => {
		expect(
			refusalSentence({
				code: 'pressure-out-of-range',
				detail: { pressureBarGauge: 90, lowestBarGauge: 0, highestBarGauge: 60 }
			})
		).toBe('This pressure is out of range: 90 bar; accepted from 0 bar to 60 bar. Check it.');
		expect(
			refusalSentence({ code: 'price-out-of-range', detail: { pricePerKwh: -1, least: 0 } })
		).toContain('-1');
		expect(
			refusalSentence({
				code: 'number-ambiguous',
				detail: { text: '1,234', readAs: 1.234, orAs: 1234 }
			})
		).toBe('“1,234” can be read two ways: 1.234 or 1234. Write it without grouping the thousands.');
	});

	it('leaves out what the refusal does not carry', () => {
		expect(refusalSentence({ code: 'file-damaged' })).toBe(
			'The file is damaged. Copy it again from its source.'
		);
	});

	it('still says something for a code it has never heard of, inherited names included', () => {
		expect(refusalSentence({ code: 'no-such-code' })).toContain('no-such-code');
		expect(refusalSentence({ code: 'constructor' })).toContain('constructor');
	});
});
