import type { SiteAir } from '../../air/gas-state.ts';
import { withPressureStep } from '../../supply/pressure.ts';
import { workFactor } from '../../supply/isentropic.ts';
import { CLOSED } from '../../supply/schedule.ts';
import { inProcessTerms, type SupplyYear } from '../../supply/supply-year.ts';
import type { Leak, Section, Survey } from '../../survey/schema.ts';
import type { Prices } from '../../survey/supply-schema.ts';
import type { SupplyStation } from '../../survey/station-schema.ts';
import { toSi } from '../../units/convert.ts';
import { as, type PascalAbsolute } from '../../units/quantity.ts';
import { ok, refuse, type Result } from '../../units/result.ts';
import { pressurisedHours, stationYear } from '../station-year.ts';
import type { Change } from './change.ts';

/**
 * Up to so far below the set pressure a gauge shows the drop along the pipes; what stands lower has a
 * regulator and does not follow. METHOD W15.
 * @source our starting value
 */
export const FOLLOWS_WITHIN_BAR = 1;

/** The highest pressure that the supply is set to; absent where nobody has said. */
export function setPressureOf(survey: Survey): number | undefined {
	const { station, setPressureBarGauge } = survey.supply;
	const on = station
		? [...station.schedule.periods.map(({ air }) => air), station.schedule.closed].flatMap((air) =>
				air.state === 'on' ? air.setPressureBarGauge : []
			)
		: [];
	return on.length > 0 ? Math.max(...on) : setPressureBarGauge;
}

/**
 * A copy of the survey with the change in it; the survey itself stays as it is. METHOD W15.
 *
 * The station's demand is restated as what production uses, so that what the leaks take can change
 * by itself.
 * @param leaksInParts all leaks of today in each part of the station's year, m³/min at inlet
 * @returns the copy, or a refusal of the figures tried
 */
export function changedSurvey(
	survey: Survey,
	change: Change,
	air: SiteAir,
	leaksInParts: readonly number[]
): Result<Survey> {
	let copy: Survey = { ...survey, prices: changedPrices(survey.prices, change.pricePerKwh) };
	const { station } = survey.supply;
	if (station) {
		const inProcess = inProcessTerms(yearOf(station), leaksInParts).supply;
		copy = withStation(copy, restated(station, inProcess.schedule));
	}
	if (change.mended) copy = { ...copy, leaks: without(copy.leaks, change.mended) };
	if (change.pressureStepBar !== undefined && change.pressureStepBar !== 0) {
		const stepped = withStep(survey, copy, change, air, leaksInParts);
		if (!stepped.ok) return stepped;
		copy = stepped.value;
	}
	if (change.hoursShare !== undefined && !station) {
		const { hoursShare } = change;
		if (!(hoursShare >= 0 && hoursShare <= 1))
			return refuse('fraction-out-of-range', { fraction: hoursShare, least: 0, most: 1 });
		copy = { ...copy, sections: withHours(copy.sections, () => hoursShare) };
	}
	return ok(change.airOffIn && station ? withAirOff(copy, change.airOffIn, air) : copy);
}

function withStation(survey: Survey, station: SupplyStation): Survey {
	return { ...survey, supply: { ...survey.supply, station } };
}

function yearOf(station: SupplyStation): SupplyYear {
	const { schedule, demandIs, purge } = station;
	return { station, schedule, demandIs, purge };
}

/** The station with another schedule, its demand in process terms. */
function restated(station: SupplyStation, schedule: SupplyYear['schedule']): SupplyStation {
	return {
		...station,
		demandIs: 'process',
		schedule: {
			...station.schedule,
			periods: station.schedule.periods.map((period, at) => ({
				...period,
				air: schedule.periods[at]?.air ?? period.air
			})),
			closed: schedule.closed
		}
	};
}

function changedPrices(prices: Prices, pricePerKwh: number | undefined): Prices {
	if (pricePerKwh === undefined) return prices;
	const { pricePerKwh: before, periodPrices } = prices;
	const factor = before !== undefined && before > 0 ? pricePerKwh / before : 1;
	return {
		...prices,
		pricePerKwh,
		...(periodPrices && {
			periodPrices: periodPrices.map((price) => ({
				...price,
				pricePerKwh: price.pricePerKwh * factor
			}))
		})
	};
}

