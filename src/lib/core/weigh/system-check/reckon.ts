import {
	bleedDownLeak,
	handbookBleedDown,
	HANDBOOK_FACTOR
} from '../../air/system-test/bleed-down.ts';
import { bleedSeriesLeak } from '../../air/system-test/bleed-series.ts';
import type { FittedLaw } from '../../air/system-test/leak-law.ts';
import { loadTimeLeak } from '../../air/system-test/load-time.ts';
import { deliveredCapacity } from '../../air/system-test/pump-up.ts';
import type { SystemLeak } from '../../air/system-test/readings.ts';
import { compareInstants } from '../../survey/instants.ts';
import type { Survey } from '../../survey/schema.ts';
import type { SystemTest } from '../../survey/system-test-schema.ts';
import { ok, type Result } from '../../units/result.ts';
import { effectiveFreedom } from '../uncertainty/gum.ts';
import type { MeasuredLeak } from '../uncertainty/reconcile.ts';
import {
	workingOfBleedDown,
	workingOfBleedSeries,
	workingOfLoadTime,
	workingOfPumpUp
} from '../working/system-test.ts';
import type { Working } from '../working/tree.ts';
import { testReadings } from './test-readings.ts';

interface Outcome {
	/** Free air at the survey's reference: the leak, or what a machine delivers. */
	readonly freeAirM3PerS: number;
	readonly relativeStandardUncertainty: number;
}

interface LeakOutcome extends Outcome {
	/** What the whole system loses, for comparing with what was found. */
	readonly measured: MeasuredLeak;
}

export interface HandbookFigure {
	/** Free air at the site's pressure. */
	readonly freeAirM3PerS: number;
	readonly factor: number;
	/** What the factor would be for this fall through a fixed opening, from two readings. */
	readonly physicsFactor?: number;
}

/** What a system test says. */
export type TestOutcome =
	| (LeakOutcome & {
			readonly kind: 'load-time';
			readonly loadFraction: number;
			readonly loadFractionUncertainty: number;
			readonly cycles: number;
			readonly scatterKnown: boolean;
	  })
	| (LeakOutcome & {
			readonly kind: 'bleed-down';
			readonly handbook: HandbookFigure;
			readonly chokedThroughout: boolean;
			/** From three readings on. */
			readonly law?: FittedLaw;
			readonly extrapolated: boolean;
	  })
	| (Outcome & { readonly kind: 'pump-up'; readonly temperatureCorrected: boolean });

/**
 * What a system test of the survey says: the leak at the set pressure with its uncertainty and the
 * handbook's figure beside it, or what a machine delivers. METHOD T13.
 *
 * @returns the outcome, or why the readings say nothing
 */
export function reckonSystemTest(survey: Survey, test: SystemTest): Result<TestOutcome> {
	const made = testReadings(survey, test);
	if (!made.ok) return made;
	const ready = made.value;
	switch (ready.kind) {
		case 'load-time': {
			const found = loadTimeLeak(ready.readings, ready.at);
			if (!found.ok) return found;
			const { loadFraction, loadFractionUncertainty, cycles, scatterKnown, leak } = found.value;
			const freedom = effectiveFreedom([
				{
					uncertainty: loadFractionUncertainty / loadFraction,
					freedom: scatterKnown ? cycles - 1 : Infinity
				},
				{ uncertainty: ready.readings.capacityRelativeUncertainty, freedom: Infinity }
			]);
			return ok({
				kind: 'load-time',
				...leakOutcome(leak, freedom),
				loadFraction,
				loadFractionUncertainty,
				cycles,
				scatterKnown
			});
		}
		case 'bleed-down': {
			const found = bleedDownLeak(ready.readings, ready.at);
			if (!found.ok) return found;
			const { leak, handbook, physicsFactor, chokedThroughout } = found.value;
			const { from, to } = ready.readings;
			return ok({
				kind: 'bleed-down',
				...leakOutcome(leak, Infinity),
				handbook: { freeAirM3PerS: handbook.freeAir, factor: handbook.factor, physicsFactor },
				chokedThroughout,
				extrapolated: ready.at.setPressure > from || ready.at.setPressure < to
			});
		}
		case 'bleed-series': {
			const found = bleedSeriesLeak(ready.readings, ready.at);
			if (!found.ok) return found;
			const { leak, law, chokedThroughout, extrapolated, intervals } = found.value;
			return ok({
				kind: 'bleed-down',
				...leakOutcome(leak, Math.max(1, intervals.length - (law === 'line' ? 2 : 1))),
				handbook: wholeFall(ready),
				law,
				chokedThroughout,
				extrapolated
			});
		}
		case 'pump-up': {
			const found = deliveredCapacity(ready.readings, ready.at);
			if (!found.ok) return found;
			const { freeAir, relativeStandardUncertainty, temperatureCorrected } = found.value;
			return ok({
				kind: 'pump-up',
				freeAirM3PerS: freeAir,
				relativeStandardUncertainty,
				temperatureCorrected
			});
		}
	}
}

function leakOutcome(leak: SystemLeak, freedom: number): LeakOutcome {
	const { massFlow, freeAir, relativeStandardUncertainty } = leak;
	return {
		freeAirM3PerS: freeAir,
		relativeStandardUncertainty,
		measured: { massFlowKgPerS: massFlow, relativeStandardUncertainty, freedom }
	};
}

/** The handbook knows two readings: the first and the last. METHOD T4. */
function wholeFall(ready: {
	readonly readings: Parameters<typeof workingOfBleedSeries>[0];
	readonly at: Parameters<typeof workingOfBleedSeries>[1];
}): HandbookFigure {
	const { volume, readings } = ready.readings;
	const first = readings[0];
	const last = readings.at(-1);
	if (!first || !last) throw new RangeError('a series without readings');
	const duration = (last.at - first.at) as typeof last.at;
	return {
		freeAirM3PerS: handbookBleedDown(
			{ volume, from: first.pressure, to: last.pressure, duration },
			ready.at.site.pressure
		),
		factor: HANDBOOK_FACTOR
	};
}

/** Shows how the outcome of a system test came about. METHOD T13. */
export function workingOfTest(survey: Survey, test: SystemTest): Result<Working> {
	const made = testReadings(survey, test);
	if (!made.ok) return made;
	const ready = made.value;
	switch (ready.kind) {
		case 'load-time':
			return workingOfLoadTime(ready.readings, ready.at);
		case 'bleed-down':
			return workingOfBleedDown(ready.readings, ready.at);
		case 'bleed-series':
			return workingOfBleedSeries(ready.readings, ready.at);
		case 'pump-up':
			return workingOfPumpUp(ready.readings, ready.at);
	}
}

/** Tests of a round and of none, newest first. */
export function testsOfRound(survey: Survey, roundId: string): readonly SystemTest[] {
	return Object.values(survey.systemTests)
		.filter((test) => !test.removed && (test.roundId ?? roundId) === roundId)
		.sort((a, b) => compareInstants(b.doneAt, a.doneAt));
}

/** The newest test that says what the whole system loses. */
export function latestLeakTest(
	survey: Survey,
	roundId: string
): { readonly test: SystemTest; readonly measured: MeasuredLeak } | undefined {
	for (const test of testsOfRound(survey, roundId)) {
		const outcome = reckonSystemTest(survey, test);
		if (outcome.ok && outcome.value.kind !== 'pump-up')
			return { test, measured: outcome.value.measured };
	}
	return undefined;
}
