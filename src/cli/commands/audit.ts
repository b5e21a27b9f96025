import { fromMinor, minorDigits } from '#lib/core/money/currency.ts';
import type { Round, Survey } from '#lib/core/survey/schema.ts';
import { assess } from '#lib/core/weigh/assess.ts';
import {
	nothingWeighed,
	type Assessment,
	type LeakAssessment,
	type SupplyMethod
} from '#lib/core/weigh/assessment.ts';
import { fromSi } from '#lib/core/units/convert.ts';
import { ok } from '#lib/core/units/result.ts';
import { earnedDigits } from '#lib/core/weigh/uncertainty/digits.ts';
import { PART_WORDS } from '#lib/words/parts.ts';
import { refusalSentence } from '#lib/words/refusals.ts';
import type { OpenedFile } from '#lib/storage/file/read-survey-file.ts';
import { command, type JsonKey, type Outcome } from '../command.ts';
import type { Answer } from '../complaint.ts';
import type { Io } from '../io.ts';
import type { Given } from '../options.ts';
import { figure, fixed, oneLine, table } from '../plain-text.ts';
import {
	chooseRound,
	openingNotes,
	openSurvey,
	ROUND_OPTION,
	SURVEY_WORD
} from '../survey-argument.ts';
import { warningSentences } from '../year-warnings.ts';
import { SURENESS_KEYS, sureness, type Sureness } from './audit-sureness.ts';
import { SYSTEM_CHECK_KEYS, systemCheck } from './audit-system-check.ts';

const JSON_KEYS: readonly JsonKey[] = [
	['site', 'name of the site'],
	['round', 'the round that was weighed: id, name, startedAt'],
	['totals', 'of all leaks that leak now and could be weighed'],
	['totals.leakCount', 'how many they are'],
	['totals.massFlowKgPerS', 'kg/s while they leak'],
	['totals.freeAirM3PerS', 'free air at the reference, m³/s'],
	['totals.energyKwhPerYear', 'kWh a year'],
	['totals.costPerYear', 'in the currency, to the smallest coin'],
	['totals.currency', 'ISO 4217 code'],
	['totals.co2KgPerYear', 'kg CO₂e a year'],
	['method', 'quick (one specific power), supply (the station’s week) or none'],
	[
		'quick',
		'beside the method supply, the quick method’s energyKwhPerYear and costPerYear; else null'
	],
	[
		'station',
		'with the method supply, the station as it runs: energyKwhPerYear, peakKw; else null'
	],
	['reference', 'the state that free air is stated at, in words'],
	[
		'leaks[]',
		'worst first: tag, massFlowKgPerS, freeAirM3PerS, energyKwhPerYear, costPerYear, rank;'
	],
	['', 'the costs add up to totals.costPerYear to the coin'],
	...SURENESS_KEYS,
	...SYSTEM_CHECK_KEYS,
	['unweighed[]', 'leaks that could not be weighed: tag, code, sentence'],
	['missing[]', 'why a figure is null: code, sentence'],
	['warnings[]', 'what the figures must not be shown without: code, sentence'],
	['quarantined', 'how many records of the file could not be read'],
	['conflicts', 'how many changes in the file no longer applied']
];

export const audit = command({
	name: 'audit',
	summary: 'what the leaks of a survey waste, worst first',
	usage: ['audit FILE [--round "First round"] [--json]'],
	word: { ...SURVEY_WORD, must: true },
	notes: ['Counted are the leaks that leak now: seen leaking in the round and not mended since.'],
	options: ROUND_OPTION,
	json: JSON_KEYS,
	run
});

async function run(
	{ options, words: [path = ''] }: Given<typeof ROUND_OPTION>,
	io: Io
): Promise<Answer<Outcome>> {
	const opened = await openSurvey(path, io);
	if (!opened.ok) return opened;
	const { survey } = opened.value;
	const round = chooseRound(survey, options.round);
	if (!round.ok) return round;
	const found = assess(survey, round.value.id);
	const sure = sureness(survey, round.value.id);
	const warnings = warningSentences(survey, found.warnings);
	return ok({
		json: jsonOf(opened.value, round.value, { found, sure }, warnings),
		text: textOf(survey, round.value, { found, sure }),
		notes: [
			...openingNotes(opened.value),
			...found.missing.map(refusalSentence),
			...warnings.map(({ sentence }) => sentence),
			...found.unweighed.map(
				({ tag, refusal }) => `Leak ${tag} could not be weighed: ${refusalSentence(refusal)}`
			)
		]
	});
}

interface Audited {
	readonly found: Assessment;
	readonly sure: Sureness;
}

function jsonOf(
	{ survey, quarantined, conflicts }: OpenedFile,
	{ id, name, startedAt }: Round,
	{ found, sure }: Audited,
	warnings: Outcome['json'][string]
): Outcome['json'] {
	const { totals, currency, quickTotals } = found;
	const whole = known(found);
	return {
		site: survey.site.name,
		round: { id, name, startedAt },
		totals: {
			leakCount: totals.leakCount,
			massFlowKgPerS: whole(totals.massFlowKgPerS),
			freeAirM3PerS: whole(totals.freeAirM3PerS),
			energyKwhPerYear: whole(totals.energyKwhPerYear),
			costPerYear: whole(major(totals.costMinorPerYear, currency)),
			currency,
			co2KgPerYear: whole(totals.co2KgPerYear),
			interval90: sure.totals
		},
		method: found.method,
		quick: quickTotals
			? {
					energyKwhPerYear: quickTotals.energyKwhPerYear ?? null,
					costPerYear: major(quickTotals.costMinorPerYear, currency)
				}
			: null,
		station: found.station ?? null,
		reference: found.referenceLabel,
		leaks: found.leaks.map((leak) => ({
			tag: leak.tag,
			massFlowKgPerS: leak.massFlowKgPerS,
			freeAirM3PerS: leak.freeAirM3PerS,
			energyKwhPerYear: leak.energyKwhPerYear ?? null,
			costPerYear: major(leak.costMinorPerYear, currency),
			rank: leak.rank,
			...(sure.leaks.get(leak.tag) ?? { interval90: null, rankInterval: null, chanceOfTop10: null })
		})),
		draws: sure.draws,
		systemCheck: systemCheck(survey, id),
		unweighed: found.unweighed.map(({ tag, refusal }) => ({
			tag,
			code: refusal.code,
			sentence: refusalSentence(refusal)
		})),
		missing: found.missing.map((refusal) => ({
			code: refusal.code,
			sentence: refusalSentence(refusal)
		})),
		warnings,
		quarantined: quarantined.length,
		conflicts: conflicts.length
	};
}

