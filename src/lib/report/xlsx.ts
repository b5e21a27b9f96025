import writeXlsxFile, { type Cell, type Row, type Sheet } from 'write-excel-file/universal';
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
		sheetOf('Jobs', jobColumns(model), jobs),
		sheetOf('Sections', SECTION_COLUMNS, model.groups),
		sheetOf('Cautions', CAUTION_COLUMNS, everyCaution(model))
	]);
	return new Uint8Array(await (await book.toBlob()).arrayBuffer());
}

function jobColumns(model: ReportModel): readonly Column<Job>[] {
	const money = `#,##0.00 [$${model.currency}]`;
	const dayOf = (windowId: string | undefined) =>
		model.windows.find(({ id }) => id === windowId)?.startsAt;
	return [
		{ heading: 'Tag', width: 8, value: ({ row }) => tagOf(row) },
		{ heading: 'Section', width: 22, value: ({ group }) => group.heading },
		{ heading: 'Valve to close', width: 28, value: ({ group }) => group.valve },
		{ heading: 'Place', width: 28, value: ({ row }) => row.place },
		{ heading: 'Part', width: 18, value: ({ row }) => row.part },
		{ heading: 'Action', width: 20, value: ({ row }) => row.action },
		{ heading: 'Cautions', width: 70, value: ({ row }) => cautionText(row.cautions) },
		{ heading: 'Cautions of the section', width: 50, value: sectionCautions },
		{ heading: 'First', width: 18, value: ({ row }) => row.flag },
		{ heading: 'State', width: 18, value: ({ row }) => row.state },
		{ heading: 'Hazards', width: 20, value: ({ row }) => row.hazards.join(', ') },
		{
			heading: 'Cost a year',
			width: 16,
			format: money,
			value: ({ row }) => row.values.costPerYear
		},
		{
			heading: 'Cost of waiting a day',
			width: 16,
			format: money,
			value: ({ row }) => row.values.costOfWaitingPerDay
		},
		{
			heading: 'Energy, kWh a year',
			width: 14,
			format: '#,##0',
			value: ({ row }) => row.values.energyKwhPerYear
		},
		{
			heading: 'Free air, L/s',
			width: 12,
			format: '0.000',
			value: ({ row: { values } }) =>
				values.freeAirM3PerS === undefined ? undefined : values.freeAirM3PerS * 1000
		},
		{ heading: 'Not weighed because', width: 30, value: ({ row }) => row.why },
		{ heading: 'Minutes planned', width: 10, value: ({ row }) => row.values.plannedMinutes },
		{ heading: 'Minutes taken', width: 10, value: ({ row }) => row.values.minutes },
		{ heading: 'Parts', width: 14, format: money, value: ({ row }) => row.values.partsCost },
		{ heading: 'Window', width: 14, format: DAY, value: ({ row }) => dayAt(dayOf(row.windowId)) },
		{ heading: 'Mended', width: 14, format: DAY, value: ({ row }) => dayAt(row.values.mendedOn) },
		{ heading: 'Re-soaped', width: 14, value: ({ row }) => row.values.reSoaped },
		{ heading: 'Could not', width: 30, value: ({ row }) => row.couldNot },
		{ heading: 'Note', width: 40, value: ({ row }) => row.note },
		{ heading: 'Plan', width: 18, value: ({ row }) => row.plan }
	];
}

const SECTION_COLUMNS: readonly Column<JobGroup>[] = [
	{ heading: 'Section', width: 26, value: (group) => group.heading },
	{ heading: 'Window', width: 30, value: (group) => group.window },
	{ heading: 'Valve to close', width: 34, value: (group) => group.valve },
	{ heading: 'Jobs', width: 10, value: (group) => group.rows.length },
	{ heading: 'To do', width: 20, value: (group) => group.jobCount },
	{ heading: 'Facts', width: 50, value: (group) => group.facts.join(' · ') },
	{ heading: 'Cautions', width: 90, value: (group) => cautionText(group.cautions) }
];

const CAUTION_COLUMNS: readonly Column<CautionLine>[] = [
	{ heading: 'Number', width: 10, value: ({ id }) => id },
	{ heading: 'Caution', width: 140, value: ({ text }) => text }
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
