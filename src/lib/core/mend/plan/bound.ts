import { bestOverWindows, fillByDensity } from './greedy.ts';
import { Filling } from './filling.ts';
import { improvedPlan } from './improve.ts';
import type { PlanProblem } from './problem.ts';

/** Every set of windows is looked at for every section: more windows than this take too long. */
const MOST_WINDOWS = 6;
const ROUNDS = 220;
/** After so many rounds without a lower bound the steps get shorter. */
const PATIENCE = 8;

export interface Bounded {
	readonly plan: Filling;
	/** No plan is worth more than this, minor units; absent with more than six windows. */
	readonly boundMinor?: number;
}

interface Prices {
	readonly minute: number[];
	budget: number;
}

interface Priced {
	/** The bound at these prices. */
	readonly boundMinor: number;
	/** Window by job at these prices, -1 for none: it may break the rules. */
	readonly windowOf: readonly number[];
	readonly minutesOver: readonly number[];
	readonly budgetOver: number;
}

/**
 * A plan and a bound that no plan can pass: minutes and money are given a price instead of a limit, which
 * leaves each section to be decided on its own, and the prices are moved until the bound falls no
 * further (a Lagrangian relaxation with subgradient steps). What the prices choose is repaired into a plan.
 * METHOD P7.
 * @param known a plan to start from and never to fall below
 */
export function boundedPlan(problem: PlanProblem, known: Filling): Bounded {
	let best = known;
	if (problem.windows.length > MOST_WINDOWS) return { plan: improvedPlan(problem, best, 0) };
	const prices: Prices = { minute: startingPrices(problem, known), budget: 0 };
	let bound = Infinity;
	let stretch = 1;
	let stale = 0;
	for (let round = 0; round < ROUNDS && stretch > 1e-4; round++) {
		const priced = atPrices(problem, prices);
		if (priced.boundMinor < bound) {
			bound = priced.boundMinor;
			stale = 0;
		} else if (++stale >= PATIENCE) {
			stretch /= 2;
			stale = 0;
		}
		if (round % 5 === 0 || stale === 0) {
			const repaired = repair(problem, priced, prices);
			if (repaired.worthMinor() > best.worthMinor()) best = repaired;
		}
		const gap = bound - best.worthMinor();
		if (gap <= 1e-6 * Math.max(1, Math.abs(bound))) break;
		if (!move(problem, prices, priced, stretch * gap)) break;
	}
	if (bound > best.worthMinor()) best = improvedPlan(problem, best, prices.budget);
	return { plan: best, boundMinor: Math.max(bound, best.worthMinor()) };
}

/** A first price of a minute: what the known plan gets for one. */
function startingPrices(problem: PlanProblem, known: Filling): number[] {
	const worth = Math.max(0, known.worthMinor());
	const used = known.usedMinutes.reduce((sum, minutes) => sum + minutes, 0);
	return problem.windows.map(() => (used > 0 ? (0.5 * worth) / used : 0));
}

/** The best that can be had when minutes and money are paid for and not limited. */
function atPrices(problem: PlanProblem, prices: Prices): Priced {
	const { windows, sections, jobs, budgetMinor } = problem;
	const sets = 2 ** windows.length;
	const groups = jobsBySection(problem);
	/** What each section gives when exactly these windows open it, then when at most these do. */
	const gains = groups.map(({ section, members }) => {
		const fixed = section === undefined ? 0 : (sections[section]?.minutes ?? 0);
		const exact = Array.from({ length: sets }, (_, set) => {
			let sum = 0;
			windows.forEach((__, window) => {
				if ((set >> window) & 1) sum -= fixed * (prices.minute[window] ?? 0);
			});
			for (const job of members) sum += bestIn(problem, prices, job, set).gain;
			return sum;
		});
		return { members, ...withSubsets(exact) };
	});

	let chosen = { set: 0, total: -Infinity };
	for (let set = 0; set < sets; set++) {
		let total = (budgetMinor ?? 0) * prices.budget;
		windows.forEach(({ personMinutes, costMinor }, window) => {
			if ((set >> window) & 1) total += personMinutes * (prices.minute[window] ?? 0) - costMinor;
		});
		for (const { best } of gains) total += best[set] ?? -Infinity;
		if (total > chosen.total) chosen = { set, total };
	}

	const windowOf = jobs.map(() => -1);
	for (const { members, argument } of gains) {
		const opened = argument[chosen.set] ?? 0;
		for (const job of members) windowOf[job] = bestIn(problem, prices, job, opened).window;
	}
	return { boundMinor: chosen.total, windowOf, ...over(problem, windowOf, chosen.set) };
}

