import { depressuriseFirst, type Caution } from '#lib/core/mend/cautions.ts';
import type { FixGroup, FixJob } from '#lib/core/mend/fix-list.ts';
import { mend } from '#lib/words/mend.ts';

/** What makes a line safe to open, in the order of the work. */
export const SAFE_STEPS = ['isolated', 'vented', 'zeroProved'] as const;
export type SafeStep = (typeof SAFE_STEPS)[number];

export const STEP_WORDS: Readonly<Record<SafeStep, string>> = mend.steps;

/** The steps that nobody has ticked for a job. */
export function stepsNotTicked({ ticks }: Pick<FixJob, 'ticks'>): SafeStep[] {
	return SAFE_STEPS.filter((step) => ticks[step] !== true);
}

/** The jobs that a step of the section is for: those still to do; when none is left, all of them. */
export function jobsOfStep({ jobs }: Pick<FixGroup, 'jobs'>): readonly FixJob[] {
	const open = jobs.filter((job) => !job.done);
	return open.length > 0 ? open : jobs;
}

/** Whether a step of the section is ticked for all, some or none of the jobs it is for. */
export function stepState(group: Pick<FixGroup, 'jobs'>, step: SafeStep): 'all' | 'some' | 'none' {
	const jobs = jobsOfStep(group);
	const ticked = jobs.filter(({ ticks }) => ticks[step] === true).length;
	return ticked === 0 ? 'none' : ticked === jobs.length ? 'all' : 'some';
}

/**
 * The cautions that stand once over the jobs of a section: the section's own, behind those that every job in it
 * carries; of a single job only the first one. Each job keeps all of its own all the same.
 */
export function commonCautions({
	jobs,
	cautions
}: Pick<FixGroup, 'jobs' | 'cautions'>): readonly Caution[] {
	const [first, ...rest] = jobs;
	const shared = (first?.cautions ?? []).filter(({ id }) =>
		rest.length === 0
			? id === depressuriseFirst().id
			: rest.every((job) => job.cautions.some((caution) => caution.id === id))
	);
	return [...new Map([...shared, ...cautions].map((caution) => [caution.id, caution])).values()];
}
