import { STARTING_RESOLUTION } from '../air/system-test/readings.ts';
import type { Survey } from '../survey/schema.ts';
import type { SystemTest } from '../survey/system-test-schema.ts';
import { ok, refuse, type Result } from '../units/result.ts';
import { latestLeakTest } from '../weigh/system-check/reckon.ts';
import { coverageFactor90 } from '../weigh/uncertainty/gum.ts';
import { randomFrom } from '../weigh/uncertainty/random.ts';
import {
	NINETY_PERCENT,
	scaled,
	spreadOfSorted,
	type Spread
} from '../weigh/uncertainty/spread.ts';
import type { Comparison } from './compare.ts';
import { surveyIn } from './conditions.ts';
import type { ComparisonSpread } from './intervals.ts';

/** One round's system test. */
export interface MeasuredRound {
	readonly testId: string;
	readonly name: string;
	readonly doneAt: string;
	readonly kind: SystemTest['kind'];
	/** At the later round's set pressure. */
	readonly massFlowKgPerS: number;
	readonly relativeStandardUncertainty: number;
}

/**
 * `agree`: the two savings are as far apart as chance explains. `soap-more`: more was proved than the
 * system stopped losing. `test-more`: the system stopped losing more than was proved.
 */
export type Agreement = 'agree' | 'soap-more' | 'test-more';

export interface MeasuredSaving {
	readonly before: MeasuredRound;
	readonly after: MeasuredRound;
	/** Of the error, what both tests share, e.g. the capacity of one machine; relative. */
	readonly sharedRelativeUncertainty: number;
	readonly massFlowKgPerS: Spread;
	readonly nominalKgPerS: number;
	/** At what a kg/s of the leaks before takes a year. */
	readonly energyKwhPerYear?: Spread;
	readonly costMinorPerYear?: Spread;
	readonly co2KgPerYear?: Spread;
	/** Measured saving − saving found by walking, kg/s. */
	readonly apartKgPerS: Spread;
	readonly agreement: Agreement;
}

const TEST_SEED = 0x5ab1e;

/**
 * The saving that the system itself shows: the leak by a test of the round before − the leak by a test
 * of the round after, both at the later round's set pressure. Errors that both tests share, the
 * capacity of the same machine or the volume of the same receivers, are drawn once. METHOD V7.
 *
 * @returns `system-tests-missing` unless both rounds have a test
 */
export function measuredSaving(
	survey: Survey,
	comparison: Comparison,
	spread: ComparisonSpread
): Result<MeasuredSaving> {
	const { before, after, terms } = comparison;
	const present = surveyIn(survey, after);
	const first = testOf(survey, present, before.id);
	const second = testOf(survey, present, after.id);
	if (!first || !second)
		return refuse('system-tests-missing', { round: first ? after.name : before.name });
	const [was, is] = [first.round, second.round];
	const shared = sharedError(first.test, second.test);
	const saved = drawSaving(was, is, shared, spread.draws);
	const flow = spreadOfSorted(saved.slice().sort());
	const apart = spreadOfSorted(
		saved.map((value, d) => value - (spread.avoidedFlow[d] ?? 0)).sort()
	);
	const kgPerS = terms.before.massFlowKgPerS;
	const rate = (yearly: number | undefined) =>
		yearly === undefined || kgPerS === 0 ? undefined : scaled(flow, yearly / kgPerS);
	const energy = rate(terms.before.energyKwhPerYear);
	const cost = rate(terms.before.costMinorPerYear);
	const carbon = rate(terms.before.co2KgPerYear);
	return ok({
		before: was,
		after: is,
		sharedRelativeUncertainty: shared,
		massFlowKgPerS: flow,
		nominalKgPerS: was.massFlowKgPerS - is.massFlowKgPerS,
		...(energy && { energyKwhPerYear: energy }),
		...(cost && { costMinorPerYear: cost }),
		...(carbon && { co2KgPerYear: carbon }),
		apartKgPerS: apart,
		agreement: apart.low > 0 ? 'test-more' : apart.high < 0 ? 'soap-more' : 'agree'
	});
}

/** A round's own newest test that measures a leak, both rounds at one set pressure. */
function testOf(
	survey: Survey,
	present: Survey,
	roundId: string
): { readonly test: SystemTest; readonly round: MeasuredRound } | undefined {
	const own = Object.entries(survey.systemTests).filter(([, test]) => test.roundId === roundId);
	const found = latestLeakTest({ ...present, systemTests: Object.fromEntries(own) }, roundId);
	if (!found) return undefined;
	const { test, measured } = found;
	const { massFlowKgPerS, relativeStandardUncertainty, freedom = Infinity } = measured;
	const widened =
		freedom === Infinity
			? relativeStandardUncertainty
			: (relativeStandardUncertainty * coverageFactor90(freedom)) / NINETY_PERCENT;
	const { id: testId, name, doneAt, kind } = test;
	return {
		test,
		round: { testId, name, doneAt, kind, massFlowKgPerS, relativeStandardUncertainty: widened }
	};
}

/** What both tests got from one and the same figure. */
function sharedError(a: SystemTest, b: SystemTest): number {
	if (a.kind === 'load-time' && b.kind === 'load-time' && a.capacityM3PerMin === b.capacityM3PerMin)
		return Math.min(
			a.capacityRelativeUncertainty ?? STARTING_RESOLUTION.capacityRelativeUncertainty,
			b.capacityRelativeUncertainty ?? STARTING_RESOLUTION.capacityRelativeUncertainty
		);
	if (a.kind === 'bleed-down' && b.kind === 'bleed-down' && a.volumeM3 === b.volumeM3)
		return Math.min(
			a.volumeRelativeUncertainty ?? STARTING_RESOLUTION.volumeRelativeUncertainty,
			b.volumeRelativeUncertainty ?? STARTING_RESOLUTION.volumeRelativeUncertainty
		);
	return 0;
}

function drawSaving(
	before: MeasuredRound,
	after: MeasuredRound,
	shared: number,
	draws: number
): Float64Array {
	const normals = new Float64Array(3 * draws);
	randomFrom(TEST_SEED).fillNormals(normals, normals.length);
	const own = ({ relativeStandardUncertainty: u }: MeasuredRound) =>
		Math.sqrt(Math.max(0, u * u - shared * shared));
	const [ownBefore, ownAfter] = [own(before), own(after)];
	return Float64Array.from({ length: draws }, (_, d) => {
		const both = shared * normals[3 * d]!;
		return (
			before.massFlowKgPerS * Math.exp(both + ownBefore * normals[3 * d + 1]!) -
			after.massFlowKgPerS * Math.exp(both + ownAfter * normals[3 * d + 2]!)
		);
	});
}
