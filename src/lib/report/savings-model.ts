import { bridgeBars } from '../core/prove/bridge.ts';
import type { Amounts } from '../core/prove/amounts.ts';
import { compareRounds, type ComparedLeak, type Comparison } from '../core/prove/compare.ts';
import {
	comparisonSpread,
	type ComparisonSpread,
	type TermSpread
} from '../core/prove/intervals.ts';
import { measuredSaving, type MeasuredSaving } from '../core/prove/measured.ts';
import { regrowth, returnRates } from '../core/prove/rate.ts';
import { find } from '../core/survey/ids.ts';
import type { Sighting, Survey } from '../core/survey/schema.ts';
import { ok, type Result } from '../core/units/result.ts';
import type { Spread } from '../core/weigh/uncertainty/spread.ts';
import { METHOD_WORDS } from '../words/actions.ts';
import { EVIDENCE_WORDS } from '../words/evidence.ts';
import { PART_WORDS } from '../words/parts.ts';
import { AGREEMENT_WORDS, BRIDGE_WORDS, FATE_WORDS, ROUTINE_WORDS } from '../words/prove.ts';
import { refusalSentence } from '../words/refusals.ts';
import type { Figure, PrintFormat } from './model.ts';

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

export interface EvidenceLine {
	readonly tag: string;
	readonly fate: string;
	readonly what: string;
	readonly where: string;
	readonly before: string;
	readonly after: string;
	/** How it was sized on either side, and when it was seen and mended. */
	readonly evidence: readonly string[];
}

export interface EvidenceGroup {
	readonly heading: string;
	readonly sum: string;
	readonly lines: readonly EvidenceLine[];
}

/** The savings report as plain data: every number is text already. */
export interface SavingsModel {
	readonly title: string;
	readonly language: 'en-GB';
	readonly site: string;
	readonly rounds: string;
	readonly printedOn: string;
	readonly printedAt: string;
	readonly headline: string;
	readonly strengths: readonly StrengthLine[];
	readonly agreement?: string;
	readonly bridge: readonly BridgeLine[];
	readonly figures: readonly Figure[];
	readonly adjustments: readonly {
		readonly what: string;
		readonly size: string;
		readonly reason: string;
	}[];
	readonly groups: readonly EvidenceGroup[];
	readonly notReached: readonly string[];
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
	const show = shower(comparison, format);
	const { before, after, terms } = comparison;
	return ok({
		title: 'Savings report',
		language: 'en-GB',
		site: survey.site.name,
		rounds: `${before.name} (${format.date(before.startedAt)}) to ${after.name} (${format.date(after.startedAt)})`,
		printedOn: format.date(printedAt),
		printedAt,
		headline: `Proved by soap: ${show.value(terms.held)} a year, 90 % interval ${show.interval(spread.terms.held)}.`,
		strengths: strengthsOf(comparison, spread, measured, show, format),
		...(measured.ok && { agreement: AGREEMENT_WORDS[measured.value.agreement] }),
		bridge: bridgeOf(comparison, show),
		figures: figuresOf(comparison, spread, format),
		adjustments: adjustmentsOf(comparison, format),
		groups: groupsOf(survey, comparison, show, format),
		notReached: notReachedOf(survey, comparison, show),
		assumptions: assumptionsOf(survey, comparison, format),
		wouldChange: wouldChangeOf(survey, comparison, spread, measured, show, format)
	});
}

interface Shower {
	readonly of: (amounts: Amounts) => number;
	readonly text: (value: number) => string;
	readonly value: (amounts: Amounts | undefined) => string;
	readonly interval: (spread: Pick<TermSpread, 'costMinorPerYear' | 'energyKwhPerYear'>) => string;
}

/** Everything is shown in money where it is known, else in energy, else in air. */
function shower({ terms }: Comparison, format: PrintFormat): Shower {
	const money = terms.before.costMinorPerYear !== undefined;
	const energy = terms.before.energyKwhPerYear !== undefined;
	const of = (amounts: Amounts) =>
		(money
			? amounts.costMinorPerYear
			: energy
				? amounts.energyKwhPerYear
				: amounts.freeAirM3PerS) ?? 0;
	const text = money ? format.money : energy ? format.energy : format.flow;
	return {
		of,
		text,
		value: (amounts) => (amounts ? text(of(amounts)) : '–'),
		interval: (spread) => {
			const ends = money ? spread.costMinorPerYear : energy ? spread.energyKwhPerYear : undefined;
			return ends ? rangeText(ends, text) : 'not known';
		}
	};
}

