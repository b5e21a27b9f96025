import type { CommandBody } from './command.ts';
import { find } from './ids.ts';
import { leaksInOrder, nextTag, sightingIn } from './leak-state.ts';
import { isPinnedOutside } from './pin-sections.ts';
import { sectionAt } from './plan-geometry.ts';
import { largeSize, likelyPressures, oddPrice, PLAUSIBLE_BAR } from './plausible.ts';
import type { Leak, Section, Survey } from './schema.ts';

export type CheckId =
	| 'air-pressure-missing'
	| 'supply-missing'
	| 'supply-pressure-implausible'
	| 'price-missing'
	| 'price-implausible'
	| 'section-hours-implausible'
	| 'section-hours-missing'
	| 'section-pressure-implausible'
	| 'section-valve-missing'
	| 'leak-size-missing'
	| 'leak-section-missing'
	| 'leak-outside-section'
	| 'leak-pressure-missing'
	| 'leak-pressure-implausible'
	| 'leak-size-implausible'
	| 'leak-tag-twice'
	| 'leak-pin-missing';

/** Something doubtful or missing: it never stops the walk, and each fix is a command. */
export interface Check {
	readonly id: CheckId;
	/** `blocks` when a figure cannot be had without it, `doubt` when one may be wrong. */
	readonly severity: 'blocks' | 'doubt';
	readonly leakId?: string;
	readonly sectionId?: string;
	/** The quantities that look wrong, units in their names. */
	readonly detail: Readonly<Record<string, string | number>>;
	/** What would mend it, likeliest first; often there is none but to look again. */
	readonly fixes: readonly CommandBody[];
}

const HOURS_PER_YEAR = 8760;
/** Less than two hours a week is more likely a slip, such as 8.760 for 8,760: our starting value. */
const LEAST_HOURS = 100;

/** Everything that looks doubtful or is missing in a survey, the site first, then by leak. */
export function checkSurvey(survey: Survey, roundId: string): Check[] {
	const sections = Object.values(survey.sections).filter(({ removed }) => !removed);
	const leaks = leaksInOrder(survey);
	return [
		...checkSite(survey),
		...sections.flatMap((section) => checkSection(survey, section)),
		...checkTags(survey, leaks),
		...leaks.flatMap((leak) => checkLeak(survey, leak, roundId))
	];
}

function checkSite(survey: Survey): Check[] {
	const found: Check[] = [];
	const { site, supply, prices } = survey;
	if (site.altitudeM === undefined && site.barometerKPa === undefined)
		found.push({
			id: 'air-pressure-missing',
			severity: 'blocks',
			detail: {},
			fixes: [{ kind: 'set-site', changes: { altitudeM: 0 } }]
		});
	if (!supply.quick && !supply.station)
		found.push({ id: 'supply-missing', severity: 'blocks', detail: {}, fixes: [] });
	const { setPressureBarGauge: bar } = supply;
	if (bar !== undefined && bar > PLAUSIBLE_BAR)
		found.push({
			id: 'supply-pressure-implausible',
			severity: 'doubt',
			detail: { pressureBarGauge: bar },
			fixes: likelyPressures(bar).map((setPressureBarGauge) => ({
				kind: 'set-supply',
				changes: { setPressureBarGauge }
			}))
		});
	if (prices.pricePerKwh === undefined)
		found.push({ id: 'price-missing', severity: 'blocks', detail: {}, fixes: [] });
	return [...found, ...checkPrices(survey)];
}

function checkPrices({ prices, site }: Survey): Check[] {
	const { pricePerKwh, periodPrices = [] } = prices;
	const found: Check[] = [];
	const ask = (name: string, price: number, fix: (price: number) => CommandBody): void => {
		const likely = oddPrice(price, site.currency);
		if (!likely) return;
		found.push({
			id: 'price-implausible',
			severity: 'doubt',
			detail: { name, pricePerKwh: price },
			fixes: likely.map(fix)
		});
	};
	if (pricePerKwh !== undefined)
		ask('', pricePerKwh, (price) => ({ kind: 'set-prices', changes: { pricePerKwh: price } }));
	for (const period of periodPrices)
		ask(period.name, period.pricePerKwh, (price) => ({
			kind: 'set-prices',
			changes: {
				periodPrices: periodPrices.map((each) =>
					each === period ? { ...each, pricePerKwh: price } : each
				)
			}
		}));
	return found;
}

