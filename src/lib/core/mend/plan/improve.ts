import { Filling } from './filling.ts';
import type { PlanProblem } from './problem.ts';

/** Tries for each job, and at most. */
const TRIES_PER_JOB = 20;
const MOST_TRIES = 1200;
/** How far the worth of a section in a window strays from one try to the next. */
const NOISE = 0.2;
/** So many tries are made at one price of money. */
const SAME_PRICE = 10;
/** At most this share of the jobs is taken out. */
const LOOSE = 0.6;
/** The price of money strays between this share of what the bound found and as much above it. */
const LOW = 0.85;
/** At first a plan may be worth less by this share and still be gone on from. */
const SLACK = 0.001;

/**
 * Betters a plan by taking a few sections out of their windows and filling up again, at prices that stray a
 * little, keeping what is better. The same problem gives the same plan: the strays are a fixed series.
 * METHOD P7.
 * @param moneyPrice what a minor unit of the budget is taken to be worth
 */
export function improvedPlan(problem: PlanProblem, from: Filling, moneyPrice: number): Filling {
	const tries = Math.min(MOST_TRIES, TRIES_PER_JOB * problem.jobs.length);
	const die = series(problem.jobs.length + 1);
	const sections = membersBySection(problem);
	let best = from;
	let bestWorth = from.worthMinor();
	let here = from;
	let hereWorth = bestWorth;
	let inOrder = candidates(problem, sections, moneyPrice);
	for (let round = 0; round < tries; round++) {
		if (round % SAME_PRICE === 0)
			inOrder = candidates(problem, sections, moneyPrice * (LOW + 2 * (1 - LOW) * die()));
		const filling = new Filling(problem, here.windowOf);
		const opened = sections.flatMap((members, section) =>
			problem.windows.flatMap((_, window) => {
				const inIt = members.filter((job) => filling.windowOf[job] === window);
				return inIt.length > 0 ? [{ section, window, inIt }] : [];
			})
		);
		const shut = new Set<string>();
		const count = 1 + Math.floor(3 * die());
		for (let k = 0; k < count; k++) {
			const chosen = opened[Math.floor(opened.length * die())];
			if (!chosen) continue;
			for (const job of chosen.inIt) if (!problem.jobs[job]?.must) filling.take(job);
			if (die() < 0.6) shut.add(`${String(chosen.section)} ${String(chosen.window)}`);
		}
		const loose = LOOSE * die();
		filling.windowOf.forEach((window, job) => {
			if (window >= 0 && !problem.jobs[job]?.must && die() < loose) filling.take(job);
		});
		const stray = sections.map(() => problem.windows.map(() => 1 + NOISE * (die() - 0.5)));
		fillByBundles(filling, inOrder, (section, window) =>
			shut.has(`${String(section)} ${String(window)}`) ? 0 : (stray[section]?.[window] ?? 1)
		);
		const worth = filling.worthMinor();
		if (worth > hereWorth - SLACK * (1 - round / tries) * Math.abs(bestWorth)) {
			here = filling;
			hereWorth = worth;
		}
		if (worth > bestWorth) {
			best = filling;
			bestWorth = worth;
		}
	}
	return best;
}

/** Jobs by section; each that needs no section shut stands alone at the end. */
function membersBySection({ jobs, sections }: PlanProblem): number[][] {
	const members = sections.map((): number[] => []);
	jobs.forEach(({ section }, job) => {
		if (section === undefined) members.push([job]);
		else members[section]?.push(job);
	});
	return members;
}

interface Candidate {
	readonly job: number;
	readonly gain: number;
	readonly minutes: number;
	readonly money: number;
}
/** By window and section, what gains most for each minute first. */
type Candidates = readonly (readonly (readonly Candidate[])[])[];

function candidates(
	{ jobs, windows }: PlanProblem,
	sections: readonly (readonly number[])[],
	moneyPrice: number
): Candidates {
	return windows.map((_, window) =>
		sections.map((members) =>
			members
				.flatMap((job): Candidate[] => {
					const about = jobs[job];
					if (!about?.allowed[window]) return [];
					const { minutes, budgetMinor: money } = about;
					const gain = (about.worthMinor[window] ?? 0) - moneyPrice * money;
					return gain > 0 ? [{ job, gain, minutes, money }] : [];
				})
				.sort((a, b) => b.gain * a.minutes - a.gain * b.minutes)
		)
	);
}

/**
 * Fills a plan up: each time the section with those of its jobs that together give most for each minute,
 * the minutes for opening it counted.
 * @param weight what the worth of a section in a window is multiplied by; 0 leaves it out
 */
function fillByBundles(
	filling: Filling,
	inOrder: Candidates,
	weight: (section: number, window: number) => number
): void {
	const budget = filling.problem.budgetMinor ?? Infinity;
	for (;;) {
		let best: { window: number; jobs: number[]; density: number } | undefined;
		for (const [window, bySection] of inOrder.entries()) {
			const left = filling.minutesLeft(window);
			for (const [section, members] of bySection.entries()) {
				const by = weight(section, window);
				if (by === 0) continue;
				const isOpen = section < filling.problem.sections.length && filling.opens(section, window);
				let minutes = isOpen ? 0 : (filling.problem.sections[section]?.minutes ?? 0);
				let money = filling.spentMinor;
				let gain = 0;
				const taken: number[] = [];
				for (const each of members) {
					if (filling.windowOf[each.job] !== -1) continue;
					if (minutes + each.minutes > left || money + each.money > budget) continue;
					minutes += each.minutes;
					money += each.money;
					gain += each.gain;
					taken.push(each.job);
					const density = (by * gain) / Math.max(1e-9, minutes);
					if (!best || density > best.density) best = { window, jobs: [...taken], density };
					if (isOpen) break;
				}
			}
		}
		if (!best) return;
		for (const job of best.jobs) filling.put(job, best.window);
	}
}

/** A fixed series of numbers from 0 to 1: the multiplicative generator of Park and Miller. */
function series(start: number): () => number {
	let seed = start;
	return () => {
		seed = (seed * 48_271) % 2_147_483_647;
		return seed / 2_147_483_647;
	};
}
