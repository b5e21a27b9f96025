import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draws, modelOf, resultOf } from '../../../../../tests/arbitrary/uncertainty-model.ts';
import { reconcile, type MeasuredLeak, type Reconciliation } from './reconcile.ts';
import { refitSoapBands, type SoapPair } from './refit-soap.ts';
import { offerScaling } from './scaling.ts';
import { lognormalSpread, NINETY_PERCENT } from './spread.ts';
import { randomFrom } from './random.ts';
import { STARTING_SOAP_BANDS } from '../../air/evidence/soap-response.ts';

/** A round that was found to leak so much, with this relative uncertainty of the whole. */
function found(massFlow: number, s: number, measured = 0) {
	return resultOf(
		modelOf([
			{ massFlow: massFlow - measured, own: s },
			...(measured > 0 ? [{ massFlow: measured, own: 1e-6, measured: true }] : [])
		]),
		draws(10_000)
	);
}

function outcome(of: ReturnType<typeof found>, measured: MeasuredLeak): Reconciliation {
	const result = reconcile(of, measured);
	if (!result.ok) throw new Error(result.error.code);
	return result.value;
}

const test = (massFlowKgPerS: number, relativeStandardUncertainty = 0.1): MeasuredLeak => ({
	massFlowKgPerS,
	relativeStandardUncertainty
});

describe('[W11] found against measured', () => {
	it('derived: the ratio of two lognormals is lognormal, variances added', () => {
		const { foundShare } = outcome(found(0.6, 0.3), test(1, 0.2));
		const exact = lognormalSpread(0.6, Math.hypot(0.3, 0.2));
		for (const end of ['low', 'median', 'high', 'mean'] as const)
			expect(Math.abs(foundShare[end] / exact[end] - 1)).toBeLessThan(0.03);
	});

	it('derived: few readings behind the test widen it by Student’s factor', () => {
		const few = outcome(found(1, 1e-6), { ...test(1, 0.1), freedom: 3 });
		const half = Math.log(few.measuredKgPerS.high / few.measuredKgPerS.low) / 2;
		// t(0.95; 3) = 2.353 (JCGM 100 table G.2, from memory).
		expect(half).toBeCloseTo(0.2353, 2);
	});

	it('derived: what is not located costs what those found cost', () => {
		const it = outcome(found(0.6, 0.01), test(1, 0.01));
		expect(it.unlocatedKgPerS.median).toBeCloseTo(0.4, 2);
		expect(it.unlocatedEnergyKwhPerYear!.median).toBeCloseTo(40, 0);
		expect(it.unlocatedCostMinorPerYear!.median).toBeCloseTo(400, -1);
	});

	it('says what follows from it, and whether that is clear', () => {
		const verdicts = (
			[
				[0.4, 0.1],
				[0.6, 0.5],
				[0.95, 0.05],
				[0.95, 0.4],
				[1.05, 0.3],
				[2, 0.2]
			] as const
		).map(([flow, s]) => {
			const { verdict, clear } = outcome(found(flow, s), test(1, 0.05));
			return [verdict, clear];
		});
		expect(verdicts).toEqual([
			['keep-walking', true],
			['keep-walking', false],
			['found-most', true],
			['found-most', false],
			['found-most', false],
			['estimates-too-high', true]
		]);
	});

	it('law: chances lie between 0 and 1 and move the right way with the test', () => {
		const of = found(1, 0.3);
		fc.assert(
			fc.property(
				fc.double({ min: 0.2, max: 5, noNaN: true }),
				fc.double({ min: 0.01, max: 0.5, noNaN: true }),
				(flow, u) => {
					const less = outcome(of, test(flow, u));
					const more = outcome(of, test(flow * 1.3, u));
					expect(less.chanceTooHigh).toBeGreaterThanOrEqual(more.chanceTooHigh);
					expect(less.chanceKeepWalking).toBeLessThanOrEqual(more.chanceKeepWalking);
					expect(less.chanceTooHigh).toBeGreaterThanOrEqual(0);
					expect(more.chanceKeepWalking).toBeLessThanOrEqual(1);
					expect(less.foundShare.low).toBeLessThanOrEqual(less.foundShare.high);
				}
			),
			{ numRuns: 10 }
		);
	});

	it('a walk that found nothing has found nothing of it', () => {
		const none = resultOf(modelOf([]));
		const it = outcome(none, test(1));
		expect([it.verdict, it.clear, it.foundShare.high]).toEqual(['keep-walking', true, 0]);
		expect(it.unlocatedKgPerS.median).toBeCloseTo(1, 1);
		expect(it.unlocatedCostMinorPerYear).toBeUndefined();
	});

	it('refuses a test that says nothing', () => {
		const of = found(1, 0.1);
		for (const [bad, code] of [
			[test(0), 'test-leak-not-positive'],
			[test(NaN), 'test-leak-not-positive'],
			[test(1, -0.1), 'test-uncertainty-out-of-range'],
			[{ ...test(1), freedom: 0 }, 'test-uncertainty-out-of-range']
		] as const) {
			const refused = reconcile(of, bad);
			expect(refused.ok ? 'accepted' : refused.error.code).toBe(code);
		}
	});
});

