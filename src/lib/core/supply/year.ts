import { ok, refuse, type Result } from '../units/result.ts';
import type { Cycle } from './cycling.ts';
import { deliveredFlow, plantFlow } from './dryer.ts';
import type { YearPart } from './schedule.ts';
import { stationKw, trimCycle } from './sequence.ts';
import type { ReadyYear } from './supply-year.ts';

/** One part of the year, with the leaks as they are and with all of them gone. */
export interface PartOutcome {
	readonly id: string;
	readonly priceId: string | null;
	readonly hours: number;
	/** What the compressors are asked to deliver; null while the supply is off. */
	readonly delivered: { readonly nowM3PerMin: number; readonly withoutM3PerMin: number } | null;
	readonly powerKw: number;
	readonly powerWithoutKw: number;
	readonly energyKwh: number;
	readonly savingKwh: number;
	/** What a leak saves per m³/min of its flow here, kWh a year; the shares of all add up. */
	readonly savingKwhPerM3PerMin: number;
}

/** Something a result must not be shown without. */
export type YearWarning =
	| {
			/** The demand is above what the station can deliver; its energy is that of full load. */
			readonly code: 'shortage';
			readonly partId: string;
			readonly demandM3PerMin: number;
			readonly capacityM3PerMin: number;
	  }
	| {
			/** More is said to leak than there is; only what there is counts as saved. */
			readonly code: 'leaks-exceed-demand';
			readonly partId: string;
			readonly leaksM3PerMin: number;
			readonly availableM3PerMin: number;
	  }
	| {
			/** Without the leaks the station would draw more: its sequence has a gap there. */
			readonly code: 'saving-negative';
			readonly partId: string;
			readonly savingKwh: number;
	  }
	| {
			/** A machine is loaded more than once a minute. */
			readonly code: 'short-cycling';
			readonly partId: string;
			readonly cyclesPerMin: number;
	  }
	| {
			/** Nobody said what happens in these hours; they are counted as off. */
			readonly code: 'unassigned-time';
			readonly hoursPerYear: number;
	  };

export interface YearOutcome {
	readonly parts: readonly PartOutcome[];
	readonly energyKwh: number;
	readonly savingKwh: number;
	/** Highest mean power of any part of the year, for a demand charge. */
	readonly peakKw: number;
	readonly peakWithoutKw: number;
	/** Free air delivered and saved, m³ a year at inlet conditions. */
	readonly deliveredM3: number;
	readonly savedM3: number;
	readonly warnings: readonly YearWarning[];
}

/**
 * A year's energy with a set of leaks and without it: E = Σ P(qᵢ)·hᵢ, saving = Σ [P(q) − P(q − L)]·h.
 *
 * The saving is not linear in the leaks, so it is worked out for the whole set. A leak's share in a
 * part of the year is in proportion to its flow-hours there: flow times `savingKwhPerM3PerMin`.
 * @param ready checked supply year
 * @param leaksM3PerMin all leaks together in each part of the year, in the order of
 *   `ready.year.parts`, m³/min of free air at inlet conditions; 0 where the supply is off
 * @returns energy, saving, peak and warnings
 * @validity leaks finite and ≥ 0
 * @source derived from the energy balance of each part; METHOD S12, S13
 */
export function yearWithLeaks(
	ready: ReadyYear,
	leaksM3PerMin: ArrayLike<number>
): Result<YearOutcome> {
	const { parts, unassignedHoursPerYear } = ready.year;
	if (leaksM3PerMin.length !== parts.length)
		return refuse('leaks-for-each-part', { given: leaksM3PerMin.length, parts: parts.length });
	const warnings: YearWarning[] = [];
	const outcomes: PartOutcome[] = [];
	const flows = new Float64Array(ready.station.compressors.length);
	for (const [i, part] of parts.entries()) {
		const leaks = leaksM3PerMin[i] ?? NaN;
		if (!(leaks >= 0 && leaks < Infinity))
			return refuse('flow-out-of-range', { partId: part.id, flowM3PerMin: leaks, least: 0 });
		if (part.air.state === 'off' && leaks > 0)
			return refuse('leaks-while-off', { partId: part.id, flowM3PerMin: leaks });
		outcomes.push(partOutcome(ready, part, leaks, flows, warnings));
	}
	if (unassignedHoursPerYear > 0)
		warnings.push({ code: 'unassigned-time', hoursPerYear: unassignedHoursPerYear });
	return ok({ parts: outcomes, ...totals(outcomes), warnings });
}

