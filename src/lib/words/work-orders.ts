import { mending } from './mending.ts';

/** What a column of the work-order table can hold, in words. */
export const WORK_ORDER_FIELDS = mending.workOrderFields;
export type WorkOrderField = keyof typeof WORK_ORDER_FIELDS;

export interface WorkOrderColumn {
	readonly heading: string;
	readonly field: string;
}

/** The columns of a site that has not named its own. */
export const STARTING_WORK_ORDER_COLUMNS: readonly (WorkOrderColumn & {
	readonly field: WorkOrderField;
})[] = (Object.keys(mending.workOrderHeadings) as (keyof typeof mending.workOrderHeadings)[]).map(
	(field) => ({
		field,
		get heading() {
			return mending.workOrderHeadings[field];
		}
	})
);

/** Priorities of a site that has not named its own. */
export const PRIORITY_WORDS = mending.priorities;
