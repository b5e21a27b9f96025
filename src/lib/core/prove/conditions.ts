import { find } from '../survey/ids.ts';
import type { Round, RoundConditions, Section, Survey } from '../survey/schema.ts';

type Station = NonNullable<Survey['supply']['station']>;
type Air = Station['schedule']['closed'];

/** What the sums of a survey stand on at this moment, to be kept with a round. METHOD V2. */
export function conditionsOf(survey: Survey): RoundConditions {
	const { site, supply, prices } = survey;
	return {
		site,
		supply,
		prices,
		sections: Object.fromEntries(
			Object.values(survey.sections).map(({ id, pressureBarGauge, pressurisedHoursPerYear }) => [
				id,
				{
					...(pressureBarGauge !== undefined && { pressureBarGauge }),
					...(pressurisedHoursPerYear !== undefined && { pressurisedHoursPerYear })
				}
			])
		)
	};
}

/** The survey as its sums stood in a round: with what was kept with the round, if anything was. METHOD V2. */
export function surveyIn(survey: Survey, round: Round): Survey {
	const { conditions } = round;
	if (!conditions) return survey;
	const { site, supply, prices } = conditions;
	return { ...survey, site, supply, prices, sections: sectionsWith(survey, conditions.sections) };
}

function sectionsWith(survey: Survey, kept: RoundConditions['sections']): Survey['sections'] {
	return mapSections(survey, (section) => {
		const { pressureBarGauge, pressurisedHoursPerYear, ...rest } = section;
		const then = find(kept, section.id);
		return then
			? { ...rest, ...then }
			: { ...rest, ...given({ pressureBarGauge, pressurisedHoursPerYear }) };
	});
}

/** The conditions that a routine adjustment may be for, in the order in which they are priced. */
export const ROUTINE = ['site', 'pressure', 'hours', 'supply', 'demand', 'tariff'] as const;
export type Routine = (typeof ROUTINE)[number];

/** The survey with one more condition of `to` at each step; the last has all of them. METHOD V5. */
export function stepsBetween(
	from: Survey,
	to: Survey
): readonly { readonly what: Routine; readonly survey: Survey }[] {
	let here = from;
	return ROUTINE.map((what) => {
		here = STEPS[what](here, to);
		return { what, survey: here };
	});
}

/** Whether two surveys give the same leaks the same figures. */
export function sameConditions(a: Survey, b: Survey): boolean {
	return JSON.stringify(conditionsOf(a)) === JSON.stringify(conditionsOf(b));
}

const STEPS: Readonly<Record<Routine, (here: Survey, to: Survey) => Survey>> = {
	site: (here, to) => ({ ...here, site: to.site }),
	pressure: (here, to) => ({
		...here,
		sections: mapSections(here, ({ pressureBarGauge: _, ...rest }) => ({
			...rest,
			...given({ pressureBarGauge: find(to.sections, rest.id)?.pressureBarGauge })
		})),
		supply: {
			...without(here.supply, 'setPressureBarGauge'),
			...given({ setPressureBarGauge: to.supply.setPressureBarGauge }),
			...withStation(here, to, (mine, theirs) =>
				withAir(mine, theirs, (a, b) => ({ ...a, setPressureBarGauge: b.setPressureBarGauge }))
			)
		}
	}),
	hours: (here, to) => ({
		...here,
		sections: mapSections(here, ({ pressurisedHoursPerYear: _, ...rest }) => ({
			...rest,
			...given({ pressurisedHoursPerYear: find(to.sections, rest.id)?.pressurisedHoursPerYear })
		})),
		supply: {
			...here.supply,
			...withStation(here, to, (mine, theirs) => ({
				...mine,
				schedule: withAir(theirs, mine, (_, b) => b).schedule
			}))
		}
	}),
	supply: (here, to) => {
		const { station, ...rest } = to.supply;
		const schedule = here.supply.station?.schedule;
		return {
			...here,
			supply: {
				...rest,
				...(station && { station: { ...station, ...(schedule && { schedule }) } })
			}
		};
	},
	demand: (here, to) => ({ ...here, supply: to.supply }),
	tariff: (here, to) => ({ ...here, prices: to.prices })
};

function withStation(
	here: Survey,
	to: Survey,
	change: (mine: Station, theirs: Station) => Station
): { station?: Station } {
	const [mine, theirs] = [here.supply.station, to.supply.station];
	return mine && theirs ? { station: change(mine, theirs) } : {};
}

type AirOn = Extract<Air, { state: 'on' }>;

/** The station with the air of its periods changed where the other has the same period, on in both. */
function withAir(mine: Station, theirs: Station, change: (a: AirOn, b: AirOn) => AirOn): Station {
	const changed = (a: Air, b: Air | undefined): Air =>
		a.state === 'on' && b?.state === 'on' ? change(a, b) : a;
	const others = new Map(theirs.schedule.periods.map((period) => [period.id, period.air]));
	return {
		...mine,
		schedule: {
			...mine.schedule,
			periods: mine.schedule.periods.map((period) => ({
				...period,
				air: changed(period.air, others.get(period.id))
			})),
			closed: changed(mine.schedule.closed, theirs.schedule.closed)
		}
	};
}

function mapSections(survey: Survey, change: (section: Section) => Section): Survey['sections'] {
	return Object.fromEntries(
		Object.entries(survey.sections).map(([id, section]) => [id, change(section)])
	);
}

function given<T extends object>(fields: T): { [K in keyof T]?: NonNullable<T[K]> } {
	return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
		[K in keyof T]?: NonNullable<T[K]>;
	};
}

function without<T extends object, K extends keyof T>(object: T, key: K): Omit<T, K> {
	const { [key]: _, ...rest } = object;
	return rest;
}
