import { fromMinor } from '#lib/core/money/currency.ts';
import type { Amounts } from '#lib/core/prove/amounts.ts';
import { TERMS, type Term } from '#lib/core/prove/bridge.ts';
import { compareRounds, type Comparison } from '#lib/core/prove/compare.ts';
import { comparisonSpread, type ComparisonSpread } from '#lib/core/prove/intervals.ts';
import { measuredSaving, type MeasuredSaving } from '#lib/core/prove/measured.ts';
import { latestRound, roundsInOrder } from '#lib/core/survey/leak-state.ts';
import { fold, mergeLogs } from '#lib/core/survey/log.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import type { OpenedFile } from '#lib/storage/file/read-survey-file.ts';
import { proof } from '#lib/words/proof.ts';
import { AGREEMENT_WORDS, BRIDGE_WORDS, FATE_WORDS } from '#lib/words/prove.ts';
import { refusalSentence } from '#lib/words/refusals.ts';
import { command, type JsonKey, type Outcome } from '../command.ts';
import { complain, type Answer } from '../complaint.ts';
import type { Io } from '../io.ts';
import { may, type Given } from '../options.ts';
import { figure, oneLine, table } from '../plain-text.ts';
import { words as anyWords } from '../reading.ts';
import { chooseRound, openingNotes, openSurvey, SURVEY_WORD } from '../survey-argument.ts';

const OPTIONS = {
	before: may('Spring', 'id or name of the round before', anyWords),
	after: may('Autumn', 'id or name of the round after; the latest when not given', anyWords)
};

const JSON_KEYS: readonly JsonKey[] = [
	['site', 'name of the site'],
	['before, after', 'the two rounds: id, name, startedAt'],
	['currency', 'ISO 4217 code'],
	['method', 'quick, supply or none'],
	[
		'terms',
		'before, mended, again, new, changed, after: before − mended + again + new + changed = after;'
	],
	['', 'held (proved by soap), claimed, notReached, avoided; each with the keys below'],
	['terms.*.massFlowKgPerS', 'kg/s while they leak'],
	['terms.*.freeAirM3PerS', 'free air at the reference, m³/s'],
	['terms.*.energyKwhPerYear', 'kWh a year; null when it is not known'],
	['terms.*.costPerYear', 'in the currency, to the smallest coin; null when it is not known'],
	['terms.*.co2KgPerYear', 'kg CO₂e a year; null when it is not known'],
	['terms.*.interval90', 'low and high of energyKwhPerYear and costPerYear; null where not known'],
	['measured', 'saving by system test: massFlowKgPerS, interval90, agreement; else null'],
	['avoided', 'energyKwhPerYear, costPerYear, co2KgPerYear with the adjustments by hand'],
	['adjustments', 'routine[] and byHand[]: what, energyKwhPerYear, costPerYear'],
	['leaks[]', 'tag, fate, before and after (null on the side where it did not leak)'],
	['notCompared[]', 'left out on both sides: tag, code, sentence']
];

export const compare = command({
	name: 'compare',
	summary: 'what was saved from one round to a later one, in three strengths',
	usage: [
		'compare FILE [--before "Spring"] [--after "Autumn"] [--json]',
		'compare BEFORE AFTER [--json]'
	],
	word: { ...SURVEY_WORD, must: true, most: 2 },
	notes: [
		'Two files are of one site; compared are the latest round of the first and that of the second.',
		'Both rounds stand under the conditions of the later one.'
	],
	options: OPTIONS,
	json: JSON_KEYS,
	run
});

interface Rounds {
	readonly survey: Survey;
	readonly beforeId: string;
	readonly afterId: string;
	readonly notes: readonly string[];
}