function checkSection(survey: Survey, section: Section): Check[] {
	const found: Check[] = [];
	const at = { sectionId: section.id } as const;
	const set = (changes: Extract<CommandBody, { kind: 'set-section' }>['changes']): CommandBody => ({
		kind: 'set-section',
		sectionId: section.id,
		changes
	});
	const { pressureBarGauge, pressurisedHoursPerYear: hours } = section;
	if (pressureBarGauge !== undefined && pressureBarGauge > PLAUSIBLE_BAR)
		found.push({
			...at,
			id: 'section-pressure-implausible',
			severity: 'doubt',
			detail: { name: section.name, pressureBarGauge },
			fixes: likelyPressures(pressureBarGauge).map((bar) => set({ pressureBarGauge: bar }))
		});
	if (hours === undefined && !survey.supply.station)
		found.push({
			...at,
			id: 'section-hours-missing',
			severity: 'blocks',
			detail: { name: section.name },
			fixes: [set({ pressurisedHoursPerYear: HOURS_PER_YEAR })]
		});
	if (hours !== undefined && (hours > HOURS_PER_YEAR + 24 || hours < LEAST_HOURS))
		found.push({
			...at,
			id: 'section-hours-implausible',
			severity: 'doubt',
			detail: { name: section.name, hours },
			fixes: [set({ pressurisedHoursPerYear: HOURS_PER_YEAR })]
		});
	if (!section.valve?.trim())
		found.push({
			...at,
			id: 'section-valve-missing',
			severity: 'doubt',
			detail: { name: section.name },
			fixes: []
		});
	return found;
}

/** Two leaks with one number: the one that sorts later is offered the next free tag. */
function checkTags(survey: Survey, leaks: readonly Leak[]): Check[] {
	const next = nextTag(survey);
	return leaks
		.filter((leak, index) => leaks[index - 1]?.tag === leak.tag)
		.map((leak, index) => ({
			id: 'leak-tag-twice',
			severity: 'doubt',
			leakId: leak.id,
			detail: { tag: leak.tag, freeTag: next + index },
			fixes: [{ kind: 'set-leak', leakId: leak.id, changes: { tag: next + index } }]
		}));
}

/** Slips in what was read at a leak; of one that is not pinned yet too. Each fix is a sighting. */
export function checkReadings(leak: Leak, roundId: string): Check[] {
	const sighting = sightingIn(leak, roundId);
	if (sighting?.state !== 'leaking') return [];
	const { evidence, pressureBarGauge } = sighting;
	const { tag, id: leakId } = leak;
	const see = (read: Partial<typeof sighting>): CommandBody => ({
		kind: 'record-sighting',
		leakId,
		roundId,
		sighting: { ...sighting, ...read }
	});
	const found: Check[] = [];
	if (pressureBarGauge !== undefined && pressureBarGauge > PLAUSIBLE_BAR)
		found.push({
			leakId,
			id: 'leak-pressure-implausible',
			severity: 'doubt',
			detail: { tag, pressureBarGauge },
			fixes: likelyPressures(pressureBarGauge).map((bar) => see({ pressureBarGauge: bar }))
		});
	const large = evidence && largeSize(evidence);
	if (large)
		found.push({
			leakId,
			id: 'leak-size-implausible',
			severity: 'doubt',
			detail: { tag, of: large.of, value: large.value },
			fixes: large.likely.map((likely) => see({ evidence: likely }))
		});
	return found;
}

function checkLeak(survey: Survey, leak: Leak, roundId: string): Check[] {
	const found: Check[] = [];
	const at = { leakId: leak.id } as const;
	const tag = leak.tag;
	const section = find(survey.sections, leak.sectionId);
	const sighting = sightingIn(leak, roundId);
	if (sighting?.state !== 'leaking') return found;

	const { evidence, pressureBarGauge } = sighting;
	if (!evidence)
		found.push({ ...at, id: 'leak-size-missing', severity: 'blocks', detail: { tag }, fixes: [] });
	found.push(...checkReadings(leak, roundId));
	if (
		pressureBarGauge === undefined &&
		section?.pressureBarGauge === undefined &&
		survey.supply.setPressureBarGauge === undefined
	)
		found.push({
			...at,
			id: 'leak-pressure-missing',
			severity: 'blocks',
			detail: { tag },
			fixes: []
		});
	if (!section || section.removed)
		found.push({
			...at,
			id: 'leak-section-missing',
			severity: survey.supply.station ? 'doubt' : 'blocks',
			detail: { tag },
			fixes: []
		});
	if (section && !section.removed && isPinnedOutside(survey, leak)) {
		const hereId = leak.planId && leak.at && sectionAt(survey, leak.planId, leak.at);
		const here = find(survey.sections, hereId)?.name;
		found.push({
			...at,
			id: 'leak-outside-section',
			severity: 'doubt',
			detail: { tag, name: section.name, ...(here !== undefined && { here }) },
			fixes: hereId ? [{ kind: 'set-leak', leakId: leak.id, changes: { sectionId: hereId } }] : []
		});
	}
	const plans = Object.values(survey.plans).filter(({ removed }) => !removed);
	if (plans.length > 0 && !plans.some(({ id }) => id === leak.planId))
		found.push({ ...at, id: 'leak-pin-missing', severity: 'doubt', detail: { tag }, fixes: [] });
	return found;
}
