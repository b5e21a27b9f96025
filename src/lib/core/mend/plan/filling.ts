import type { Assignment, PlanJob, PlanProblem, PlanSection } from './problem.ts';

/** Sums of fractions of minutes do not come out to the last bit. */
const EPSILON = 1e-6;

/** A plan being filled job by job: what is used, and what still fits. METHOD P6. */
export class Filling {
	readonly problem: PlanProblem;
	readonly windowOf: number[];
	readonly usedMinutes: number[];
	spentMinor = 0;
	readonly #opened: number[][];

	constructor(problem: PlanProblem, start: Assignment = problem.start) {
		this.problem = problem;
		this.windowOf = problem.jobs.map(() => -1);
		this.usedMinutes = problem.windows.map(() => 0);
		this.#opened = problem.sections.map(() => problem.windows.map(() => 0));
		start.forEach((window, job) => {
			if (window >= 0) this.put(job, window);
		});
	}

	/** Minutes that a job adds to a window, those for its section included if it is not open yet. */
	minutesOf(job: number, window: number): number {
		const { minutes, section } = this.#job(job);
		if (section === undefined || (this.#opened[section]?.[window] ?? 0) > 0) return minutes;
		return minutes + this.#section(section).minutes;
	}

	fits(job: number, window: number): boolean {
		const { allowed } = this.#job(job);
		return (
			allowed[window] === true &&
			this.minutesOf(job, window) <= this.minutesLeft(window) + EPSILON &&
			this.withinBudget(job)
		);
	}

	withinBudget(job: number): boolean {
		const { budgetMinor = Infinity } = this.problem;
		return this.spentMinor + this.#job(job).budgetMinor <= budgetMinor + EPSILON;
	}

	minutesLeft(window: number): number {
		return (this.problem.windows[window]?.personMinutes ?? 0) - (this.usedMinutes[window] ?? 0);
	}

	opens(section: number, window: number): boolean {
		return (this.#opened[section]?.[window] ?? 0) > 0;
	}

	put(job: number, window: number): void {
		const { section, budgetMinor } = this.#job(job);
		this.usedMinutes[window] = (this.usedMinutes[window] ?? 0) + this.minutesOf(job, window);
		if (section !== undefined) this.#count(section, window, 1);
		this.spentMinor += budgetMinor;
		this.windowOf[job] = window;
	}

	take(job: number): void {
		const window = this.windowOf[job] ?? -1;
		if (window < 0) return;
		const { section, budgetMinor } = this.#job(job);
		if (section !== undefined) this.#count(section, window, -1);
		this.usedMinutes[window] = (this.usedMinutes[window] ?? 0) - this.minutesOf(job, window);
		this.spentMinor -= budgetMinor;
		this.windowOf[job] = -1;
	}

	/** What the plan is worth: its repairs, less the windows that it uses. */
	worthMinor(): number {
		const used = this.problem.windows.map(() => false);
		let sum = 0;
		this.windowOf.forEach((window, job) => {
			if (window < 0) return;
			used[window] = true;
			sum += this.#job(job).worthMinor[window] ?? 0;
		});
		return this.problem.windows.reduce(
			(worth, { costMinor }, window) => worth - (used[window] ? costMinor : 0),
			sum
		);
	}

	/** Whether all of it keeps to the minutes, the budget, the cures and what must be mended. */
	keepsTheRules(): boolean {
		const { jobs, windows, budgetMinor = Infinity } = this.problem;
		return (
			this.spentMinor <= budgetMinor + EPSILON &&
			windows.every((_, window) => this.minutesLeft(window) >= -EPSILON) &&
			jobs.every(({ allowed, must }, job) => {
				const window = this.windowOf[job] ?? -1;
				return window < 0 ? !must : allowed[window] === true;
			})
		);
	}

	#job(job: number): PlanJob {
		const found = this.problem.jobs[job];
		if (!found) throw new RangeError(`no job ${String(job)}`);
		return found;
	}

	#section(section: number): PlanSection {
		const found = this.problem.sections[section];
		if (!found) throw new RangeError(`no section ${String(section)}`);
		return found;
	}

	#count(section: number, window: number, by: 1 | -1): void {
		const opened = this.#opened[section];
		if (opened) opened[window] = (opened[window] ?? 0) + by;
	}
}