function totals(parts: readonly PartOutcome[]): Omit<YearOutcome, 'parts' | 'warnings'> {
	const sum = { energyKwh: 0, savingKwh: 0, deliveredM3: 0, savedM3: 0 };
	const peak = { peakKw: 0, peakWithoutKw: 0 };
	for (const part of parts) {
		sum.energyKwh += part.energyKwh;
		sum.savingKwh += part.savingKwh;
		if (part.hours === 0 || part.delivered === null) continue;
		const { nowM3PerMin, withoutM3PerMin } = part.delivered;
		sum.deliveredM3 += nowM3PerMin * 60 * part.hours;
		sum.savedM3 += (nowM3PerMin - withoutM3PerMin) * 60 * part.hours;
		peak.peakKw = Math.max(peak.peakKw, part.powerKw);
		peak.peakWithoutKw = Math.max(peak.peakWithoutKw, part.powerWithoutKw);
	}
	return { ...sum, ...peak };
}

function partOutcome(
	ready: ReadyYear,
	part: YearPart,
	leaks: number,
	flows: Float64Array,
	warnings: YearWarning[]
): PartOutcome {
	const { id, air, hoursPerYear: hours, priceId } = part;
	const named = { id, priceId, hours };
	if (air.state === 'off') {
		const nothing = { powerKw: 0, powerWithoutKw: 0, energyKwh: 0, savingKwh: 0 };
		return { ...named, delivered: null, ...nothing, savingKwhPerM3PerMin: 0 };
	}
	const { station, purge, demandIs } = ready;
	const { demandM3PerMin, setPressureBarGauge } = air;
	const plant =
		demandIs === 'delivered'
			? Math.max(0, plantFlow(purge, demandM3PerMin))
			: demandM3PerMin + leaks;
	const lost = Math.min(leaks, plant);
	const now = demandIs === 'delivered' ? demandM3PerMin : deliveredFlow(purge, plant);
	const without = lost === 0 ? now : Math.min(now, deliveredFlow(purge, plant - lost));
	const powerKw = stationKw(station, now, setPressureBarGauge, flows);
	const powerWithoutKw = stationKw(station, without, setPressureBarGauge, flows);
	const savingKwh = (powerKw - powerWithoutKw) * hours;
	if (hours > 0)
		warnings.push(
			...warningsOf(id, { leaks, plant, now, savingKwh }, station.capacityM3PerMin),
			...cycleWarning(id, trimCycle(station, now, flows))
		);
	return {
		...named,
		delivered: { nowM3PerMin: now, withoutM3PerMin: without },
		powerKw,
		powerWithoutKw,
		energyKwh: powerKw * hours,
		savingKwh,
		savingKwhPerM3PerMin: leaks > 0 ? savingKwh / leaks : 0
	};
}

function warningsOf(
	partId: string,
	{
		leaks,
		plant,
		now,
		savingKwh
	}: Readonly<Record<'leaks' | 'plant' | 'now' | 'savingKwh', number>>,
	capacityM3PerMin: number
): readonly YearWarning[] {
	const warnings: YearWarning[] = [];
	if (leaks > plant)
		warnings.push({
			code: 'leaks-exceed-demand',
			partId,
			leaksM3PerMin: leaks,
			availableM3PerMin: plant
		});
	if (now > capacityM3PerMin)
		warnings.push({ code: 'shortage', partId, demandM3PerMin: now, capacityM3PerMin });
	if (savingKwh < 0) warnings.push({ code: 'saving-negative', partId, savingKwh });
	return warnings;
}

function cycleWarning(partId: string, cycle: Cycle | null): readonly YearWarning[] {
	if (cycle?.shortCycling !== true) return [];
	return [{ code: 'short-cycling', partId, cyclesPerMin: cycle.cyclesPerMin }];
}

/**
 * One leak's share of the saving of the whole set: s = Σ (saving / leaks)ᵢ · qᵢ.
 * @param parts outcome of the year with the whole set
 * @param flowM3PerMin this leak's flow in each part of the year, m³/min at inlet conditions
 * @returns saving, kWh a year
 * @validity the flows of all leaks add up to what the outcome was worked out with
 * @source in proportion to flow-hours in each part of the year, our convention; METHOD S13
 */
export function leakShareKwh(
	parts: readonly PartOutcome[],
	flowM3PerMin: ArrayLike<number>
): number {
	let sum = 0;
	for (let i = 0; i < parts.length; i++)
		sum += (parts[i]?.savingKwhPerM3PerMin ?? 0) * (flowM3PerMin[i] ?? 0);
	return sum;
}
