import { Filling } from './filling.ts';
import type { PlanJob, PlanProblem } from './problem.ts';

type Asked = PlanJob & { readonly first: boolean };

/**
 * Finds a window for each job that must be mended, so that together they fit: what comes first whatever
 * it costs into the earliest window that takes it, and past the budget if need be; then what is always
 * wanted, dearest first. A job for which no room is left becomes a job like the others. METHOD P6.
 */
export function settleMusts(
	asked: Pick<PlanProblem, 'windows' | 'sections'> & { readonly jobs: readonly Asked[] },
	budgetMinor: number | undefined
): { readonly problem: PlanProblem; readonly noRoom: readonly string[] } {
	const { windows, sections } = asked;
	const spent = asked.jobs.reduce((sum, job) => sum + (job.first ? job.budgetMinor : 0), 0);
	const jobs = asked.jobs.map((job): PlanJob => {
		const { leakId, section, minutes, worthMinor, allowed } = job;
		return {
			leakId,
			...(section !== undefined && { section }),
			minutes,
			budgetMinor: job.first ? 0 : job.budgetMinor,
			worthMinor,
			allowed,
			must: false
		};
	});
	const problem: PlanProblem = {
		windows,
		sections,
		jobs,
		...(budgetMinor !== undefined && { budgetMinor: Math.max(0, budgetMinor - spent) }),
		start: jobs.map(() => -1)
	};

	const best = (job: number) => Math.max(...(jobs[job]?.worthMinor ?? []));
	const wanted = asked.jobs
		.flatMap((job, index) => (job.must ? [{ index, first: job.first }] : []))
		.sort((a, b) => Number(b.first) - Number(a.first) || best(b.index) - best(a.index));
	const filling = new Filling(problem);
	const noRoom: string[] = [];
	for (const { index, first } of wanted) {
		const job = jobs[index];
		if (!job) continue;
		const room = windows.flatMap((_, window) => (filling.fits(index, window) ? [window] : []));
		const window = first
			? room[0]
			: room.sort((a, b) => (job.worthMinor[b] ?? 0) - (job.worthMinor[a] ?? 0))[0];
		if (window === undefined) {
			noRoom.push(job.leakId);
			continue;
		}
		filling.put(index, window);
		jobs[index] = {
			...job,
			must: true,
			allowed: first ? job.allowed.map((_, each) => each === window) : job.allowed
		};
	}
	return { problem: { ...problem, start: [...filling.windowOf] }, noRoom };
}
