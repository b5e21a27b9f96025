import type { PlanProblem } from './problem.ts';

/** One product a line: long sums stay readable, and no reader's line is too long. */
const NEXT = '\n ';

/** A name of the model: job in window, section in window, or window used. */
export const jobName = (job: number, window: number) => `x${String(job)}_${String(window)}`;
export const sectionName = (section: number, window: number) =>
	`y${String(section)}_${String(window)}`;
export const windowName = (window: number) => `z${String(window)}`;

/**
 * Writes the planning problem in the CPLEX LP format, for any solver of integer programmes: x is a job
 * in a window, y a section opened in a window, z a window that is used and costs something. METHOD P6.
 */
export function planLp(problem: PlanProblem): string {
	const { windows, sections, jobs, budgetMinor } = problem;
	const objective: string[] = [];
	const minutes: string[][] = windows.map(() => []);
	const budget: string[] = [];
	const once: string[] = [];
	const opened: string[] = [];
	const names: string[] = [];
	const open = new Set<string>();

	jobs.forEach((job, j) => {
		const own: string[] = [];
		windows.forEach(({ costMinor }, w) => {
			if (!job.allowed[w]) return;
			const x = jobName(j, w);
			own.push(`+ ${x}`);
			names.push(x);
			objective.push(term(job.worthMinor[w] ?? 0, x));
			minutes[w]?.push(term(job.minutes, x));
			if (job.budgetMinor > 0) budget.push(term(job.budgetMinor, x));
			if (job.section !== undefined) {
				const y = sectionName(job.section, w);
				open.add(y);
				opened.push(`${x} - ${y} <= 0`);
			} else if (costMinor > 0) opened.push(`${x} - ${windowName(w)} <= 0`);
		});
		if (own.length > 0) once.push(`${own.join(' ')} ${job.must ? '=' : '<='} 1`);
	});
	sections.forEach((section, s) => {
		windows.forEach(({ costMinor }, w) => {
			const y = sectionName(s, w);
			if (!open.has(y)) return;
			names.push(y);
			minutes[w]?.push(term(section.minutes, y));
			if (costMinor > 0) opened.push(`${y} - ${windowName(w)} <= 0`);
		});
	});
	windows.forEach(({ costMinor }, w) => {
		if (!(costMinor > 0)) return;
		names.push(windowName(w));
		objective.push(term(-costMinor, windowName(w)));
	});

	const rows = [
		...windows.flatMap(({ personMinutes }, w) => {
			const used = minutes[w] ?? [];
			return used.length > 0 ? [`${used.join(NEXT)} <= ${number(personMinutes)}`] : [];
		}),
		...(budgetMinor !== undefined && budget.length > 0
			? [`${budget.join(NEXT)} <= ${number(budgetMinor)}`]
			: []),
		...once,
		...opened
	].map((row, index) => ` c${String(index)}: ${row}`);
	return [
		'Maximize',
		` worth: ${objective.join(NEXT)}`,
		'Subject To',
		...rows,
		'Binary',
		...names.map((name) => ` ${name}`),
		'End',
		''
	].join('\n');
}

function term(factor: number, name: string): string {
	return `${factor < 0 ? '-' : '+'} ${number(Math.abs(factor))} ${name}`;
}

/** Thousandths of a cent and of a minute are beyond anything that is known; exponents are not for every reader. */
function number(value: number): string {
	return value.toFixed(3);
}
