import type { Mending } from '#lib/core/survey/schema.ts';
import type { SafeStep } from './job-steps.ts';

/** What can be ticked or written on Mend; each becomes commands at once. */
export interface MendLog {
	/** A step of the section, for the jobs it is for. */
	step: (leakIds: readonly string[], step: SafeStep, done: boolean) => void;
	mended: (leakId: string, done: boolean) => void;
	reSoaped: (leakId: string, outcome: Mending['reSoaped']) => void;
	couldNot: (leakId: string, why: string | undefined) => void;
	/** What it took, and what was used for it. */
	minutes: (leakId: string, minutes: number | undefined) => void;
	/** Major units of the site's currency. */
	cost: (leakId: string, cost: number | undefined) => void;
	note: (leakId: string, note: string | undefined) => void;
}
