/** Somebody asked for this job, by its tag: a new object each time. */
export interface Sought {
	readonly leakId: string;
}
