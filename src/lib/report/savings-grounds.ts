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
import { proof } from '../words/proof.ts';
import { regrowthGrounds } from '../words/savings.ts';
import { savingsReport } from '../words/savings-report.ts';
import { signed } from '../words/signed.ts';
import type { PrintFormat } from './model.ts';
import { rangeText, type Shower } from './savings-show.ts';

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
	const words = savingsReport;
	return [
		words.conditionsOf(after.name),
		conditionsKept ? words.conditionsKept(before.name) : words.conditionsNotKept(before.name),
		words.energyBy(METHOD_WORDS[method]),
		...words.assumptions,
		...(prices.carbon
			? [
					words.carbon(
						format.significant(prices.carbon.kgCo2ePerKwh),
						prices.carbon.source,
						String(prices.carbon.year)
					)
				]
			: []),
		words.rules
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
			reason: savingsReport.routine
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
	return savingsReport.otherwise[what](String(tag), evidence ? EVIDENCE_WORDS[evidence] : '');
}

export function wouldChangeOf(
	{ terms, counts }: Comparison,
	measured: Result<MeasuredSaving>,
	show: Shower
): string[] {
	const words = savingsReport;
	return [
		...(counts.claimed > 0 ? [words.soapClaimed(show.value(terms.claimed))] : []),
		...(counts['not-reached'] > 0 ? [words.restsOnUnseen(show.value(terms.notReached))] : []),
		...(measured.ok ? [] : [words.testBoth]),
		words.bothAlike
	];
}

export function ratesOf(
	survey: Survey,
	comparison: Comparison,
	spread: ComparisonSpread,
	format: PrintFormat
): RateLines {
	const words = savingsReport;
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
				? [words.leftAlone(text(Number(rate.value.toPrecision(2))), rangeText(rate, text))]
				: []),
			...(days && days.value < FAR_DAYS
				? [words.nextRound(dayAfter(days.value), dayAfter(days.low), dayAfter(days.high))]
				: []),
			regrowthGrounds(growth, format)
		],
		rows: [
			...kinds
				.slice(0, KINDS)
				.map((kind) =>
					rateRow(words.kind(PART_WORDS[kind.part], ACTION_WORDS[kind.action]), kind, format)
				),
			...(all ? [rateRow(proof.rates.all, all, format)] : [])
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
		back: proof.rates.ofWatched(format.count(returned), format.count(watched)),
		perYear: proof.rates.perYear(two(perYear), two(low), two(high))
	};
}
