import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FIX_LIST_EDGES } from './fix-list-sheets.ts';
import type { PlanPage } from './model.ts';
import { PAPERS, type PaperName } from './paper.ts';
import { onSheet, planSheets } from './plan-sheets.ts';

const papers = Object.keys(PAPERS) as PaperName[];

function planOf(
	places: readonly { readonly x: number; readonly y: number }[],
	wide = 1.6
): PlanPage {
	return {
		planId: 'plan-1',
		name: 'Hall',
		sha256: 'a'.repeat(64),
		widthPx: Math.round(2000 * wide),
		heightPx: 2000,
		areas: [],
		valves: [],
		flows: [],
		pins: places.map(({ x, y }, index) => ({
			leakId: `leak-${String(index + 1)}`,
			tag: String(index + 1),
			shape: 'open',
			x,
			y
		}))
	};
}

/** What holds of every plan on every paper. */
function check(plan: PlanPage, paper: PaperName) {
	const { overview, sheets, sheetOf } = planSheets(plan, paper, FIX_LIST_EDGES['en-GB']);
	const all = sheets.flatMap(({ pins }) => pins.map(({ tag }) => tag));
	expect(all.toSorted()).toEqual(plan.pins.map(({ tag }) => tag).toSorted());
	expect(overview !== undefined).toBe(sheets.length > 1 || sheetOf.size > 0);
	for (const { name, part, frame, pins, radius, picture } of sheets) {
		expect(picture.widthPx * picture.heightPx).toBeLessThanOrEqual(16_700_000);
		pins.forEach((pin, index) => {
			const { x, y } = plan.pins.find(({ tag }) => tag === pin.tag) ?? { x: -1, y: -1 };
			const spot = onSheet({ x, y }, part, frame);
			expect(pin.spot).toEqual(spot);
			expect(spot.x).toBeGreaterThanOrEqual(frame.x - 1e-6);
			expect(spot.x).toBeLessThanOrEqual(frame.x + frame.width + 1e-6);
			if (name !== '') expect(sheetOf.get(pin.tag)).toBe(name);
			for (const other of pins.slice(index + 1))
				expect(
					Math.hypot(pin.at.x - other.at.x, pin.at.y - other.at.y),
					`${pin.tag} and ${other.tag} on sheet ${name}`
				).toBeGreaterThan(2 * radius);
		});
	}
	return { overview, sheets };
}

describe('the sheets of a plan', () => {
	it(
		'law: every pin is on one of them, where it belongs, and no two numbers overlap',
		{ timeout: 60_000 },
		() => {
			const share = fc.double({ min: 0, max: 1, noNaN: true });
			fc.assert(
				fc.property(
					fc.array(fc.record({ x: share, y: share }), { minLength: 1, maxLength: 130 }),
					fc.double({ min: 0.05, max: 20, noNaN: true }),
					fc.constantFrom(...papers),
					(places, wide, paper) => {
						check(planOf(places, wide), paper);
					}
				),
				{ numRuns: 60 }
			);
		}
	);

	it('one page where the pins have room, with no name to look for', () => {
		const { overview, sheets } = check(
			planOf([
				{ x: 0.2, y: 0.2 },
				{ x: 0.8, y: 0.5 }
			]),
			'a4'
		);
		expect(overview).toBeUndefined();
		expect(sheets.map(({ name }) => name)).toEqual(['']);
	});

	it('three hundred pins are divided, and a larger paper takes no more sheets', () => {
		const places = Array.from({ length: 300 }, (_, index) => ({
			x: (index * 0.618034) % 1,
			y: (index * 0.381966 * 7) % 1
		}));
		const a4 = check(planOf(places), 'a4').sheets.length;
		const a3 = check(planOf(places), 'a3').sheets.length;
		expect(a4).toBeGreaterThan(1);
		expect(a3).toBeLessThanOrEqual(a4);
	});

	it('a strip is cut across only', () => {
		const places = Array.from({ length: 60 }, (_, index) => ({ x: index / 60, y: 0.5 }));
		const { sheets } = check(planOf(places, 20), 'a4');
		expect(sheets.length).toBeGreaterThan(1);
		expect(new Set(sheets.map(({ part }) => part.height))).toEqual(new Set([1]));
	});

	it('more on one spot than a sheet can hold go on further sheets of the same part', () => {
		const { sheets } = check(planOf(Array.from({ length: 200 }, () => ({ x: 0.5, y: 0.5 }))), 'a4');
		expect(sheets.map(({ name }) => name.replace(/ .*/, ''))).toEqual(
			sheets.map(() => sheets[0]?.name)
		);
		expect(new Set(sheets.map(({ key }) => key)).size).toBe(1);
	});
});