describe('[W12] scaling the estimates to the test', () => {
	it('derived: what was measured at leaks stays; the rest makes up the test', () => {
		// 0.2 measured and 1.6 estimated against 1.0: (1 − 0.2)/1.6 = 0.5.
		const offer = offerScaling(found(1.8, 0.01, 0.2), test(1, 0.001));
		if (!offer.ok) throw new Error(offer.error.code);
		expect(offer.value.factor.median).toBeCloseTo(0.5, 3);
		expect(offer.value.estimatedShare).toBeCloseTo(1.6 / 1.8, 3);
		expect(offer.value.calledFor).toBe(true);
	});

	it('is not called for where leaks may be missing', () => {
		const offer = offerScaling(found(0.6, 0.3), test(1));
		expect(offer.ok && offer.value.calledFor).toBe(false);
	});

	it('refuses where there is nothing to scale, or the readings contradict the test', () => {
		const metered = resultOf(modelOf([{ massFlow: 1, own: 0.05, measured: true }]), draws(500));
		const none = offerScaling(metered, test(1));
		expect(none.ok ? '' : none.error.code).toBe('scaling-without-estimates');
		const above = offerScaling(found(2, 0.1, 1.5), test(1));
		expect(above.ok ? '' : above.error.code).toBe('scaling-below-measured');
	});
});

describe('[W13] soap bands of this site', () => {
	const band = STARTING_SOAP_BANDS['foam-spits'];
	const areaOf = (diameterMm: number) => (Math.PI / 4) * diameterMm ** 2 * 1e-6;
	const pairs = (diameters: readonly number[], u = 0.05): SoapPair[] =>
		diameters.map((each) => ({
			response: 'foam-spits',
			areaM2: areaOf(each),
			relativeStandardUncertainty: u
		}));

	it('derived: readings at the middle of the band leave the middle and narrow the band', () => {
		const middle = Math.sqrt(band.lowMm * band.highMm);
		const [refitted] = refitSoapBands(pairs([middle, middle, middle, middle]), {});
		expect(Math.sqrt(refitted!.lowMm * refitted!.highMm)).toBeCloseTo(middle, 9);
		expect(refitted!.highMm / refitted!.lowMm).toBeLessThan(band.highMm / band.lowMm);
		expect(refitted).toMatchObject({ pairs: 4, before: { lowMm: 0.2, highMm: 0.5 } });
	});

	it('derived: by hand for four exact readings at twice the middle', () => {
		const middle = Math.sqrt(0.1);
		const [refitted] = refitSoapBands(pairs(Array<number>(4).fill(2 * middle), 1e-9), {});
		const width = Math.log(2.5) / (2 * NINETY_PERCENT);
		const weight = 4 / width ** 2 / (4 / width ** 2 + 1 / 0.175 ** 2);
		const moved = Math.log(middle) + weight * Math.log(2);
		const squares = 4 * ((1 - weight) * Math.log(2)) ** 2;
		const spread = Math.sqrt((4 * width ** 2 + squares) / 8);
		expect(Math.log(refitted!.lowMm)).toBeCloseTo(moved - NINETY_PERCENT * spread, 9);
		expect(Math.log(refitted!.highMm)).toBeCloseTo(moved + NINETY_PERCENT * spread, 9);
	});

	it('derived: with many readings the band becomes theirs', () => {
		const z = new Float64Array(2000);
		randomFrom(1).fillNormals(z, 2000);
		const seen = [...z].map((each) => 0.8 * Math.exp(0.2 * each));
		const [refitted] = refitSoapBands(pairs(seen, 0.02), {});
		expect(refitted!.lowMm / (0.8 * Math.exp(-NINETY_PERCENT * 0.2))).toBeCloseTo(1, 1);
		expect(refitted!.highMm / (0.8 * Math.exp(NINETY_PERCENT * 0.2))).toBeCloseTo(1, 1);
	});

	it('law: the middle moves towards the readings and never past them', () => {
		fc.assert(
			fc.property(
				fc.array(fc.double({ min: 0.05, max: 3, noNaN: true }), { minLength: 3, maxLength: 20 }),
				(diameters) => {
					const [refitted] = refitSoapBands(pairs(diameters), {});
					const before = Math.log(0.1) / 2;
					const mean = diameters.reduce((sum, d) => sum + Math.log(d), 0) / diameters.length;
					const after = Math.log(refitted!.lowMm * refitted!.highMm) / 2;
					expect(after).toBeGreaterThanOrEqual(Math.min(before, mean) - 1e-9);
					expect(after).toBeLessThanOrEqual(Math.max(before, mean) + 1e-9);
					expect(refitted!.lowMm).toBeLessThan(refitted!.highMm);
				}
			)
		);
	});

	it('leaves alone what has too few readings or is not a response', () => {
		expect(refitSoapBands(pairs([0.3, 0.3]), {})).toEqual([]);
		const unknown = pairs([1, 1, 1]).map((each) => ({ ...each, response: 'constructor' }));
		expect(refitSoapBands(unknown, {})).toEqual([]);
		const own = refitSoapBands(pairs([1, 1, 1]), { 'foam-spits': { lowMm: 0.5, highMm: 2 } });
		expect(own[0]!.before).toEqual({ lowMm: 0.5, highMm: 2 });
	});
});
