import { bridgeBars } from '../core/prove/bridge.ts';
import { compareRounds, type Comparison } from '../core/prove/compare.ts';
import { comparisonSpread, type ComparisonSpread } from '../core/prove/intervals.ts';
import { measuredSaving, type MeasuredRound, type MeasuredSaving } from '../core/prove/measured.ts';
import { payback, type Payback } from '../core/prove/payback.ts';
import type { Survey } from '../core/survey/schema.ts';
import { ok, type Refusal, type Result } from '../core/units/result.ts';
import type { Spread } from '../core/weigh/uncertainty/spread.ts';
import { documentLanguage, type DocumentLanguage } from '../words/document-language.ts';
import { proof } from '../words/proof.ts';
import { AGREEMENT_WORDS, BRIDGE_WORDS } from '../words/prove.ts';
import { refusalSentence } from '../words/refusals.ts';
import { paybackSentence, timeText } from '../words/savings.ts';
import { savingsReport } from '../words/savings-report.ts';
import { signed } from '../words/signed.ts';
import type { Figure, PrintFormat } from './model.ts';
import { groupsOf, notReachedOf, type EvidenceGroup, type NotReached } from './savings-evidence.ts';
import {
	adjustmentsOf,
	assumptionsOf,
	otherwiseOf,
	ratesOf,
	wouldChangeOf,
	type AdjustmentLine,
	type OtherwiseLine,
	type RateLines
} from './savings-grounds.ts';
import { besideText, rangeText, shower, type Shower } from './savings-show.ts';

/** One strength of the saving, as it stands beside the others. */
export interface StrengthLine {
	readonly name: string;
	readonly value: string;
	/** Empty where there is none. */
	readonly interval: string;
	readonly note: string;
}

/** One bar of the bridge; its ends are shares of the widest bar. */
export interface BridgeLine {
	readonly label: string;
	readonly value: string;
	readonly from: number;
	readonly to: number;
	readonly kind: 'whole' | 'less' | 'more';
}

/** The savings report as plain data: every number is text already. */
export interface SavingsModel {
	readonly title: string;
	readonly language: DocumentLanguage;
	readonly site: string;
	readonly rounds: string;
	readonly printedOn: string;
	readonly printedAt: string;
	readonly headline: string;
	readonly strengths: readonly StrengthLine[];
	readonly agreement?: string;
	readonly bridge: readonly BridgeLine[];
	readonly mendedNote?: string;
	readonly figures: readonly Figure[];
	/** When what was spent is earned back, and what is missing from it. */
	readonly payback: string;
	readonly otherwise: readonly OtherwiseLine[];
	readonly rates: RateLines;
	readonly adjustments: readonly AdjustmentLine[];
	readonly groups: readonly EvidenceGroup[];
	readonly notReached: NotReached;
	readonly assumptions: readonly string[];
	readonly wouldChange: readonly string[];
}

export interface SavingsOptions {
	readonly format: PrintFormat;
	readonly printedAt: string;
}

/** Puts the comparison of two rounds into words and figures, ready for any kind of page. */
export function savingsModel(
	survey: Survey,
	beforeId: string,
	afterId: string,
	{ format, printedAt }: SavingsOptions
): Result<SavingsModel> {
	const compared = compareRounds(survey, beforeId, afterId);
	if (!compared.ok) return compared;
	const comparison = compared.value;
	const drawn = comparisonSpread(survey, comparison);
	if (!drawn.ok) return drawn;
	const spread = drawn.value;
	const measured = measuredSaving(survey, comparison, spread);
	const paid = payback(survey, comparison, spread);
	const show = shower(comparison, format);
	const { before, after, terms } = comparison;
	const mendedNote = mendedNoteOf(comparison, show);
	return ok({
		title: savingsReport.title,
		language: documentLanguage(),
		site: survey.site.name,
		rounds: savingsReport.rounds(
			before.name,
			format.date(before.startedAt),
			after.name,
			format.date(after.startedAt)
		),
		printedOn: format.date(printedAt),
		printedAt,
		headline: savingsReport.headline(
			show.value(terms.held, spread.terms.held),
			show.interval(spread.terms.held)
		),
		strengths: strengthsOf(comparison, spread, measured, show, format),
		...(measured.ok && { agreement: AGREEMENT_WORDS[measured.value.agreement] }),
		bridge: bridgeOf(comparison, show),
		...(mendedNote && { mendedNote }),
		figures: [...figuresOf(comparison, spread, format), paybackFigure(paid, format)],
		payback: paid ? paybackSentence(paid, format) : proof.payback.unknown,
		otherwise: otherwiseOf(comparison, show),
		rates: ratesOf(survey, comparison, spread, format),
		adjustments: adjustmentsOf(comparison, format),
		groups: groupsOf(survey, comparison, show, format),
		notReached: notReachedOf(survey, comparison, show, format),
		assumptions: assumptionsOf(survey, comparison, format),
		wouldChange: wouldChangeOf(comparison, measured, show)
	});
}

