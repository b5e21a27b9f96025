import type { PascalAbsolute } from '../units/quantity.ts';
import { ok, type Result } from '../units/result.ts';
import { checkPurge, plantFlow, type DryerPurge } from './dryer.ts';
import { mapAir, yearOfParts, type Schedule, type YearOfParts } from './schedule.ts';
import { readyStation, type ReadyStation, type Station } from './station.ts';

/**
 * A station and its year.
 *
 * `demandIs` says what the schedule's demand is. 'delivered': all that the compressors deliver today,
 * with leaks and dryer purge in it, as a meter or the load hours show it. 'process': what production
 * uses, without leaks or purge. All flows are free air at inlet conditions.
 */
export interface SupplyYear {
	readonly station: Station;
	readonly schedule: Schedule;
	readonly demandIs: 'delivered' | 'process';
	readonly purge: DryerPurge;
}

/** A supply year whose figures have been checked, at a site. */
export interface ReadyYear {
	readonly station: ReadyStation;
	readonly year: YearOfParts;
	readonly demandIs: SupplyYear['demandIs'];
	readonly purge: DryerPurge;
}

/**
 * Checks a supply year and works out what does not depend on the leaks.
 * @param supply as entered
 * @param inlet absolute pressure of the air at the compressors' inlets, Pa
 * @returns the year, ready to compute with
 * @validity as `readyStation`, `yearOfParts` and `checkPurge`
 * @source METHOD S10, S11, S14
 */
export function readyYear(supply: SupplyYear, inlet: PascalAbsolute): Result<ReadyYear> {
	const station = readyStation(supply.station, inlet);
	if (!station.ok) return station;
	const year = yearOfParts(supply.schedule);
	if (!year.ok) return year;
	const purge = checkPurge(supply.purge);
	if (!purge.ok) return purge;
	return ok({
		station: station.value,
		year: year.value,
		demandIs: supply.demandIs,
		purge: purge.value
	});
}

/** A supply year with its leaks, both in process terms. */
export interface ProcessYear {
	readonly supply: SupplyYear;
	/** Leaks in each period and, last, in the closed time, m³/min. */
	readonly leaksM3PerMin: readonly number[];
}

/**
 * Restates a demand read at the compressors as what production uses: q_process = q_plant − L.
 * @param supply as entered; a process demand is left as it is
 * @param leaksM3PerMin leaks in each period and, last, in the closed time, m³/min
 * @returns the same year in process terms; leaks beyond the plant's flow are cut to it
 * @validity as `yearWithLeaks`
 * @source mass balance; METHOD S12
 */
export function inProcessTerms(supply: SupplyYear, leaksM3PerMin: readonly number[]): ProcessYear {
	if (supply.demandIs === 'process') return { supply, leaksM3PerMin };
	const leaks: number[] = [];
	const schedule = mapAir(supply.schedule, (air, i) => {
		const plant = Math.max(0, plantFlow(supply.purge, air.demandM3PerMin));
		const lost = Math.min(leaksM3PerMin[i] ?? 0, plant);
		leaks[i] = lost;
		return { ...air, demandM3PerMin: plant - lost };
	});
	const all = [...supply.schedule.periods, null].map((_, i) => leaks[i] ?? 0);
	return { supply: { ...supply, schedule, demandIs: 'process' }, leaksM3PerMin: all };
}
