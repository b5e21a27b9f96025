import type { Priority } from '#lib/core/mend/priority.ts';

/** What a column of the work-order table can hold, in words. */
export const WORK_ORDER_FIELDS = {
	number: 'Number of the repair',
	title: 'Title, at most 100 characters',
	asset: 'Asset: the section',
	location: 'Location',
	type: 'Type of work',
	priority: 'Priority',
	status: 'Status',
	due: 'Due on, yyyy-mm-dd',
	cost: 'Cost of parts',
	currency: 'Currency',
	minutes: 'Minutes planned',
	saving: 'Cost of the leak a year',
	tag: 'Tag on the joint',
	valve: 'Valve to close',
	part: 'Part',
	action: 'Action',
	site: 'Site',
	description: 'Description, with the cautions'
} as const;
export type WorkOrderField = keyof typeof WORK_ORDER_FIELDS;

export interface WorkOrderColumn {
	readonly heading: string;
	readonly field: string;
}

/** The columns of a site that has not named its own. */
export const STARTING_WORK_ORDER_COLUMNS: readonly (WorkOrderColumn & {
	readonly field: WorkOrderField;
})[] = [
	{ heading: 'Number', field: 'number' },
	{ heading: 'Title', field: 'title' },
	{ heading: 'Asset', field: 'asset' },
	{ heading: 'Location', field: 'location' },
	{ heading: 'Type', field: 'type' },
	{ heading: 'Priority', field: 'priority' },
	{ heading: 'Status', field: 'status' },
	{ heading: 'Due', field: 'due' },
	{ heading: 'Cost', field: 'cost' },
	{ heading: 'Description', field: 'description' }
];

/** Priorities of a site that has not named its own. */
export const PRIORITY_WORDS: Readonly<Record<Priority, string>> = {
	first: 'Do first',
	high: 'High',
	normal: 'Normal',
	low: 'Low'
};
