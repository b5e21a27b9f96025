import type { Comparison } from '../core/prove/compare.ts';
import type { MeasuredSaving } from '../core/prove/measured.ts';
import type { ReturnRate } from '../core/prove/rate.ts';
import { returnRates } from '../core/prove/rate.ts';
import { regrowth } from '../core/prove/regrowth.ts';
import type { ComparisonSpread } from '../core/prove/intervals.ts';
import { sensitivity, type Otherwise } from '../core/prove/sensitivity.ts';
import type { Survey } from '../core/survey/schema.ts';
import type { Result } from '../core/units/result.ts';
import { ACTION_WORDS, METHOD_WORDS } from '../words/actions.ts';
import { EVIDENCE_WORDS } from '../words/evidence.ts';
import { PART_WORDS } from '../words/parts.ts';
import { ROUTINE_WORDS } from '../words/prove.ts';
import { regrowthGrounds } from '../words/savings.ts';
import type { PrintFormat } from './model.ts';
import { rangeText, signed, type Shower } from './savings-show.ts';

/** One other reading of the evidence, and what would have been avoided by it. */
export interface OtherwiseLine {
	readonly what: string;
	readonly value: string;
	/** Against what the report says. */
	readonly change: string;
}

/** How fast it comes back, and what that rests on. */
export interface RateLines {
	readonly sentences: readonly string[];
	readonly rows: readonly {
		readonly what: string;
		readonly back: string;
		readonly perYear: string;
	}[];
}

export interface AdjustmentLine {
	readonly what: string;
	readonly size: string;
	readonly reason: string;
}

export function assumptionsOf(
	survey: Survey,
	comparison: Comparison,
	format: PrintFormat
): string[] {
	const { method, after, conditionsKept, before } = comparison;
	const prices = (after.conditions ?? survey).prices;
	return [
		`Both rounds stand under the conditions of ${after.name}: pressure, hours, supply, demand and prices.`,
		conditionsKept
			? `The conditions of ${before.name} were kept when it was closed.`
			: `The conditions of ${before.name} were not kept, so no adjustment from them can be shown.`,
		`Energy by the ${METHOD_WORDS[method]}.`,
		'What nobody reached is counted as leaking by its last reading; a claim is not counted as saved.',
		'What one method or one gauge gets wrong is the same in both rounds and cancels in the difference.',
		'The interval is of the sizes of the leaks; prices and the supply are taken as known.',
		'Payback sets all that was written down as spent on repairs against what soap has proved, undiscounted.',
		...(prices.carbon
			? [
					`CO₂e: ${format.significant(prices.carbon.kgCo2ePerKwh)} kg for each kWh (${prices.carbon.source}, ${String(prices.carbon.year)}).`
				]
			: []),
		'Rules V1 to V10 of METHOD.md.'
	];
}

export function adjustmentsOf(
	{ routine, byHand }: Comparison,
	format: PrintFormat
): AdjustmentLine[] {
	const size = (kwh: number, minor: number | undefined) =>
		[
			...(Math.abs(kwh) < 1e-6 ? [] : [signed(kwh, format.energy)]),
			...(minor === undefined ? [] : [signed(minor, format.money)])
		].join(', ');
	return [
		...routine.map(({ what, energyKwhPerYear, costMinorPerYear }) => ({
			what: ROUTINE_WORDS[what],
			size: size(energyKwhPerYear, costMinorPerYear),
			reason: 'routine: put to the later round’s'
		})),
		...byHand.map(({ what, reason, energyKwhPerYear, costMinorPerYear }) => ({
			what,
			size: size(energyKwhPerYear, costMinorPerYear),
			reason
		}))
	];
}

/** The avoided sum with one thing at a time seen otherwise. */
export function otherwiseOf(comparison: Comparison, show: Shower): OtherwiseLine[] {
	const air = comparison.terms.avoided.freeAirM3PerS;
	const of = (avoided: Comparison['avoided']) =>
		show.of({ massFlowKgPerS: 0, freeAirM3PerS: air, ...avoided });
	const now = of(comparison.avoided);
	return sensitivity(comparison).map((each) => ({
		what: otherwiseWords(each),
		value: show.text(of(each.avoided)),
		change: signed(of(each.avoided) - now, show.text)
	}));
}

function otherwiseWords({ what, tag, evidence }: Otherwise): string {
	switch (what) {
		case 'claims-hold':
			return 'Every claim proves to hold';
		case 'not-reached-tight':
			return 'What nobody reached is tight';
		case 'largest-smaller':
			return `Leak ${String(tag)}, the largest that is proved, was half as large as judged`;
		case 'method-smaller':
			return `All that was sized by “${evidence ? EVIDENCE_WORDS[evidence] : ''}” is a third smaller, in both rounds`;
	}
}

export function wouldChangeOf(
	{ terms, counts }: Comparison,
	measured: Result<MeasuredSaving>,
	show: Shower
): string[] {
	return [
		...(counts.claimed > 0
			? [
					`Soaping what is claimed would move up to ${show.value(terms.claimed)} a year from claimed to proved.`
				]
			: []),
		...(counts['not-reached'] > 0
			? [`${show.value(terms.notReached)} a year rests on leaks that nobody looked at again.`]
			: []),
		...(measured.ok
			? []
			: ['A system test in both rounds would measure the saving without any estimate of a size.']),
		'A new price or new hours change both rounds alike, in proportion; a new reading of one leak changes its line alone.'
	];
}

export function ratesOf(
	survey: Survey,
	comparison: Comparison,
	spread: ComparisonSpread,
	format: PrintFormat
): RateLines {
	const growth = regrowth(comparison, spread);
	const { all, kinds } = returnRates(survey);
	const { costMinorPerYearPerYear: cost, energyKwhPerYearPerYear: energy } = growth;
	const [rate, text] = cost ? [cost, format.money] : [energy, format.energy];
	const days = growth.nextRoundInDays;
	const dayAfter = (days: number) =>
		format.date(
			new Date(
				Date.parse(comparison.after.startedAt) + Math.min(days, FAR_DAYS) * DAY_MS
			).toISOString()
		);
	return {
		sentences: [
			...(rate
				? [
						`Left alone, ${text(Number(rate.value.toPrecision(2)))} more a year (90 %: ${rangeText(rate, text)}) comes back or opens with each year; a yearly round is worth about that much.`
					]
				: []),
			...(days && days.value < FAR_DAYS
				? [
						`Next round by ${dayAfter(days.value)} (${dayAfter(days.low)} to ${dayAfter(days.high)}): by then a quarter of what is held is lost again.`
					]
				: []),
			regrowthGrounds(growth, format)
		],
		rows: [
			...kinds
				.slice(0, KINDS)
				.map((kind) =>
					rateRow(`${PART_WORDS[kind.part]}: ${ACTION_WORDS[kind.action]}`, kind, format)
				),
			...(all ? [rateRow('All', all, format)] : [])
		]
	};
}

const DAY_MS = 86_400_000;
/** A round that is further off than a lifetime is not named. */
const FAR_DAYS = 36_500;
/** So many kinds of joint are listed, the fastest first. */
const KINDS = 12;

function rateRow(
	what: string,
	{ returned, watched, perYear, low, high }: ReturnRate,
	format: PrintFormat
): RateLines['rows'][number] {
	const two = (value: number) => format.significant(value, 2);
	return {
		what,
		back: `${format.count(returned)} of ${format.count(watched)}`,
		perYear: `${two(perYear)} (${two(low)} to ${two(high)})`
	};
}
