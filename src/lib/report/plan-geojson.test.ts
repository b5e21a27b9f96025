import { describe, expect, it } from 'vitest';
import { sampleSurvey } from '../../../tests/report/sample.ts';
import type { Survey } from '../core/survey/schema.ts';
import { assess } from '../core/weigh/assess.ts';
import { geoJsonText, planGeoJson, type PlanGeoJson } from './plan-geojson.ts';

const NASTY = '=<img src=x onerror=alert(1)>';

/** The plan is 1,600 × 1,000 px and 80 m wide: 50 mm to the pixel. */
function survey(more: Partial<Survey> = {}): Survey {
	const base = sampleSurvey(3);
	const plan = base.plans['plan-1'];
	if (!plan) throw new Error('the sample has no plan');
	return {
		...base,
		plans: {
			'plan-1': { ...plan, scale: { from: { x: 0, y: 0.5 }, to: { x: 0.5, y: 0.5 }, metres: 40 } }
		},
		sections: {
			...base.sections,
			'section-1': {
				id: 'section-1',
				name: NASTY,
				valve: '-BV1 <b>',
				valveAt: { planId: 'plan-1', at: { x: 0.25, y: 0.9 } },
				feedAt: { planId: 'plan-1', from: { x: 0.25, y: 1 }, to: { x: 0.25, y: 0.8 } }
			}
		},
		areas: {
			'area-1': {
				id: 'area-1',
				planId: 'plan-1',
				outline: [
					{ x: 0, y: 0 },
					{ x: 0.5, y: 0 },
					{ x: 0.5, y: 0.5 },
					{ x: 0, y: 0.5 }
				],
				use: { kind: 'section', sectionId: 'section-1' }
			},
			'area-2': {
				id: 'area-2',
				planId: 'plan-1',
				outline: [
					{ x: 1, y: 1 },
					{ x: 0.5, y: 0.5 },
					{ x: 0.5, y: 1 }
				],
				use: { kind: 'walked-tight', roundId: 'round-1', walkedAt: '2026-03-02T09:00:00Z' }
			}
		},
		...more
	};
}

function made(of: Survey): PlanGeoJson {
	const plan = of.plans['plan-1'];
	if (!plan) throw new Error('no plan');
	const collection = planGeoJson(of, assess(of, 'round-1'), plan);
	if (!collection.ok) throw new Error(collection.error.code);
	return JSON.parse(geoJsonText(collection.value)) as PlanGeoJson;
}

describe('a plan as GeoJSON', () => {
	it('says first, and in a member of its own, that it is no map', () => {
		const text = JSON.stringify(made(survey()));
		expect(text.indexOf('NOT LONGITUDE AND LATITUDE')).toBeLessThan(80);
		expect(made(survey()).localPlan).toMatchObject({ geographic: false, unit: 'metre' });
	});

	it('derived: shares of an 80 × 50 m plan are metres from its lower left corner, upwards', () => {
		const { features, localPlan } = made(survey());
		expect(localPlan).toMatchObject({ widthM: 80, heightM: 50 });
		const leak = features.find(({ id }) => id === 'leak-1');
		// The sample's first leak is at 0.05 of either side.
		expect(leak?.geometry).toEqual({ type: 'Point', coordinates: [4, 47.5] });
		const valve = features.find(({ id }) => id === 'valve-section-1');
		expect(valve?.geometry).toEqual({ type: 'Point', coordinates: [20, 5] });
		const arrow = features.find(({ id }) => id === 'feed-section-1');
		expect(arrow?.geometry).toEqual({
			type: 'LineString',
			coordinates: [
				[20, 0],
				[20, 10]
			]
		});
		const area = features.find(({ id }) => id === 'area-1');
		expect(area?.geometry.coordinates).toEqual([
			[
				[0, 25],
				[40, 25],
				[40, 50],
				[0, 50],
				[0, 25]
			]
		]);
	});

	it('rings close and run anticlockwise (RFC 7946, 3.1.6: from memory)', () => {
		for (const { geometry } of made(survey()).features) {
			if (geometry.type !== 'Polygon') continue;
			for (const ring of geometry.coordinates) {
				expect(ring[0]).toEqual(ring.at(-1));
				let twice = 0;
				ring.slice(1).forEach(([x, y], index) => {
					const [fromX, fromY] = ring[index] ?? [0, 0];
					twice += fromX * y - x * fromY;
				});
				expect(twice).toBeGreaterThan(0);
			}
		}
	});

	it('back in shares of the plan it is what it was, to the millimetre on the floor', () => {
		const before = survey();
		const { features, localPlan } = made(before);
		for (const { id, tag, at } of Object.values(before.leaks)) {
			const feature = features.find((each) => each.id === id);
			expect(feature?.properties['tag']).toBe(tag);
			const [x, y] = feature?.geometry.coordinates as unknown as [number, number];
			expect(Math.abs(x / localPlan.widthM - (at?.x ?? NaN)) * 80).toBeLessThan(0.001);
			expect(Math.abs(1 - y / localPlan.heightM - (at?.y ?? NaN)) * 50).toBeLessThan(0.001);
		}
	});

	it('no text of it starts a formula or holds a tag', () => {
		const of = survey();
		const plan = of.plans['plan-1'];
		const collection = plan && planGeoJson(of, assess(of, 'round-1'), plan);
		const text = collection?.ok ? geoJsonText(collection.value) : '';
		expect(text).toContain('onerror');
		expect(text).not.toMatch(/[<>&]/);
		for (const { properties } of made(of).features)
			for (const value of Object.values(properties))
				if (typeof value === 'string') expect(value).not.toMatch(/^\s*[=+\-@]|[<>]/);
	});

	it('a plan without a scale is refused: there are no metres', () => {
		const { scale: _, ...plan } = survey().plans['plan-1'] ?? {};
		const of = survey({ plans: { 'plan-1': plan as Survey['plans'][string] } });
		const without = of.plans['plan-1'];
		expect(without && planGeoJson(of, assess(of, 'round-1'), without)).toMatchObject({
			ok: false,
			error: { code: 'plan-without-scale' }
		});
	});
});