/** The ends of an interval claim two digits. */
function rangeText({ low, high }: Spread, text: (value: number) => string): string {
	const two = (value: number) => text(value === 0 ? 0 : Number(value.toPrecision(2)));
	return `${two(low)} to ${two(high)}`;
}

function strengthsOf(
	{ terms, counts }: Comparison,
	spread: ComparisonSpread,
	measured: Result<MeasuredSaving>,
	show: Shower,
	format: PrintFormat
): StrengthLine[] {
	const leaks = (count: number) => `${format.count(count)} ${count === 1 ? 'leak' : 'leaks'}`;
	const measuredMiddle = (found: MeasuredSaving) =>
		show.text(
			found.costMinorPerYear?.median ??
				found.energyKwhPerYear?.median ??
				(found.massFlowKgPerS.median * terms.before.freeAirM3PerS) / terms.before.massFlowKgPerS
		);
	return [
		{
			name: 'Claimed',
			value: show.value(terms.claimed),
			interval: show.interval(spread.terms.claimed),
			note: `${leaks(counts.claimed)} said to be mended, not soaped since`
		},
		{
			name: 'Proved by soap',
			value: show.value(terms.held),
			interval: show.interval(spread.terms.held),
			note: `${leaks(counts.held)} tight when last looked at`
		},
		measured.ok
			? {
					name: 'Measured by system test',
					value: measuredMiddle(measured.value),
					interval: show.interval(measured.value),
					note: `${measured.value.before.name}, then ${measured.value.after.name}`
				}
			: {
					name: 'Measured by system test',
					value: 'Not measured',
					interval: '',
					note: refusalSentence(measured.error)
				}
	];
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
			value: whole ? show.text(to) : `${change < 0 ? '−' : '+'} ${show.text(Math.abs(change))}`,
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
		text: (value: number) => string
	): Figure => ({
		label,
		value: value === undefined ? 'not known' : text(value),
		...(range && { note: rangeText(range, text) })
	});
	const perKwh = energy && carbon !== undefined ? carbon / energy : 0;
	return [
		figure('Less energy a year', energy, moved(ends.energyKwhPerYear, shift.kwh), format.energy),
		figure('Less money a year', cost, moved(ends.costMinorPerYear, shift.minor), format.money),
		figure('Less CO₂e a year', carbon, moved(ends.co2KgPerYear, shift.kwh * perKwh), format.carbon)
	];
}

function signed(value: number, text: (value: number) => string): string {
	return `${value < 0 ? '−' : '+'} ${text(Math.abs(value))}`;
}

