import { minorDigits } from '../../money/currency.ts';
import type { SiteAir } from '../../air/gas-state.ts';
import { referenceDensity } from '../../air/reference-air.ts';
import { yearWithLeaks } from '../../supply/year.ts';
import type { ReadyYear } from '../../supply/supply-year.ts';
import type { Survey } from '../../survey/schema.ts';
import type { Refusal } from '../../units/result.ts';
import type { SupplyMethod } from '../assessment.ts';
import { costParts, leakCosts, sharedCosts, type CostRates } from '../cost.ts';
import { leakYears, type LeakYears } from '../energy.ts';
import { stationYear } from '../station-year.ts';
import type { WeighedLeak } from '../weigh-leak.ts';

const MINUTES_PER_HOUR = 60;

/** What one unit of a class costs a year, by class. */
export interface Weights {
	readonly energyKwh: Float64Array;
	readonly costMinor: Float64Array;
	/** Free air at ISO 1217, m³. */
	readonly airM3: Float64Array;
}

/**
 * A year's figures as weights on the leaks: leak i takes a_ik units of class k, and its energy is
 * Σ_k a_ik·w_k. By the quick method there is one class and the weights are fixed; by the station
 * model a class is a set pressure and the weights depend on all leaks together.
 */
export interface YearOfLeaks {
	readonly method: SupplyMethod;
	/** Units of each leak by class. */
	readonly amounts: readonly Float64Array[];
	readonly weightsVary: boolean;
	readonly energyKnown: boolean;
	readonly costKnown: boolean;
	readonly missing: readonly Refusal[];
	/** Writes the weights that hold when the leaks of each class add up to `totals`. */
	readonly weigh: (totals: Float64Array, weights: Weights) => void;
}

export function newWeights(classes: number): Weights {
	return {
		energyKwh: new Float64Array(classes),
		costMinor: new Float64Array(classes),
		airM3: new Float64Array(classes)
	};
}

/** The year of a round's leaks by the method that the survey has the data for. METHOD W2, W4, W5, W7. */
export function yearOfLeaks(
	survey: Survey,
	air: SiteAir,
	leaks: readonly WeighedLeak[]
): YearOfLeaks {
	const digits = minorDigits(survey.site.currency);
	// A currency that is not known has no costs either: `leakCosts` refuses it.
	const minor = digits.ok ? 10 ** digits.value : 1;
	const found = leakYears(survey, air, leaks);
	const costs = found.method === 'none' ? undefined : leakCosts(survey, found.years, found.outcome);
	const missing = [...found.missing, ...(costs && !costs.ok ? [costs.error] : [])];
	const rates = costs?.ok ? costs.value.rates : undefined;
	const { station } = survey.supply;
	const ready = station && stationYear(station, air);
	return found.method === 'supply' && ready?.ok
		? stationClasses({ survey, air, leaks, found, rates, ready: ready.value, minor, missing })
		: oneClass(found, rates, minor, missing);
}

/** One class: a leak's amount is its free air a year, and energy and money are in proportion. */
function oneClass(
	found: LeakYears,
	rates: CostRates | undefined,
	minor: number,
	missing: readonly Refusal[]
): YearOfLeaks {
	const amounts = Float64Array.from(found.years, ({ freeAirM3 }) => freeAirM3);
	const air = sum(amounts);
	const energy = found.years.reduce((total, year) => total + (year.energyKwh ?? 0), 0);
	let cost = 0;
	for (const year of rates ? found.years : []) {
		const parts = rates && costParts(year, rates);
		if (parts?.ok) cost += parts.value.energy + parts.value.air + parts.value.shared;
	}
	const perM3 = (total: number) => (air > 0 ? total / air : 0);
	return {
		method: found.method,
		amounts: [amounts],
		weightsVary: false,
		energyKnown: found.method !== 'none',
		costKnown: rates !== undefined,
		missing,
		weigh: (_, weights) => {
			weights.airM3[0] = 1;
			weights.energyKwh[0] = perM3(energy);
			weights.costMinor[0] = perM3(cost) * minor;
		}
	};
}

interface StationParts {
	readonly survey: Survey;
	readonly air: SiteAir;
	readonly leaks: readonly WeighedLeak[];
	readonly found: LeakYears;
	readonly rates: CostRates | undefined;
	readonly ready: ReadyYear;
	readonly minor: number;
	readonly missing: readonly Refusal[];
}

/** A class for each set pressure of the year: amounts are m³/min at inlet conditions. */
function stationClasses(given: StationParts): YearOfLeaks {
	const { survey, air, leaks, found, rates, ready, minor, missing } = given;
	const { parts } = ready.year;
	const pressures = [
		...new Set(parts.flatMap((p) => (p.air.state === 'on' ? p.air.setPressureBarGauge : [])))
	];
	const classOf = parts.map((p) =>
		p.air.state === 'on' ? pressures.indexOf(p.air.setPressureBarGauge) : -1
	);
	const amounts = pressures.map((_, k) => {
		const part = classOf.indexOf(k);
		return Float64Array.from(leaks, (_, leak) => found.flowInPart?.(leak, part) ?? 0);
	});
	const inletToIso = referenceDensity('site', air) / referenceDensity('iso-1217', air);
	const airPerUnit = new Float64Array(pressures.length);
	for (const [p, part] of parts.entries()) {
		const k = classOf[p] ?? -1;
		if (k >= 0) airPerUnit[k]! += part.hoursPerYear * MINUTES_PER_HOUR * inletToIso;
	}
	const inParts = new Float64Array(parts.length);

	return {
		method: 'supply',
		amounts,
		weightsVary: true,
		energyKnown: true,
		costKnown: rates !== undefined,
		missing,
		weigh: (totals, weights) => {
			for (let p = 0; p < inParts.length; p++) inParts[p] = totals[classOf[p] ?? -1] ?? 0;
			const outcome = yearWithLeaks(ready, inParts);
			if (!outcome.ok) throw new RangeError(`the year refused its leaks: ${outcome.error.code}`);
			weights.energyKwh.fill(0);
			weights.costMinor.fill(0);
			weights.airM3.set(airPerUnit);
			for (const [p, part] of outcome.value.parts.entries()) {
				const k = classOf[p] ?? -1;
				if (k < 0) continue;
				const rate = part.savingKwhPerM3PerMin;
				weights.energyKwh[k]! += rate;
				if (rates) weights.costMinor[k]! += rate * rates.priceOf(part.priceId);
			}
			if (!rates) return;
			const shared = sharedCosts(survey, outcome.value);
			if (!shared.ok) throw new RangeError(`the year refused its costs: ${shared.error.code}`);
			const saving = outcome.value.savingKwh;
			const perKwh = saving > 0 ? (shared.value.demandCharge - shared.value.lostHeat) / saving : 0;
			for (let k = 0; k < pressures.length; k++) {
				const cost = weights.costMinor[k]! + weights.energyKwh[k]! * perKwh;
				weights.costMinor[k] = (cost + (rates.perM3 ?? 0) * airPerUnit[k]!) * minor;
			}
		}
	};
}

function sum(values: Float64Array): number {
	let total = 0;
	for (const value of values) total += value;
	return total;
}