async function run({ options, words }: Given<typeof OPTIONS>, io: Io): Promise<Answer<Outcome>> {
	const rounds = await findRounds(words, options, io);
	if (!rounds.ok) return rounds;
	const { survey, beforeId, afterId, notes } = rounds.value;
	const compared = compareRounds(survey, beforeId, afterId);
	if (!compared.ok) return complain(compared.error);
	const spread = comparisonSpread(survey, compared.value);
	if (!spread.ok) return complain(spread.error);
	const measured = measuredSaving(survey, compared.value, spread.value);
	return ok({
		json: jsonOf(survey, compared.value, spread.value, measured),
		text: textOf(survey, compared.value, spread.value, measured),
		notes: [
			...notes,
			...compared.value.missing.map(refusalSentence),
			...compared.value.notCompared.map(
				({ tag, refusal }) => `Leak ${tag} is left out on both sides: ${refusalSentence(refusal)}`
			)
		]
	});
}

async function findRounds(
	[first = '', second]: readonly string[],
	asked: { readonly before: string | undefined; readonly after: string | undefined },
	io: Io
): Promise<Answer<Rounds>> {
	const one = await openSurvey(first, io);
	if (!one.ok) return one;
	if (second === undefined) {
		const { survey } = one.value;
		const after = chooseRound(survey, asked.after);
		if (!after.ok) return after;
		const rounds = roundsInOrder(survey);
		const earlier = rounds[rounds.findIndex(({ id }) => id === after.value.id) - 1];
		if (asked.before === undefined && !earlier) return complain(refuse('round-missing').error);
		const before = chooseRound(survey, asked.before ?? earlier?.id);
		if (!before.ok) return before;
		const notes = openingNotes(one.value);
		return ok({ survey, beforeId: before.value.id, afterId: after.value.id, notes });
	}
	const two = await openSurvey(second, io);
	if (!two.ok) return two;
	return joined(one.value, two.value, asked);
}

/** Two files of one site, as one survey. */
function joined(
	one: OpenedFile,
	two: OpenedFile,
	asked: { readonly before: string | undefined; readonly after: string | undefined }
): Answer<Rounds> {
	const [a, b] = [one.survey.site, two.survey.site];
	if (a.id !== b.id)
		return complain(
			refuse('sites-differ', { before: oneLine(a.name), after: oneLine(b.name) }).error
		);
	const before = chooseRound(one.survey, asked.before);
	if (!before.ok) return before;
	const after = chooseRound(two.survey, asked.after);
	if (!after.ok) return after;
	let { survey } = two;
	if (!roundsInOrder(survey).some(({ id }) => id === before.value.id)) {
		const merged = fold(mergeLogs(one.commands, two.commands));
		if (!merged.ok) return complain(merged.error);
		survey = merged.value.survey;
	}
	if (!latestRound(survey)) return complain(refuse('survey-without-round').error);
	const notes = [...openingNotes(one), ...openingNotes(two)];
	return ok({ survey, beforeId: before.value.id, afterId: after.value.id, notes });
}

function major(minor: number | undefined, currency: string): number | null {
	if (minor === undefined) return null;
	const amount = fromMinor(Math.round(minor), currency);
	return amount.ok ? amount.value : null;
}

function amountsOf(amounts: Amounts | undefined, currency: string) {
	if (!amounts) return null;
	return {
		massFlowKgPerS: amounts.massFlowKgPerS,
		freeAirM3PerS: amounts.freeAirM3PerS,
		energyKwhPerYear: amounts.energyKwhPerYear ?? null,
		costPerYear: major(amounts.costMinorPerYear, currency),
		co2KgPerYear: amounts.co2KgPerYear ?? null
	};
}

function intervalOf(
	{
		energyKwhPerYear: energy,
		costMinorPerYear: cost
	}: Pick<ComparisonSpread['terms'][Term], 'energyKwhPerYear' | 'costMinorPerYear'>,
	currency: string
) {
	return {
		energyKwhPerYear: energy ? { low: energy.low, high: energy.high } : null,
		costPerYear: cost ? { low: major(cost.low, currency), high: major(cost.high, currency) } : null
	};
}