function without(leaks: Survey['leaks'], mended: readonly string[]): Survey['leaks'] {
	const gone = new Set(mended);
	return Object.fromEntries(Object.entries(leaks).filter(([id]) => !gone.has(id)));
}

/** Set pressures, and every pressure that follows them, moved by the step. */
function withStep(
	survey: Survey,
	copy: Survey,
	{ pressureStepBar: step = 0, unregulatedFraction = 0 }: Change,
	air: SiteAir,
	leaksInParts: readonly number[]
): Result<Survey> {
	const set = setPressureOf(survey);
	if (set === undefined) return refuse('set-pressure-missing');
	const { station, quick, setPressureBarGauge } = copy.supply;
	let moved = copy;
	if (station) {
		const year = withPressureStep(
			yearOf(station),
			leaksInParts,
			step,
			unregulatedFraction,
			air.pressure
		);
		if (!year.ok) return year;
		moved = withStation(moved, restated(station, year.value.supply.schedule));
	}
	const to = set + step;
	if (!(to > 0)) return refuse('set-pressure-out-of-range', { setPressureBarGauge: to, above: 0 });
	const follow = (bar: number) =>
		bar >= set - FOLLOWS_WITHIN_BAR ? Math.max(0, bar + step) : Math.min(bar, to);
	const work = workFactor(air.pressure, absolute(air, set), absolute(air, to));
	return ok({
		...moved,
		supply: {
			...moved.supply,
			...(setPressureBarGauge !== undefined && { setPressureBarGauge: setPressureBarGauge + step }),
			...(quick && {
				quick: { ...quick, specificPowerKwPerM3PerMin: quick.specificPowerKwPerM3PerMin * work }
			})
		},
		sections: mapped(moved.sections, (section) => ({
			...section,
			...(section.pressureBarGauge !== undefined && {
				pressureBarGauge: follow(section.pressureBarGauge)
			})
		})),
		leaks: mapped(moved.leaks, (leak) => atPressure(leak, follow))
	});
}

function atPressure(leak: Leak, follow: (bar: number) => number): Leak {
	return {
		...leak,
		sightings: mapped(leak.sightings, (sighting) => ({
			...sighting,
			...(sighting.pressureBarGauge !== undefined && {
				pressureBarGauge: follow(sighting.pressureBarGauge)
			})
		}))
	};
}

function absolute(air: SiteAir, barGauge: number): PascalAbsolute {
	return as<'Pa absolute'>(air.pressure + toSi('pressure', 'bar', barGauge));
}

/** The air off in parts of the week; sections keep their share of the hours that are left. */
function withAirOff(survey: Survey, parts: readonly string[], air: SiteAir): Survey {
	const { station } = survey.supply;
	if (!station) return survey;
	const off = { state: 'off' } as const;
	const { schedule } = station;
	const changed: SupplyStation = {
		...station,
		schedule: {
			...schedule,
			periods: schedule.periods.map((period) =>
				parts.includes(period.id) ? { ...period, air: off } : period
			),
			closed: parts.includes(CLOSED) ? off : schedule.closed
		}
	};
	const hours = (of: SupplyStation) => {
		const year = stationYear(of, air);
		return year.ok ? pressurisedHours(year.value) : 0;
	};
	const before = hours(station);
	const left = before > 0 ? hours(changed) / before : 1;
	return {
		...withStation(survey, changed),
		sections: withHours(survey.sections, (own) => (left * Math.min(own, before)) / own)
	};
}

function withHours(
	sections: Survey['sections'],
	share: (hours: number) => number
): Survey['sections'] {
	return mapped(sections, (section: Section) => {
		const hours = section.pressurisedHoursPerYear;
		if (hours === undefined || hours === 0) return section;
		return { ...section, pressurisedHoursPerYear: hours * share(hours) };
	});
}

function mapped<T>(table: Readonly<Record<string, T>>, change: (each: T) => T): Record<string, T> {
	return Object.fromEntries(Object.entries(table).map(([id, each]) => [id, change(each)]));
}
