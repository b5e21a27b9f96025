import { fromMinor } from '#lib/core/money/currency.ts';
import { compareRounds } from '#lib/core/prove/compare.ts';
import { latestRound, roundsInOrder } from '#lib/core/survey/leak-state.ts';
import { ok } from '#lib/core/units/result.ts';
import { assess } from '#lib/core/weigh/assess.ts';
import { command, type JsonKey, type Outcome } from '../command.ts';
import type { Answer } from '../complaint.ts';
import { complaintLine } from '../complaint.ts';
import type { Io } from '../io.ts';
import { flag, type Given } from '../options.ts';
import { figure, table } from '../plain-text.ts';
import { chooseRound, openingNotes, openSurvey, SURVEY_WORD } from '../survey-argument.ts';

const OPTIONS = { csv: flag('print comma-separated values') };
const MOST_FILES = 100_000;

const JSON_KEYS: readonly JsonKey[] = [
	['sites[]', 'one for each file that could be read, in the order given'],
	['sites[].file', 'as it was given'],
	['sites[].site, round', 'their names'],
	['sites[].leakCount', 'leaks that leak now and could be weighed, in the latest round'],
	['sites[].energyKwhPerYear', 'kWh a year; null when it is not known'],
	['sites[].costPerYear', 'in the currency; null when it is not known'],
	['sites[].currency', 'ISO 4217 code'],
	['sites[].provedPerYear', 'since the round before, proved by soap; null with one round'],
	['sites[].claimedPerYear', 'since the round before, claimed; null with one round'],
	['refused[]', 'files that could not be read: file, sentence']
];

export const portfolio = command({
	name: 'portfolio',
	summary: 'many surveys as one table, a line for each site',
	usage: ['portfolio FILES… [--csv | --json]'],
	word: { ...SURVEY_WORD, as: 'FILES…', must: true, most: MOST_FILES },
	notes: [
		'Files are read one after another; one that cannot be read is named, and the rest are shown.',
		'Sites may differ in currency, so nothing is added up.'
	],
	options: OPTIONS,
	json: JSON_KEYS,
	run
});

interface Line {
	readonly file: string;
	readonly site: string;
	readonly round: string;
	readonly leakCount: number;
	readonly energyKwhPerYear: number | null;
	readonly costPerYear: number | null;
	readonly currency: string;
	readonly provedPerYear: number | null;
	readonly claimedPerYear: number | null;
}

async function run({ options, words }: Given<typeof OPTIONS>, io: Io): Promise<Answer<Outcome>> {
	const lines: Line[] = [];
	const refused: { readonly file: string; readonly sentence: string }[] = [];
	const notes: string[] = [];
	for (const file of words) {
		const line = await lineOf(file, io, notes);
		if (line.ok) lines.push(line.value);
		else refused.push({ file, sentence: complaintLine(line.error) });
	}
	return ok({
		json: { sites: lines, refused },
		text: options.csv ? csvOf(lines) : textOf(lines),
		notes: [...notes, ...refused.map(({ sentence }) => sentence)]
	});
}

/** One file's line; the survey itself is let go of before the next is read. */
async function lineOf(file: string, io: Io, notes: string[]): Promise<Answer<Line>> {
	const opened = await openSurvey(file, io);
	if (!opened.ok) return opened;
	notes.push(...openingNotes(opened.value).map((note) => `${file}: ${note}`));
	const { survey } = opened.value;
	const round = chooseRound(survey, undefined);
	if (!round.ok) return round;
	const { totals, currency } = assess(survey, round.value.id);
	const earlier = roundsInOrder(survey).at(-2);
	const compared =
		earlier && latestRound(survey) ? compareRounds(survey, earlier.id, round.value.id) : undefined;
	const money = (minor: number | undefined) => {
		const amount = minor === undefined ? undefined : fromMinor(minor, currency);
		return amount?.ok ? amount.value : null;
	};
	const terms = compared?.ok ? compared.value.terms : undefined;
	return ok({
		file,
		site: survey.site.name,
		round: round.value.name,
		leakCount: totals.leakCount,
		energyKwhPerYear: totals.energyKwhPerYear ?? null,
		costPerYear: money(totals.costMinorPerYear),
		currency,
		provedPerYear: money(terms?.held.costMinorPerYear),
		claimedPerYear: money(terms?.claimed.costMinorPerYear)
	});
}

const FIELDS = [
	'site',
	'round',
	'leakCount',
	'energyKwhPerYear',
	'costPerYear',
	'currency',
	'provedPerYear',
	'claimedPerYear',
	'file'
] as const satisfies readonly (keyof Line)[];

function csvOf(lines: readonly Line[]): string {
	const rows = lines.map((line) => FIELDS.map((field) => csvCell(line[field])).join(','));
	return `${[FIELDS.join(','), ...rows].join('\r\n')}\r\n`;
}

/** Text that a spreadsheet would take for a formula is given a quote before it. */
function csvCell(value: string | number | null): string {
	if (value === null) return '';
	if (typeof value === 'number') return String(value);
	const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
	return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

function textOf(lines: readonly Line[]): string {
	const shown = (value: number | null) => (value === null ? '–' : figure(value));
	const columns = [
		{ head: 'site', side: 'left' },
		{ head: 'round', side: 'left' },
		{ head: 'leaks', side: 'right' },
		{ head: 'kWh/year', side: 'right' },
		{ head: 'cost/year', side: 'right' },
		{ head: '', side: 'left' },
		{ head: 'proved', side: 'right' },
		{ head: 'claimed', side: 'right' }
	] as const;
	const rows = lines.map((line) => [
		line.site,
		line.round,
		String(line.leakCount),
		shown(line.energyKwhPerYear),
		shown(line.costPerYear),
		line.currency,
		shown(line.provedPerYear),
		shown(line.claimedPerYear)
	]);
	return `${table(columns, rows)}\n`;
}
