import type { JobGroup, JobRow, ReportModel, Step } from './model.ts';

export interface CsvStyle {
	/** BCP 47: decides the decimal mark, and with it the delimiter; the reader's own when absent. */
	readonly locale?: string | undefined;
}

type Cell = string | number | undefined;

/** One row of the table per job: the column's name, which never changes, and its value. */
const COLUMNS: readonly (readonly [
	name: string,
	cell: (row: JobRow, group: JobGroup, model: ReportModel) => Cell
])[] = [
	['tag', (row) => (/^\d+$/.test(row.tag) ? Number(row.tag) : row.tag)],
	['section', (_, group) => group.heading],
	['valve_to_close', (_, group) => group.valve],
	['place', (row) => row.place],
	['plan', (row) => row.plan],
	['part', (row) => row.part],
	['action', (row) => row.action],
	['cautions', (row) => row.cautions.map(({ id, text }) => `${id} ${text}`).join(' | ')],
	[
		'section_cautions',
		(_, group) => group.cautions.map(({ id, text }) => `${id} ${text}`).join(' | ')
	],
	[
		'site_cautions',
		(_, __, model) => model.cautions.map(({ id, text }) => `${id} ${text}`).join(' | ')
	],
	['first', (row) => (row.shape === 'first' ? 'yes' : 'no')],
	['state', (row) => row.state],
	['hazards', (row) => row.hazards.join(', ')],
	['cost_per_year', (row) => row.values.costPerYear],
	['cost_of_waiting_per_day', (row) => rounded(row.values.costOfWaitingPerDay)],
	['currency', (_, __, model) => model.currency],
	['energy_kwh_per_year', (row) => rounded(row.values.energyKwhPerYear)],
	['free_air_l_per_s', (row) => rounded((row.values.freeAirM3PerS ?? NaN) * 1000)],
	['not_weighed_because', (row) => row.why],
	['isolated', (row) => ticked(row, 'isolated')],
	['vented', (row) => ticked(row, 'vented')],
	['zero_proved', (row) => ticked(row, 'zeroProved')],
	['mended_on', (row) => row.values.mendedOn],
	['re_soaped', (row) => row.values.reSoaped?.replace('-', ' ')],
	['minutes', (row) => row.values.minutes],
	['planned_minutes', (row) => row.values.plannedMinutes],
	['parts_cost', (row) => row.values.partsCost],
	['could_not', (row) => row.couldNot],
	['note', (row) => row.note],
	['window', (_, group) => group.window],
	['site', (_, __, model) => model.site],
	['round', (_, __, model) => model.round]
];

/**
 * The fix list as a table that a spreadsheet opens right: UTF-8 with its mark, the decimal mark and
 * delimiter of the locale, dates as ISO days. A text that a spreadsheet would run as a formula is
 * made inert by an apostrophe; numbers stay numbers.
 */
export function fixListCsv(model: ReportModel, { locale }: CsvStyle = {}): string {
	const decimal = decimalMark(locale);
	const delimiter = decimal === ',' ? ';' : ',';
	const rows = model.groups.flatMap((group) =>
		group.rows.map((row) => COLUMNS.map(([, cell]) => csvCell(cell(row, group, model), decimal)))
	);
	const header = COLUMNS.map(([name]) => name);
	return `\uFEFF${[header, ...rows].map((cells) => `${cells.join(delimiter)}\r\n`).join('')}`;
}

/**
 * One cell. Numbers stand bare; texts stand in quotes, on one line, and never begin a formula, not
 * even behind spaces or characters that do not show, nor with a full-width sign.
 */
export function csvCell(value: Cell, decimal: ',' | '.'): string {
	if (value === undefined || value === '') return '';
	if (typeof value === 'number')
		return Number.isFinite(value) ? String(value).replace('.', decimal) : '';
	return `"${inertText(value).replaceAll('"', '""')}"`;
}

/** A text on one line that no table takes for a formula. */
export function inertText(value: string): string {
	const oneLine = value.replace(/[\r\n\t\u2028\u2029]+/g, ' ').replace(/\p{Cc}/gu, '');
	return FORMULA_START.test(value) ? `'${oneLine}` : oneLine;
}

/** = + - @, their full-width and small forms and the minus sign, behind anything unseen. */
const FORMULA_START = /^(?:[\t\r\n]|[\s\p{C}]*[=+\-@＝＋－＠﹦﹢﹣﹫−])/u;

function rounded(value: number | undefined): number | undefined {
	return value === undefined ? undefined : Number(value.toPrecision(6));
}

function ticked(row: JobRow, step: Step): string {
	return row.ticks.some((tick) => tick.step === step && tick.ticked) ? 'yes' : 'no';
}

function decimalMark(locale: string | undefined): ',' | '.' {
	const parts = new Intl.NumberFormat(locale).formatToParts(1.5);
	return parts.find((part) => part.type === 'decimal')?.value === ',' ? ',' : '.';
}
