import { find } from '../core/survey/ids.ts';
import { ok, refuse, type Result } from '../core/units/result.ts';
import { fixList as words } from '../words/fix-list.ts';
import {
	PRIORITY_WORDS,
	STARTING_WORK_ORDER_COLUMNS,
	WORK_ORDER_FIELDS,
	type WorkOrderColumn,
	type WorkOrderField
} from '../words/work-orders.ts';
import { csvCell } from './csv.ts';
import type { JobGroup, JobRow, ReportModel } from './model.ts';
import { cautionText, safetyLines } from './safety-text.ts';

/** How the site's own system for work orders wants them. */
export interface WorkOrderStyle {
	/** Ours when absent. */
	readonly columns?: readonly WorkOrderColumn[] | undefined;
	/** The words of its list by priority; ours when absent. */
	readonly priorities?: Readonly<Record<string, string>> | undefined;
}

interface Order {
	readonly number: string;
	readonly row: JobRow;
	readonly group: JobGroup;
	readonly model: ReportModel;
	readonly priority: string;
}

const TITLE_LIMIT = 100;

/**
 * The open repairs as a table that a system for work orders takes in: one header row that never changes by
 * itself, a row per repair, commas, points in numbers, days as yyyy-mm-dd, the cautions in the description.
 * METHOD P9 gives the priorities.
 * @returns refused rather than handed over without cautions, or with a word that the site's list lacks
 */
export function workOrderCsv(model: ReportModel, style: WorkOrderStyle = {}): Result<string> {
	const columns = readColumns(style.columns ?? STARTING_WORK_ORDER_COLUMNS);
	if (!columns.ok) return columns;
	const ranks = style.priorities ?? PRIORITY_WORDS;
	const numbers = new Set<string>();
	const lines = [columns.value.map(({ heading }) => csvCell(heading, '.'))];
	for (const group of model.groups)
		for (const row of group.rows) {
			if (row.shape === 'done') continue;
			const priority = find(ranks, row.priority)?.trim() ?? '';
			if (priority === '' && columns.value.some(({ field }) => field === 'priority'))
				return refuse('work-order-priority-without-word', {
					priority: PRIORITY_WORDS[row.priority],
					tag: row.tag
				});
			const order = { number: unused(numberOf(row), numbers), row, group, model, priority };
			lines.push(columns.value.map(({ field }) => csvCell(FIELD[field](order), '.')));
		}
	return ok(lines.map((cells) => `${cells.join(',')}\r\n`).join(''));
}

function readColumns(
	columns: readonly WorkOrderColumn[]
): Result<readonly { readonly heading: string; readonly field: WorkOrderField }[]> {
	const known: { heading: string; field: WorkOrderField }[] = [];
	for (const { heading, field } of columns) {
		if (heading.trim() === '') return refuse('work-order-heading-missing');
		if (!isField(field)) return refuse('work-order-field-unknown', { heading, content: field });
		if (known.some((other) => other.heading === heading))
			return refuse('work-order-heading-twice', { heading });
		known.push({ heading, field });
	}
	if (!known.some(({ field }) => field === 'description'))
		return refuse('work-order-without-cautions');
	return ok(known);
}

function isField(field: string): field is WorkOrderField {
	return Object.hasOwn(WORK_ORDER_FIELDS, field);
}

const FIELD: Readonly<Record<WorkOrderField, (order: Order) => string | number | undefined>> = {
	number: ({ number }) => number,
	title: ({ row }) => within(words.orderTitle(row.tag, row.action, row.place || row.part)),
	asset: ({ group }) => group.heading,
	location: ({ row, model }) => [model.site, row.plan, row.place].filter(Boolean).join(', '),
	type: () => words.repair,
	priority: ({ priority }) => priority,
	status: ({ row }) => (row.couldNot === undefined ? words.open : words.onHold),
	due: ({ row, model }) =>
		model.windows.find(({ id }) => id === row.windowId)?.startsAt.slice(0, 10),
	cost: ({ row }) => row.values.partsCost,
	currency: ({ model }) => model.currency,
	minutes: ({ row }) => row.values.plannedMinutes,
	saving: ({ row }) => row.values.costPerYear,
	tag: ({ row }) => row.tag,
	valve: ({ group }) => group.valve,
	part: ({ row }) => row.part,
	action: ({ row }) => row.action,
	site: ({ model }) => model.site,
	photo: ({ row }) => row.photo?.path,
	description
};

/** The cautions come first, so that a system that cuts long texts cuts something else. */
function description({ row, group, model }: Order): string {
	const facts = [
		words.closeValve(group.valve),
		`${row.part}, ${row.action}`,
		...row.hazards.map((hazard) => words.mind(hazard)),
		...(row.note ? [words.note(row.note)] : []),
		...(row.couldNot ? [words.couldNot(row.couldNot)] : []),
		words.leaveTag
	];
	return [cautionText(safetyLines(row, group, model)), ...facts].join(' | ');
}

/** The tag, and the start of the leak's own name, so that two sites or tablets never share a number. */
function numberOf({ tag, leakId }: JobRow): string {
	const own = leakId?.slice(leakId.indexOf('-') + 1).replaceAll('-', '');
	return own === undefined ? tag : `${tag}-${own.slice(0, 8)}`;
}

function unused(number: string, taken: Set<string>): string {
	let free = number;
	for (let again = 2; taken.has(free); again++) free = `${number}-${String(again)}`;
	taken.add(free);
	return free;
}

function within(text: string): string {
	const characters = [...text];
	return characters.length <= TITLE_LIMIT
		? text
		: `${characters.slice(0, TITLE_LIMIT - 1).join('')}…`;
}
