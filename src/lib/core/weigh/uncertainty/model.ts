import { referenceDensity } from '../../air/reference-air.ts';
import { carbonKg } from '../../money/carbon.ts';
import type { LeakState } from '../../survey/leak-state.ts';
import type { Survey } from '../../survey/schema.ts';
import { ok, type Refusal, type Result } from '../../units/result.ts';
import { FLOW_KINDS } from '../scaled-flow.ts';
import { weighRound, WASTING } from '../weigh-round.ts';
import { KINDS, leakErrors } from './leak-errors.ts';
import { readySharedErrors, type ReadySharedErrors, type SharedErrors } from './shared-errors.ts';
import { yearOfLeaks, type YearOfLeaks } from './year-weights.ts';

/** A round's leaks with their errors, as columns: row i of every column is leak i. */
export interface UncertaintyModel {
	readonly roundId: string;
	readonly leakIds: readonly string[];
	readonly tags: readonly number[];
	/** kg/s while under pressure, duty included. */
	readonly massFlow: Float64Array;
	/** Whether the flow itself was measured: 1 or 0. */
	readonly measured: Uint8Array;
	readonly kind: Uint8Array;
	readonly own: Float64Array;
	readonly method: Float64Array;
	readonly gauge: Float64Array;
	readonly whole: Float64Array;
	readonly year: YearOfLeaks;
	readonly errors: ReadySharedErrors;
	/** Free air at the survey's reference from ISO 1217 volumes, and from kg/s. */
	readonly shownPerIsoM3: number;
	readonly shownM3PerKg: number;
	/** Absent when the survey has no factor. */
	readonly kgCo2PerKwh?: number;
	readonly missing: readonly Refusal[];
}

/**
 * Sets up the propagation for the leaks of a round. METHOD W6.
 *
 * @param states which leaks count; by default those that leak now, as in `assess`
 * @returns `site-pressure-unknown` or another refusal of the site's air, `shared-error-out-of-range`
 */
export function uncertaintyModel(
	survey: Survey,
	roundId: string,
	shared: SharedErrors = {},
	states: readonly LeakState[] = WASTING
): Result<UncertaintyModel> {
	const errors = readySharedErrors(shared);
	if (!errors.ok) return errors;
	const { air, weighed } = weighRound(survey, roundId, states);
	if (!air.ok) return air;
	const leaks = weighed.map(({ at }) => at).sort((a, b) => a.leak.tag - b.leak.tag);
	const n = leaks.length;
	const columns = {
		massFlow: new Float64Array(n),
		measured: new Uint8Array(n),
		kind: new Uint8Array(n),
		own: new Float64Array(n),
		method: new Float64Array(n),
		gauge: new Float64Array(n),
		whole: new Float64Array(n)
	};
	for (const [i, leak] of leaks.entries()) {
		const error = leakErrors(leak, errors.value, air.value);
		if (!error.ok) return error;
		const { kind, own, method, gauge, whole } = error.value;
		columns.massFlow[i] = leak.flow.massFlow;
		columns.measured[i] = FLOW_KINDS.has(KINDS[kind] ?? 'hole') ? 1 : 0;
		columns.kind[i] = kind;
		columns.own[i] = own;
		columns.method[i] = method;
		columns.gauge[i] = gauge;
		columns.whole[i] = whole;
	}
	const shown = referenceDensity(survey.site.reference, air.value);
	const { carbon } = survey.prices;
	const factor = carbon && carbonKg(1, carbon);
	const year = yearOfLeaks(survey, air.value, leaks);
	return ok({
		roundId,
		leakIds: leaks.map(({ leak }) => leak.id),
		tags: leaks.map(({ leak }) => leak.tag),
		...columns,
		year,
		errors: errors.value,
		shownPerIsoM3: referenceDensity('iso-1217', air.value) / shown,
		shownM3PerKg: 1 / shown,
		...(factor?.ok && { kgCo2PerKwh: factor.value }),
		missing: year.missing
	});
}
