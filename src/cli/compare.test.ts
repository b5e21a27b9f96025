import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { answered, captured } from './captured-run.ts';

const examples = new URL('../../survey-examples/', import.meta.url);
const bytes = (name: string) => new Uint8Array(readFileSync(new URL(name, examples)));
const SPRING = 'ceramics-works.airtally.zip';
const AUTUMN = 'ceramics-works-autumn.airtally.zip';
const THREE = 'three-leaks.json';
const files = { [SPRING]: bytes(SPRING), [AUTUMN]: bytes(AUTUMN), [THREE]: bytes(THREE) };

interface Compared {
	readonly terms: Readonly<Record<string, { readonly costPerYear: number }>>;
	readonly leaks: readonly { readonly tag: number; readonly fate: string }[];
	readonly measured: { readonly agreement: string } | null;
}

describe('compare', () => {
	it('[V3] gives the bridge, which adds up to the cent', async () => {
		const { terms, measured } = await answered<Compared>(['compare', AUTUMN], files);
		const cents = (term: string) => Math.round((terms[term]?.costPerYear ?? NaN) * 100);
		expect(
			cents('before') - cents('mended') + cents('again') + cents('new') + cents('changed')
		).toBe(cents('after'));
		expect(measured?.agreement).toBe('agree');
	});

	it('takes two files of one site as it takes one with both rounds', async () => {
		const one = await answered<Compared>(['compare', AUTUMN], files);
		expect(await answered(['compare', SPRING, AUTUMN], files)).toEqual(one);
		expect(
			await answered(
				['compare', AUTUMN, '--before', 'Spring 2026', '--after', 'Autumn 2026'],
				files
			)
		).toEqual(one);
	});

	it.each([
		[['compare', SPRING], /needs two rounds/],
		[['compare', SPRING, THREE], /different sites/],
		[['compare', AUTUMN, '--before', 'Autumn 2026', '--after', 'Spring 2026'], /earlier round/],
		[['compare', AUTUMN, '--before', 'Winter'], /no round/],
		[['compare'], /FILE/]
	])('refuses %j in one sentence', async (argv, sentence) => {
		const { code, out, err } = await captured(argv, files);
		expect(code).toBe(2);
		expect(out).toBe('');
		expect(err).toMatch(sentence);
		expect(err.trim().split('\n')).toHaveLength(1);
	});
});

describe('portfolio', () => {
	it('has a line for each file, and names the one that cannot be read', async () => {
		const { code, out, err } = await captured(['portfolio', AUTUMN, 'gone.zip', THREE], files);
		expect(code).toBe(0);
		expect(out.trim().split('\n')).toHaveLength(3);
		expect(err).toContain('gone.zip');
	});

	it('gives the figures that audit and compare give', async () => {
		const { sites } = await answered<{
			readonly sites: readonly Readonly<Record<string, number | string | null>>[];
		}>(['portfolio', AUTUMN, THREE], files);
		const audit = await answered<{ totals: { costPerYear: number } }>(['audit', AUTUMN], files);
		const { terms } = await answered<Compared>(['compare', AUTUMN], files);
		expect(sites[0]).toMatchObject({
			costPerYear: audit.totals.costPerYear,
			provedPerYear: terms['held']?.costPerYear
		});
		expect(sites[1]).toMatchObject({ provedPerYear: null, currency: 'EUR' });
	});

	it('writes a table that a spreadsheet reads', async () => {
		const { out } = await captured(['portfolio', THREE, SPRING, '--csv'], files);
		const rows = out.trim().split('\r\n');
		expect(rows).toHaveLength(3);
		expect(rows[0]).toBe(
			'site,round,leakCount,energyKwhPerYear,costPerYear,currency,provedPerYear,claimedPerYear,file'
		);
	});
});