/** A total that is not known is none, not nothing. */
function known(found: Assessment) {
	const unknown = nothingWeighed(found);
	return (value: number | null | undefined): number | null => (unknown ? null : (value ?? null));
}

function major(minor: number | undefined, currency: string): number | null {
	if (minor === undefined) return null;
	const amount = fromMinor(minor, currency);
	return amount.ok ? amount.value : null;
}

const METHOD_WORDS: Readonly<Record<SupplyMethod, string>> = {
	quick: 'By the quick method: one specific power × flow × hours.',
	supply: 'By the station model: what the machines stop drawing when the leaks are gone.',
	none: 'How the air is made is not known, so there is no energy and no cost.'
};

function textOf(survey: Survey, round: Round, { found, sure }: Audited): string {
	const { totals, leaks, unweighed, quickTotals, method } = found;
	const money = moneyOf(found.currency);
	const flowUnit = survey.site.units.flow;
	const flow = (m3PerS: number) => figure(fromSi('volumeFlow', flowUnit, m3PerS));
	const whole = known(found);
	const sums = [
		amount(whole(totals.energyKwhPerYear), (kwh) => `${figure(kwh)} kWh`),
		amount(whole(totals.costMinorPerYear), (minor) => `${found.currency} ${money(minor)}`),
		amount(whole(totals.co2KgPerYear), (kg) => `${figure(kg)} kg CO₂e`)
	].filter((sum) => sum !== '');
	const heads = [
		`${oneLine(survey.site.name)}, ${oneLine(round.name)} (${round.startedAt.slice(0, 10)})`,
		`Leaks that leak now: ${totals.leakCount}${unweighed.length > 0 ? ` weighed, ${unweighed.length} not` : ''}.`,
		...amountLine(
			whole(totals.freeAirM3PerS),
			(air) => `Free air ${flow(air)} ${written(flowUnit)} at ${found.referenceLabel}.`
		),
		...(sums.length > 0 ? [`A year: ${sums.join(', ')}.`] : []),
		...rangeLine(sure, found.currency),
		METHOD_WORDS[method],
		...(quickTotals
			? [
					`By the quick method: ${[
						amount(quickTotals.energyKwhPerYear, (kwh) => `${figure(kwh)} kWh`),
						amount(quickTotals.costMinorPerYear, (minor) => `${found.currency} ${money(minor)}`)
					]
						.filter((sum) => sum !== '')
						.join(', ')} (what making that air costs).`
				]
			: [])
	];
	if (leaks.length === 0) return `${heads.join('\n')}\n`;
	const rows = leaks.map((leak) => [
		String(leak.rank),
		String(leak.tag),
		flow(leak.freeAirM3PerS),
		amount(leak.energyKwhPerYear, (kwh) => figure(kwh)),
		amount(leak.costMinorPerYear, money),
		...whereOf(survey, leak)
	]);
	const columns = [
		{ head: 'rank', side: 'right' },
		{ head: 'tag', side: 'right' },
		{ head: written(flowUnit), side: 'right' },
		{ head: 'kWh/year', side: 'right' },
		{ head: `${found.currency}/year`, side: 'right' },
		{ head: 'part', side: 'left' },
		{ head: 'section', side: 'left' }
	] as const;
	return `${heads.join('\n')}\n\n${table(columns, rows)}\n`;
}

/** The interval of the most telling total, with the digits that it earns. METHOD W10. */
function rangeLine({ totals }: Sureness, currency: string): string[] {
	const told = totals?.costPerYear ?? totals?.energyKwhPerYear;
	if (!told) return [];
	const { low, high, decimals } = earnedDigits((told[0] + told[1]) / 2, told[0], told[1]);
	const [from, to] = [low, high].map((end) => fixed(end, decimals));
	return [
		totals?.costPerYear
			? `With the sizes as sure as they are, nine times in ten between ${currency} ${from} and ${currency} ${to} a year.`
			: `With the sizes as sure as they are, nine times in ten between ${from} and ${to} kWh a year.`
	];
}

function whereOf(survey: Survey, { leakId }: LeakAssessment): [part: string, section: string] {
	const leak = survey.leaks[leakId];
	const section = leak?.sectionId === undefined ? undefined : survey.sections[leak.sectionId];
	return [leak ? PART_WORDS[leak.part] : '', section?.name ?? ''];
}

function moneyOf(currency: string): (minor: number) => string {
	const digits = minorDigits(currency);
	const places = digits.ok ? digits.value : 2;
	return (minor) => fixed(major(minor, currency) ?? 0, places);
}

function amount(value: number | null | undefined, write: (value: number) => string): string {
	return value === null || value === undefined ? '' : write(value);
}

function amountLine(value: number | null, write: (value: number) => string): string[] {
	return value === null ? [] : [write(value)];
}

function written(unit: string): string {
	return unit.replace('m3', 'm³');
}
