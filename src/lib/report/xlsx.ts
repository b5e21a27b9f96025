import writeXlsxFile, { type Cell, type Row, type Sheet } from 'write-excel-file/universal';
import { fixList as words } from '../words/fix-list.ts';
import type { CautionLine, JobGroup, JobRow, ReportModel } from './model.ts';
import { cautionText } from './safety-text.ts';

type Value = string | number | Date | undefined;

interface Column<Of> {
	readonly heading: string;
	/** Characters. */
	readonly width: number;
	readonly value: (of: Of) => Value;
	/** How a spreadsheet shows its numbers; it puts marks and grouping of the reader's locale in. */
	readonly format?: string;
}

interface Job {
	readonly row: JobRow;
	readonly group: JobGroup;
}

const DAY = 'yyyy-mm-dd';
/** The most characters that one cell of a workbook holds. */
const CELL_LIMIT = 32_767;

/** The fix list as a workbook of three sheets: the jobs, the sections, the cautions. */
export async function fixListXlsx(model: ReportModel): Promise<Uint8Array<ArrayBuffer>> {
	const jobs = model.groups.flatMap((group) => group.rows.map((row) => ({ row, group })));
	const book = writeXlsxFile([
		sheetOf(words.sheets.jobs, jobColumns(model), jobs),
		sheetOf(words.sheets.sections, sectionColumns(), model.groups),
		sheetOf(words.sheets.cautions, cautionColumns(), everyCaution(model))
	]);
	return new Uint8Array(await (await book.toBlob()).arrayBuffer());
}

function jobColumns(model: ReportModel): readonly Column<Job>[] {
	const { columns, soaped } = words;
	const money = `#,##0.00 [$${model.currency}]`;
	const dayOf = (windowId: string | undefined) =>
		model.windows.find(({ id }) => id === windowId)?.startsAt;
	return [
		{ heading: columns.tag, width: 8, value: ({ row }) => tagOf(row) },
		{ heading: columns.section, width: 22, value: ({ group }) => group.heading },
		{ heading: columns.valve, width: 28, value: ({ group }) => group.valve },
		{ heading: columns.place, width: 28, value: ({ row }) => row.place },
		{ heading: columns.part, width: 18, value: ({ row }) => row.part },
		{ heading: columns.action, width: 20, value: ({ row }) => row.action },
		{ heading: columns.cautions, width: 70, value: ({ row }) => cautionText(row.cautions) },
		{ heading: columns.sectionCautions, width: 50, value: sectionCautions },
		{ heading: columns.first, width: 18, value: ({ row }) => row.flag },
		{ heading: columns.state, width: 18, value: ({ row }) => row.state },
		{ heading: columns.hazards, width: 20, value: ({ row }) => row.hazards.join(', ') },
		{
			heading: columns.cost,
			width: 16,
			format: money,
			value: ({ row }) => row.values.costPerYear
		},
		{
			heading: columns.waiting,
			width: 16,
			format: money,
			value: ({ row }) => row.values.costOfWaitingPerDay
		},
		{
			heading: columns.energy,
			width: 14,
			format: '#,##0',
			value: ({ row }) => row.values.energyKwhPerYear
		},
		{
			heading: columns.air,
			width: 12,
			format: '0.000',
			value: ({ row: { values } }) =>
				values.freeAirM3PerS === undefined ? undefined : values.freeAirM3PerS * 1000
		},
		{ heading: columns.notWeighed, width: 30, value: ({ row }) => row.why },
		{ heading: columns.minutesPlanned, width: 10, value: ({ row }) => row.values.plannedMinutes },
		{ heading: columns.minutesTaken, width: 10, value: ({ row }) => row.values.minutes },
		{ heading: columns.parts, width: 14, format: money, value: ({ row }) => row.values.partsCost },
		{
			heading: columns.window,
			width: 14,
			format: DAY,
			value: ({ row }) => dayAt(dayOf(row.windowId))
		},
		{
			heading: columns.mended,
			width: 14,
			format: DAY,
			value: ({ row }) => dayAt(row.values.mendedOn)
		},
		{
			heading: columns.reSoaped,
			width: 14,
			value: ({ row }) => row.values.reSoaped && soaped[row.values.reSoaped]
		},
		{ heading: columns.couldNot, width: 30, value: ({ row }) => row.couldNot },
		{ heading: columns.note, width: 40, value: ({ row }) => row.note },
		{ heading: columns.plan, width: 18, value: ({ row }) => row.plan }
	];
}

const sectionColumns = (columns = words.columns): readonly Column<JobGroup>[] => [
	{ heading: columns.section, width: 26, value: (group) => group.heading },
	{ heading: columns.window, width: 30, value: (group) => group.window },
	{ heading: columns.valve, width: 34, value: (group) => group.valve },
	{ heading: columns.jobs, width: 10, value: (group) => group.rows.length },
	{ heading: columns.toDo, width: 20, value: (group) => group.jobCount },
	{ heading: columns.facts, width: 50, value: (group) => group.facts.join(' · ') },
	{ heading: columns.cautions, width: 90, value: (group) => cautionText(group.cautions) }
];

const cautionColumns = (columns = words.columns): readonly Column<CautionLine>[] => [
	{ heading: columns.number, width: 10, value: ({ id }) => id },
	{ heading: columns.caution, width: 140, value: ({ text }) => text }
];

function sheetOf<Of>(
	name: string,
	columns: readonly Column<Of>[],
	rows: readonly Of[]
): Sheet<Blob> {
	return {
		sheet: name,
		stickyRowsCount: 1,
		columns: columns.map(({ width }) => ({ width })),
		data: [
			columns.map(({ heading }): Cell => ({
				value: heading,
				type: String,
				fontWeight: 'bold',
				wrap: true
			})),
			...rows.map((row): Row => columns.map(({ value, format }) => cell(value(row), format)))
		]
	};
}

/**
 * Texts are kept as texts, so that a spreadsheet never reads one as a formula, a date or a number;
 * what is not known is an empty cell.
 */
function cell(value: Value, format: string | undefined): Cell {
	if (value === undefined || value === '') return null;
	const top = { alignVertical: 'top' } as const;
	if (value instanceof Date) return { value, type: Date, format: format ?? DAY, ...top };
	if (typeof value === 'number')
		return Number.isFinite(value)
			? { value, type: Number, ...(format !== undefined && { format }), ...top }
			: null;
	return { value: writable(value), type: String, wrap: true, ...top };
}

/** Without what XML cannot hold: control characters, lone surrogates and the two non-characters. */
function writable(text: string): string {
	return text
		.replace(/[^\P{Cc}\t\n\r]/gu, '')
		.replace(/[\p{Cs}\uFFFE\uFFFF]/gu, '')
		.slice(0, CELL_LIMIT);
}

function sectionCautions({ group }: Job): string {
	return cautionText(group.cautions);
}

function tagOf({ tag }: JobRow): string | number {
	return /^\d+$/.test(tag) ? Number(tag) : tag;
}

/** The day of an instant as the survey writes it; a workbook's dates know no zone. */
function dayAt(instant: string | undefined): Date | undefined {
	return instant === undefined ? undefined : new Date(`${instant.slice(0, 10)}T00:00:00Z`);
}

function everyCaution(model: ReportModel): CautionLine[] {
	const all = [
		...model.cautions,
		model.band,
		model.closing,
		...model.groups.flatMap((group) => [
			...group.cautions,
			...group.rows.flatMap((row) => row.cautions)
		])
	];
	return [...new Map(all.map((caution) => [caution.id + caution.text, caution])).values()];
}
