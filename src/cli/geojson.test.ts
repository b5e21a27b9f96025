import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { answered, captured } from './captured-run.ts';

const examples = new URL('../../survey-examples/', import.meta.url);
const bytes = (name: string) => new Uint8Array(readFileSync(new URL(name, examples)));
const DEMO = 'ceramics-works.airtally.zip';
const THREE = 'three-leaks.json';
const files = { [DEMO]: bytes(DEMO), [THREE]: bytes(THREE) };

interface Answer {
	readonly coordinatesAre: string;
	readonly localPlan: { readonly plan: string; readonly widthM: number; readonly heightM: number };
	readonly features: readonly {
		readonly geometry: { readonly type: string; readonly coordinates: unknown };
		readonly properties: { readonly kind: string };
	}[];
}

describe('geojson', () => {
	it('gives the leaks and sections of the plan that is named, within the plan, and says aloud that it is no map', async () => {
		const { err } = await captured(['geojson', DEMO], files);
		const [, name = ''] = /these: ([^(]+) \(/.exec(err) ?? [];
		expect(name).not.toBe('');
		const answer = await answered<Answer>(['geojson', DEMO, '--plan', name], files);
		expect(answer.coordinatesAre).toMatch(/NOT LONGITUDE AND LATITUDE/);
		const { plan, widthM, heightM } = answer.localPlan;
		expect(plan).toBe(name);
		const kinds = answer.features.map(({ properties }) => properties.kind);
		expect(kinds.filter((kind) => kind === 'leak').length).toBeGreaterThan(10);
		expect(kinds).toContain('section');
		for (const { geometry } of answer.features) {
			if (geometry.type !== 'Point') continue;
			const [x, y] = geometry.coordinates as [number, number];
			expect(x >= 0 && x <= widthM && y >= 0 && y <= heightM).toBe(true);
		}
		const plain = await captured(['geojson', DEMO, '--plan', name], files);
		expect(JSON.parse(plain.out)).toEqual(answer);
		expect(plain.err).toMatch(/NOT LONGITUDE AND LATITUDE/);
	});

	it.each([
		[['geojson', DEMO], /which plan/],
		[['geojson', DEMO, '--plan', 'Cellar'], /which plan/],
		[['geojson', THREE], /no plan|scale/]
	])('refuses %j in a sentence', async (argv, sentence) => {
		const { code, out, err } = await captured(argv, files);
		expect(code).toBe(2);
		expect(out).toBe('');
		expect(err).toMatch(sentence);
	});
});