function strengthsOf(
	{ terms, counts }: Comparison,
	spread: ComparisonSpread,
	measured: Result<MeasuredSaving>,
	show: Shower,
	format: PrintFormat
): StrengthLine[] {
	const names = proof.strengths;
	const perKg = terms.before.freeAirM3PerS / terms.before.massFlowKgPerS;
	const testText = ({ massFlowKgPerS, doneAt, name }: MeasuredRound) =>
		savingsReport.test(format.flow(massFlowKgPerS * perKg), format.date(doneAt), name);
	const measuredMiddle = (found: MeasuredSaving) =>
		show.text(
			found.costMinorPerYear?.median ??
				found.energyKwhPerYear?.median ??
				found.massFlowKgPerS.median * perKg
		);
	return [
		{
			name: names.claimed,
			value: show.value(terms.claimed, spread.terms.claimed),
			interval: show.interval(spread.terms.claimed),
			note: proof.claimedNote(counts.claimed, format.count(counts.claimed))
		},
		{
			name: names.proved,
			value: show.value(terms.held, spread.terms.held),
			interval: show.interval(spread.terms.held),
			note: proof.provedNote(counts.held, format.count(counts.held))
		},
		measured.ok
			? {
					name: names.measured,
					value: measuredMiddle(measured.value),
					interval: show.interval(measured.value),
					note: savingsReport.tests(testText(measured.value.before), testText(measured.value.after))
				}
			: {
					name: names.measured,
					value: savingsReport.notMeasured,
					interval: '',
					note: unmeasured(measured.error)
				}
	];
}

/** On paper nobody can add a test: only what is lacking is said. */
function unmeasured(refusal: Refusal): string {
	return refusal.code === 'system-tests-missing'
		? savingsReport.noTest(String(refusal.detail?.['round'] ?? ''))
		: refusalSentence(refusal);
}

/** What “Mended” holds beside what is proved, where something came back. */
function mendedNoteOf({ terms, counts }: Comparison, show: Shower): string | undefined {
	if (counts.again === 0) return undefined;
	const cameBack = show.of(terms.mended) - show.of(terms.held);
	return proof.mendedHolds(show.value(terms.held), show.text(cameBack));
}

function bridgeOf({ terms }: Comparison, show: Shower): BridgeLine[] {
	const bars = bridgeBars({
		before: show.of(terms.before),
		mended: show.of(terms.mended),
		again: show.of(terms.again),
		new: show.of(terms.new),
		changed: show.of(terms.changed),
		after: show.of(terms.after)
	});
	const widest = Math.max(...bars.flatMap(({ from, to }) => [from, to])) || 1;
	return bars.map(({ term, from, to }) => {
		const whole = term === 'before' || term === 'after';
		const change = to - from;
		return {
			label: BRIDGE_WORDS[term],
			value: whole ? show.text(to) : signed(change, show.text),
			from: from / widest,
			to: to / widest,
			kind: whole ? 'whole' : change < 0 ? 'less' : 'more'
		};
	});
}

function figuresOf(
	{ avoided, byHand }: Comparison,
	spread: ComparisonSpread,
	format: PrintFormat
): Figure[] {
	const { energyKwhPerYear: energy, costMinorPerYear: cost, co2KgPerYear: carbon } = avoided;
	const ends = spread.terms.avoided;
	const shift = byHand.reduce(
		(sum, each) => ({
			kwh: sum.kwh + each.energyKwhPerYear,
			minor: sum.minor + (each.costMinorPerYear ?? 0)
		}),
		{ kwh: 0, minor: 0 }
	);
	const moved = (range: Spread | undefined, by: number) =>
		range && { ...range, low: range.low + by, high: range.high + by };
	const figure = (
		label: string,
		value: number | undefined,
		range: Spread | undefined,
		text: (value: number, beside?: number) => string
	): Figure => ({
		label,
		value: value === undefined ? savingsReport.notKnown : besideText(value, range, text),
		...(range && { note: rangeText(range, text) })
	});
	const perKwh = energy && carbon !== undefined ? carbon / energy : 0;
	return [
		figure(
			savingsReport.lessEnergy,
			energy,
			moved(ends.energyKwhPerYear, shift.kwh),
			format.energy
		),
		figure(savingsReport.lessMoney, cost, moved(ends.costMinorPerYear, shift.minor), format.money),
		figure(
			savingsReport.lessCarbon,
			carbon,
			moved(ends.co2KgPerYear, shift.kwh * perKwh),
			format.carbon
		)
	];
}

function paybackFigure(paid: Payback | undefined, format: PrintFormat): Figure {
	const label = savingsReport.payback;
	if (paid?.years === undefined) return { label, value: savingsReport.notKnown };
	const { years, low, high } = paid;
	const end = (at: number | undefined) =>
		at === undefined ? proof.payback.never : timeText(at, format);
	return { label, value: timeText(years, format), note: proof.range(end(low), end(high)) };
}
