import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ACTIONS, HAZARDS, PARTS } from '../survey/parts.ts';
import { CAUTION_RULES } from './caution-rules.ts';
import {
	cautionsForJob,
	depressuriseFirst,
	headlineCautions,
	localRulesFirst,
	sectionCautions,
	valveKnown,
	type LeakAtWork
} from './cautions.ts';

const anyLeak: fc.Arbitrary<LeakAtWork> = fc
	.record({
		part: fc.constantFrom(...PARTS),
		action: fc.option(fc.constantFrom(...ACTIONS), { nil: undefined }),
		hazards: fc.subarray([...HAZARDS])
	})
	.map(({ action, ...leak }) => ({ ...leak, ...(action && { action }) }));
const shut = { valve: 'BV1' };
const flange: LeakAtWork = { part: 'flange', hazards: [] };
const idsOf = (leak: LeakAtWork) => cautionsForJob(leak, shut).map(({ id }) => id);
const headline = headlineCautions().map(({ id }) => id);
const section = sectionCautions(shut).map(({ id }) => id);

describe('cautions on every job', () => {
	it('[C1] no part, action or hazard gets a job without it, and it comes first', () => {
		fc.assert(
			fc.property(anyLeak, (leak) => {
				expect(cautionsForJob(leak, shut)[0]).toEqual(depressuriseFirst());
			})
		);
	});

	it('[C1] says the order of the work and forbids a live joint', () => {
		const { text } = depressuriseFirst();
		const steps = ['Isolate', 'lock', 'vent', 'prove zero', 'loosen'].map((s) => text.indexOf(s));
		expect(steps.every((at) => at >= 0)).toBe(true);
		expect(steps).toEqual([...steps].sort((a, b) => a - b));
		expect(text).toMatch(/never loosen or tighten a joint on a live line/i);
	});

	it('[C9] eye protection goes with every job', () => {
		fc.assert(fc.property(anyLeak, (leak) => idsOf(leak).includes('C9')));
	});

	it('a part without an action is cautioned as for its starting action', () => {
		expect(idsOf({ part: 'pipe-joint', hazards: [] })).toEqual(
			idsOf({ part: 'pipe-joint', action: 'remake-thread', hazards: [] })
		);
	});
});

describe('cautions that a job calls for', () => {
	it.each<[string, LeakAtWork]>([
		['[C3] a vessel is taken out of service', { part: 'pressure-vessel', hazards: [] }],
		['[C3] so is whatever is to go out of service', { ...flange, action: 'out-of-service' }],
		['[C4] a valve may be a safety valve', { part: 'valve', hazards: [] }],
		['[C4] closing off may close a safety valve', { ...flange, action: 'close-off' }],
		['[C5] a rotary screw machine goes to its engineer', { ...flange, hazards: ['rotary-screw'] }],
		['[C10] mains off before a guard', { ...flange, hazards: ['moving-machinery'] }],
		['[C10] mains off before a cover', { ...flange, hazards: ['live-electrics'] }],
		['[C11] a compressor starts by itself', { part: 'pump-joint', hazards: [] }],
		['[C12] the tank is empty before its drain comes out', { part: 'drain', hazards: [] }],
		['[C12] and before its gauge does', { part: 'gauge', hazards: [] }],
		['[C13] a filter bowl', { part: 'filter-bowl', hazards: [] }],
		['[C13] a lubricator bowl', { part: 'lubricator-bowl', hazards: [] }],
		['[C14] a regulator holds its outlet', { part: 'regulator', hazards: [] }],
		['[C15] a cylinder moves', { part: 'cylinder', hazards: [] }],
		['[C16] a hose whips', { part: 'hose', hazards: [] }],
		['[C16] a coupling lets a hose go', { part: 'quick-coupling', hazards: [] }],
		['[C17] a tool starts when air returns', { part: 'tool', hazards: [] }],
		['[C18] a blow gun', { part: 'blow-gun', hazards: [] }],
		['[C19] blowing out a thread', { part: 'pipe-joint', hazards: [] }],
		['[C20] nipping up', { ...flange, action: 'nip-up' }],
		['[C21] compound sets overnight', { part: 'threaded-joint', hazards: [] }],
		['[C22] soap and live electrics', { ...flange, hazards: ['live-electrics'] }],
		['[C23] hot surface', { ...flange, hazards: ['hot-surface'] }],
		['[C24] height', { ...flange, hazards: ['at-height'] }],
		['[C25] confined space', { ...flange, hazards: ['confined-space'] }],
		['[C26] a job that nobody described', { part: 'other', hazards: [] }]
	])('%s', (title, leak) => {
		const id = title.slice(1, title.indexOf(']'));
		expect(idsOf(leak)).toContain(id);
		expect(idsOf(flange)).not.toContain(id);
	});

	it('[C6] finding the valve comes first where nobody has named one', () => {
		const ids = (valve?: { valve: string }) => cautionsForJob(flange, valve).map(({ id }) => id);
		expect(ids()).toContain('C6');
		expect(ids({ valve: '  ' })).toContain('C6');
		expect(ids(shut)).not.toContain('C6');
		expect(sectionCautions(undefined)[0]?.id).toBe('C6');
		expect(valveKnown({ valve: ' ' })).toBe(false);
	});

	it('[C18] [C19] the cleaning nozzle limit of 29 CFR 1910.242(b), below 30 psi (verified)', () => {
		// 30 psi × 0.0689476 bar/psi = 2.07 bar; the round figure printed must not be above it.
		for (const id of ['C18', 'C19']) {
			const text = CAUTION_RULES.find((rule) => rule.id === id)?.text;
			expect(text).toContain('below 30 psi (2 bar)');
		}
		expect(2).toBeLessThan(30 * 0.0689476);
	});
});

describe('cautions before the jobs', () => {
	it('[C1] [C2] the headline leads with depressurising and defers to local rules', () => {
		expect(headline.slice(0, 2)).toEqual(['C1', 'C2']);
		expect(localRulesFirst().text).toMatch(/local codes.*permit.*licensed practice come first/i);
	});

	it('[C7] stored air is watched for, with each section', () => expect(section).toContain('C7'));
	it('[C8] the gauge is seen to fall', () => expect(section).toContain('C8'));
	it('[C27] no ammonia on brass', () => expect(section).toContain('C27'));
	it('[C28] the air comes back slowly', () => expect(section).toContain('C28'));
});

describe('the table of cautions', () => {
	it('numbers them without a gap and gives each its own key and words', () => {
		expect(CAUTION_RULES.map(({ id }) => id)).toEqual(
			CAUTION_RULES.map((_, index) => `C${String(index + 1)}`)
		);
		for (const pick of ['key', 'text'] as const)
			expect(new Set(CAUTION_RULES.map((rule) => rule[pick])).size).toBe(CAUTION_RULES.length);
	});

	it('prints every rule somewhere, and claims to have read only what it names', () => {
		for (const { where, when, origin, key } of CAUTION_RULES) {
			expect(key).toMatch(/^[a-z]+(-[a-z]+)*$/);
			expect(where.length).toBeGreaterThan(0);
			expect(when === 'always' || when.length > 0).toBe(true);
			expect(origin.source === 'trade practice').toBe(origin.status === 'common practice');
		}
	});
});