function adjustmentsOf({ routine, byHand }: Comparison, format: PrintFormat) {
	const size = (kwh: number, minor: number | undefined) =>
		[
			signed(kwh, format.energy),
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

const ORDER = ['held', 'again', 'new', 'still', 'claimed', 'not-reached'] as const;

function groupsOf(
	survey: Survey,
	{ leaks, before, after }: Comparison,
	show: Shower,
	format: PrintFormat
): EvidenceGroup[] {
	return ORDER.flatMap((fate) => {
		const here = leaks.filter((leak) => leak.fate === fate);
		if (here.length === 0) return [];
		const sum = (side: 'before' | 'after') =>
			show.text(here.reduce((total, leak) => total + (leak[side] ? show.of(leak[side]) : 0), 0));
		return [
			{
				heading: `${FATE_WORDS[fate]}: ${format.count(here.length)}`,
				sum: `${sum('before')} before, ${sum('after')} after`,
				lines: here.map((leak) => evidenceLine(survey, leak, [before.id, after.id], show, format))
			}
		];
	});
}

function evidenceLine(
	survey: Survey,
	{ leakId, tag, fate, claimFailed, before, after }: ComparedLeak,
	roundIds: readonly [string, string],
	show: Shower,
	format: PrintFormat
): EvidenceLine {
	const leak = find(survey.leaks, leakId);
	const section = find(survey.sections, leak?.sectionId);
	const seen = roundIds.map((id) => sightingWords(find(leak?.sightings ?? {}, id), format));
	const mending = find(leak?.mendings ?? {}, roundIds[0]);
	return {
		tag: String(tag),
		fate: FATE_WORDS[fate],
		what: leak ? PART_WORDS[leak.part] : '',
		where: [leak?.place, section?.name].filter(Boolean).join(', '),
		before: before ? show.value(before) : 'none known',
		after: after ? show.value(after) : 'tight',
		evidence: [
			seen[0],
			mending?.mendedAt && `mended ${format.date(mending.mendedAt)}`,
			mending?.reSoaped &&
				(mending.reSoaped === 'tight' ? 'soaped tight' : 'soaped, still leaking'),
			claimFailed && 'said to be mended, but it leaks',
			seen[1]
		].filter((text): text is string => typeof text === 'string' && text !== '')
	};
}

function sightingWords(sighting: Sighting | undefined, format: PrintFormat): string {
	if (!sighting) return '';
	const day = format.date(sighting.seenAt);
	if (sighting.state === 'not-reached') return `${day} not reached`;
	if (sighting.state === 'tight') return `${day} tight by soap`;
	const how = sighting.evidence ? `, ${lowerFirst(EVIDENCE_WORDS[sighting.evidence.kind])}` : '';
	return `${day} leaking${how}`;
}

function notReachedOf(survey: Survey, { leaks, notCompared }: Comparison, show: Shower): string[] {
	const placeOf = (leakId: string) => find(survey.leaks, leakId)?.place ?? 'place not written down';
	return [
		...leaks
			.filter(({ fate }) => fate === 'not-reached' || fate === 'claimed')
			.map(
				({ tag, leakId, fate, after }) =>
					`Leak ${String(tag)}, ${placeOf(leakId)}: ${show.value(after)} a year, counted as leaking${fate === 'claimed' ? ' although said to be mended' : ''}.`
			),
		...notCompared.map(
			({ tag, leakId, refusal }) =>
				`Leak ${String(tag)}, ${placeOf(leakId)}: left out on both sides. ${refusalSentence(refusal)}`
		)
	];
}

function assumptionsOf(survey: Survey, comparison: Comparison, format: PrintFormat): string[] {
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
		...(prices.carbon
			? [
					`CO₂e: ${format.significant(prices.carbon.kgCo2ePerKwh)} kg for each kWh (${prices.carbon.source}, ${String(prices.carbon.year)}).`
				]
			: []),
		'Rules V1 to V8 of METHOD.md.'
	];
}

function wouldChangeOf(
	survey: Survey,
	comparison: Comparison,
	spread: ComparisonSpread,
	measured: Result<MeasuredSaving>,
	show: Shower,
	format: PrintFormat
): string[] {
	const { terms, counts } = comparison;
	const growth = regrowth(comparison);
	const { all } = returnRates(survey);
	const claimed = show.value(terms.claimed);
	return [
		...(counts.claimed > 0
			? [`Soaping what is claimed would move up to ${claimed} a year from claimed to proved.`]
			: []),
		...(counts['not-reached'] > 0
			? [`${show.value(terms.notReached)} a year rests on leaks that nobody looked at again.`]
			: []),
		...(measured.ok
			? []
			: ['A system test in both rounds would measure the saving without any estimate of a size.']),
		`A new price or new hours change both rounds alike, in proportion; a new reading of one leak changes its line alone.`,
		`As well as the sizes are known, what was avoided is ${show.interval(spread.terms.avoided)} a year.`,
		...(growth.costMinorPerYearPerYear !== undefined
			? [
					`Left alone, ${format.money(growth.costMinorPerYearPerYear)} more a year comes back or opens with each year.`
				]
			: []),
		...(all
			? [
					`Of ${format.count(all.watched)} joints proved tight and looked at again, ${format.count(all.returned)} leaked again.`
				]
			: [])
	];
}

function lowerFirst(text: string): string {
	return text.charAt(0).toLowerCase() + text.slice(1);
}