function jsonOf(
	survey: Survey,
	comparison: Comparison,
	spread: ComparisonSpread,
	measured: Result<MeasuredSaving>
): Outcome['json'] {
	const { before, after, currency, terms, avoided, routine, byHand } = comparison;
	const round = ({ id, name, startedAt }: Comparison['before']) => ({ id, name, startedAt });
	const sized = <T extends { energyKwhPerYear: number; costMinorPerYear?: number }>(each: T) => ({
		energyKwhPerYear: each.energyKwhPerYear,
		costPerYear: major(each.costMinorPerYear, currency)
	});
	return {
		site: survey.site.name,
		before: round(before),
		after: round(after),
		currency,
		method: comparison.method,
		terms: Object.fromEntries(
			TERMS.map((term) => [
				term,
				{
					...amountsOf(terms[term], currency),
					interval90: intervalOf(spread.terms[term], currency)
				}
			])
		),
		measured: measured.ok
			? {
					massFlowKgPerS: measured.value.nominalKgPerS,
					interval90: intervalOf(measured.value, currency),
					agreement: measured.value.agreement
				}
			: null,
		avoided: {
			energyKwhPerYear: avoided.energyKwhPerYear ?? null,
			costPerYear: major(avoided.costMinorPerYear, currency),
			co2KgPerYear: avoided.co2KgPerYear ?? null
		},
		adjustments: {
			routine: routine.map((each) => ({ what: each.what, ...sized(each) })),
			byHand: byHand.map((each) => ({ what: each.what, reason: each.reason, ...sized(each) }))
		},
		leaks: comparison.leaks.map((leak) => ({
			tag: leak.tag,
			fate: leak.fate,
			before: amountsOf(leak.before, currency),
			after: amountsOf(leak.after, currency)
		})),
		notCompared: comparison.notCompared.map(({ tag, refusal }) => ({
			tag,
			code: refusal.code,
			sentence: refusalSentence(refusal)
		}))
	};
}

function textOf(
	survey: Survey,
	{ before, after, terms, currency, counts }: Comparison,
	spread: ComparisonSpread,
	measured: Result<MeasuredSaving>
): string {
	const number = (value: number | null | undefined) =>
		value === null || value === undefined ? '–' : figure(value);
	const range = ({ low, high }: { low: number; high: number }) =>
		`${figure(low, 2)} to ${figure(high, 2)}`;
	const row = (name: string, term: Term) => {
		const ends = spread.terms[term].energyKwhPerYear;
		return [
			name,
			number(terms[term].energyKwhPerYear),
			ends ? range(ends) : '–',
			number(major(terms[term].costMinorPerYear, currency))
		];
	};
	const columns = [
		{ head: '', side: 'left' },
		{ head: 'kWh/year', side: 'right' },
		{ head: '90 %', side: 'right' },
		{ head: `${currency}/year`, side: 'right' }
	] as const;
	const bridge = (['before', 'mended', 'again', 'new', 'changed', 'after'] as const).map((term) =>
		row(BRIDGE_WORDS[term], term)
	);
	const system = measured.ok ? measured.value.energyKwhPerYear : undefined;
	const strengths = [
		row('Claimed', 'claimed'),
		row('Proved by soap', 'held'),
		[
			'Measured by system test',
			number(system?.median),
			system ? range(system) : '–',
			number(measured.ok ? major(measured.value.costMinorPerYear?.median, currency) : null)
		]
	];
	const fates = Object.entries(counts)
		.filter(([, count]) => count > 0)
		.map(
			([fate, count]) => `${FATE_WORDS[fate as keyof typeof FATE_WORDS].toLowerCase()} ${count}`
		);
	return [
		`${oneLine(survey.site.name)}: ${oneLine(before.name)} to ${oneLine(after.name)}`,
		`Leaks: ${fates.join('; ')}.`,
		'',
		table(columns, bridge),
		'',
		proof.strengthsRule,
		table(columns, strengths),
		measured.ok ? AGREEMENT_WORDS[measured.value.agreement] : refusalSentence(measured.error),
		''
	].join('\n');
}
