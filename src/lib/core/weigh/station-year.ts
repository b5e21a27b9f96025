import { lineAir } from '../air/line-air.ts';
import { flowThrough } from '../air/leak-flow.ts';
import { referenceDensity } from '../air/reference-air.ts';
import type { SiteAir } from '../air/gas-state.ts';
import { yearWithLeaks, type YearOutcome } from '../supply/year.ts';
import { readyYear, type ReadyYear } from '../supply/supply-year.ts';
import type { SupplyStation } from '../survey/station-schema.ts';
import { gaugeFromBar } from '../units/convert.ts';
import { ok, type Result } from '../units/result.ts';
import type { WeighedLeak } from './weigh-leak.ts';

const SECONDS_PER_MINUTE = 60;

const ready = new WeakMap<SupplyStation, { air: SiteAir; year: Result<ReadyYear> }>();

/** The station of a survey, checked at its site: machines and the parts of the year. METHOD S10–S14. */
export function stationYear(station: SupplyStation, air: SiteAir): Result<ReadyYear> {
	const before = ready.get(station);
	if (before?.air === air) return before.year;
	const { schedule, demandIs, purge } = station;
	const year = readyYear({ station, schedule, demandIs, purge }, air.pressure);
	ready.set(station, { air, year });
	return year;
}

/** Hours a year in which the station keeps pressure up. */
export function pressurisedHours(year: ReadyYear): number {
	return year.year.parts.reduce(
		(sum, { air, hoursPerYear }) => (air.state === 'on' ? sum + hoursPerYear : sum),
		0
	);
}

/** One part of the year for one class of leaks: what a m³/min of their flow saves, costs and blows. */
export interface StationLeakYear {
	readonly energyKwh: number;
	/** kWh by part of the year, to be priced by the part's tariff. */
	readonly savingKwhByPart: (price: (partIndex: number) => number) => number;
	/** Free air at inlet conditions, m³ a year. */
	readonly inletM3: number;
}

export interface StationLeaks {
	readonly outcome: YearOutcome;
	readonly leaks: readonly StationLeakYear[];
	/** One leak's flow in one part of the year, m³/min at inlet conditions. */
	readonly flowInPart: (leak: number, part: number) => number;
}

/**
 * The year's energy with the leaks and without them, shared out over the leaks. METHOD W4.
 *
 * In each part of the year a leak stands under its own pressure, and never under more than the
 * station holds then. A leak whose section is under pressure for fewer hours than the station leaks
 * that share of the time, spread evenly.
 *
 * @returns what each leak saves when all of them go, or a refusal of the station model
 */
export function stationLeaks(
	year: ReadyYear,
	leaks: readonly WeighedLeak[],
	air: SiteAir
): Result<StationLeaks> {
	const { parts } = year.year;
	const hours = pressurisedHours(year);
	const pressures = [
		...new Set(
			parts.flatMap((part) => (part.air.state === 'on' ? part.air.setPressureBarGauge : []))
		)
	];
	const classOf = parts.map((part) =>
		part.air.state === 'on' ? pressures.indexOf(part.air.setPressureBarGauge) : -1
	);
	const flows: Float64Array[] = [];
	const totals = new Float64Array(parts.length);
	for (const leak of leaks) {
		const flow = inletFlows(leak, pressures, hours, air);
		if (!flow.ok) return flow;
		flows.push(flow.value);
		for (let part = 0; part < parts.length; part++)
			totals[part] = (totals[part] ?? 0) + at(flow.value, classOf[part]);
	}
	const outcome = yearWithLeaks(year, totals);
	if (!outcome.ok) return outcome;
	const rates = outcome.value.parts.map((part) => part.savingKwhPerM3PerMin);
	const minutes = parts.map((part) =>
		part.air.state === 'on' ? part.hoursPerYear * SECONDS_PER_MINUTE : 0
	);
	return ok({
		outcome: outcome.value,
		flowInPart: (leak, part) => at(flows[leak] ?? NO_FLOWS, classOf[part]),
		leaks: flows.map((flow) => {
			const sumOf = (rate: (part: number) => number) =>
				parts.reduce((sum, _, part) => sum + rate(part) * at(flow, classOf[part]), 0);
			return {
				energyKwh: sumOf((part) => rates[part] ?? 0),
				savingKwhByPart: (price) => sumOf((part) => (rates[part] ?? 0) * price(part)),
				inletM3: sumOf((part) => minutes[part] ?? 0)
			};
		})
	});
}

const NO_FLOWS = new Float64Array(0);

function at(flow: Float64Array, index: number | undefined): number {
	return index === undefined || index < 0 ? 0 : (flow[index] ?? 0);
}

/** What a leak's flow is reckoned with while the station holds a set pressure. METHOD W4. */
export interface FlowAtSet {
	readonly barGauge: number;
	readonly massFlow: number;
	/** Share of the station's hours in which its section is under pressure. */
	readonly share: number;
	readonly inletM3PerMin: number;
}

/**
 * A leak's flow while the station holds a set pressure: it stands under its own pressure, and never
 * under more than the station holds.
 *
 * @param stationHours hours a year in which the station keeps pressure up
 * @returns flow in m³/min at inlet conditions with what it was made from, or a refusal of the ranges
 */
export function flowAtSet(
	leak: WeighedLeak,
	setPressure: number,
	stationHours: number,
	air: SiteAir
): Result<FlowAtSet> {
	const { flow, pressure, hours } = leak;
	const share = hours.origin === 'section' ? Math.min(1, hours.value / stationHours) : 1;
	const bar = pressure.origin === 'supply' ? setPressure : Math.min(pressure.value, setPressure);
	let massFlow: number = flow.massFlow;
	if (bar !== pressure.value) {
		const line = lineAir({
			linePressure: gaugeFromBar(bar),
			lineTemperature: air.temperature,
			site: air
		});
		if (!line.ok) return line;
		massFlow = flow.dutyFactor * flowThrough(flow.area, line.value).massFlow;
	}
	const density = referenceDensity('site', air);
	const inletM3PerMin = (massFlow / density) * SECONDS_PER_MINUTE * share;
	return ok({ barGauge: bar, massFlow, share, inletM3PerMin });
}

/** A leak's flow at each set pressure, m³/min at inlet conditions. */
function inletFlows(
	leak: WeighedLeak,
	pressures: readonly number[],
	stationHours: number,
	air: SiteAir
): Result<Float64Array> {
	const flows = new Float64Array(pressures.length);
	for (const [index, setPressure] of pressures.entries()) {
		const flow = flowAtSet(leak, setPressure, stationHours, air);
		if (!flow.ok) return flow;
		flows[index] = flow.value.inletM3PerMin;
	}
	return ok(flows);
}
