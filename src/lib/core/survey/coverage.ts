import type { Area, Plan, PlanPoint, Survey } from './schema.ts';

/** One plan, and what of it was marked as walked and tight in a round. */
export interface PlanCoverage {
	readonly plan: Plan;
	readonly areas: readonly Area[];
	/** Share of the plan's picture that the areas cover together, 0 to 1. */
	readonly share: number;
	/** Leaks pinned on it: somebody was there too. */
	readonly leakCount: number;
}

/** What was and was not walked, plan by plan. */
export function coverage(survey: Survey, roundId: string): PlanCoverage[] {
	const areas = Object.values(survey.areas ?? {}).filter(
		({ removed, use }) => !removed && use.kind === 'walked-tight' && use.roundId === roundId
	);
	const leaks = Object.values(survey.leaks).filter(
		(leak) => !leak.removed && leak.at && leak.sightings[roundId]
	);
	return Object.values(survey.plans)
		.filter(({ removed }) => !removed)
		.map((plan) => {
			const here = areas.filter(({ planId }) => planId === plan.id);
			return {
				plan,
				areas: here,
				share: coveredShare(here.map(({ outline }) => outline)),
				leakCount: leaks.filter(({ planId }) => planId === plan.id).length
			};
		});
}

/** So many lines are drawn across the plan. */
const LINES = 500;

/**
 * The share of a plan that outlines cover together; where they overlap counts once. Even lines are
 * drawn across the plan, and what lies inside an outline is summed along each (even-odd rule).
 * @param outlines corners as shares of the plan's width and height
 * @returns 0 to 1, good to the 500th part of an outline's height
 * @validity any outlines of three corners and more, crossed ones included
 * @source derived; METHOD W14
 */
export function coveredShare(outlines: readonly (readonly PlanPoint[])[]): number {
	let sum = 0;
	for (let line = 0; line < LINES; line++) {
		const y = (line + 0.5) / LINES;
		sum += lengthOfUnion(outlines.flatMap((outline) => stretchesAt(outline, y)));
	}
	return sum / LINES;
}

type Stretch = readonly [from: number, to: number];

function stretchesAt(outline: readonly PlanPoint[], y: number): Stretch[] {
	const crossings = outline
		.flatMap((a, index) => {
			const b = outline[(index + 1) % outline.length] ?? a;
			return a.y > y === b.y > y ? [] : [a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)];
		})
		.sort((a, b) => a - b);
	return crossings.flatMap((from, index) => {
		const to = crossings[index + 1];
		return index % 2 === 0 && to !== undefined ? [[from, to] as const] : [];
	});
}

function lengthOfUnion(stretches: readonly Stretch[]): number {
	let length = 0;
	let reached = 0;
	for (const [from, to] of stretches.toSorted(([a], [b]) => a - b)) {
		length += Math.max(0, to - Math.max(from, reached));
		reached = Math.max(reached, to);
	}
	return length;
}