interface Group {
	readonly section?: number;
	readonly members: readonly number[];
}

function jobsBySection({ jobs, sections }: PlanProblem): Group[] {
	const members = sections.map((): number[] => []);
	const free: Group[] = [];
	jobs.forEach(({ section }, job) => {
		if (section === undefined) free.push({ members: [job] });
		else members[section]?.push(job);
	});
	return [...free, ...members.map((list, section) => ({ section, members: list }))];
}

/** The best window of a set for one job at the prices; none, where none pays and it need not be mended. */
function bestIn({ jobs }: PlanProblem, prices: Prices, job: number, set: number) {
	const about = jobs[job];
	let best = { gain: about?.must ? -Infinity : 0, window: -1 };
	if (!about) return best;
	about.allowed.forEach((allowed, window) => {
		if (!allowed || !((set >> window) & 1)) return;
		const gain =
			(about.worthMinor[window] ?? 0) -
			about.minutes * (prices.minute[window] ?? 0) -
			about.budgetMinor * prices.budget;
		if (gain > best.gain) best = { gain, window };
	});
	return best;
}

/** For each set the best of its subsets, and which it is. */
function withSubsets(exact: readonly number[]) {
	const best = [...exact];
	const argument = exact.map((_, set) => set);
	for (let bit = 1; bit < exact.length; bit *= 2)
		for (let set = 0; set < exact.length; set++) {
			const smaller = set & ~bit;
			if (smaller === set || (best[smaller] ?? -Infinity) <= (best[set] ?? -Infinity)) continue;
			best[set] = best[smaller] ?? -Infinity;
			argument[set] = argument[smaller] ?? smaller;
		}
	return { best, argument };
}

/** How far a choice goes over the minutes of each window and over the budget; under it is negative. */
function over(problem: PlanProblem, windowOf: readonly number[], set: number) {
	const filling = new Filling(problem, windowOf);
	return {
		minutesOver: problem.windows.map(({ personMinutes }, window) =>
			(set >> window) & 1 ? (filling.usedMinutes[window] ?? 0) - personMinutes : 0
		),
		budgetOver: problem.budgetMinor === undefined ? 0 : filling.spentMinor - problem.budgetMinor
	};
}

/** Moves the prices towards what the choice goes over; false when nothing is over or under. */
function move(
	{ budgetMinor }: PlanProblem,
	prices: Prices,
	{ minutesOver, budgetOver }: Priced,
	length: number
): boolean {
	// Money and minutes are of different sizes: each is moved on the scale of its own limit.
	const scale = budgetMinor ? 1 / Math.max(1, budgetMinor) : 0;
	const minuteScale = 1 / Math.max(1, ...minutesOver.map(Math.abs));
	// A price that is nothing already cannot fall.
	const minutes = minutesOver.map((by, w) =>
		by < 0 && !((prices.minute[w] ?? 0) > 0) ? 0 : by * minuteScale
	);
	const money = budgetOver < 0 && !(prices.budget > 0) ? 0 : budgetOver * scale;
	const norm = minutes.reduce((sum, by) => sum + by * by, money * money);
	if (!(norm > 1e-12)) return false;
	const step = length / norm;
	minutes.forEach((by, w) => {
		prices.minute[w] = Math.max(0, (prices.minute[w] ?? 0) + step * by * minuteScale);
	});
	prices.budget = Math.max(0, prices.budget + step * money * scale);
	return true;
}

/** Makes a plan of what the prices chose: the best of it first, then whatever else fits. */
function repair(problem: PlanProblem, { windowOf }: Priced, prices: Prices): Filling {
	const { jobs } = problem;
	const gain = (job: number) => {
		const window = windowOf[job] ?? -1;
		const about = jobs[job];
		if (!about || window < 0) return 0;
		return (
			((about.worthMinor[window] ?? 0) - about.budgetMinor * prices.budget) /
			Math.max(1e-9, about.minutes)
		);
	};
	const order = windowOf
		.flatMap((window, job) => (window >= 0 && !jobs[job]?.must ? [job] : []))
		.sort((a, b) => gain(b) - gain(a));
	return bestOverWindows(problem, (windows) => {
		const filling = new Filling(problem);
		for (const job of order) {
			const window = windowOf[job] ?? -1;
			if (windows.includes(window) && filling.fits(job, window)) filling.put(job, window);
		}
		fillByDensity(filling, windows);
		return filling;
	});
}
