import { cumsum } from 'd3-array';
import type { LeakAssessment } from '#lib/core/weigh/assessment.ts';
import { amountOf, type Measure } from './measure.ts';

/** One repair in rank order, and what it and all before it come to. */
export interface RunningPoint {
	readonly leakId: string;
	readonly tag: number;
	readonly amount: number;
	readonly running: number;
	/** `running` as a share of all, 0 to 1. */
	readonly share: number;
}

/** The leaks in rank order with their running total; empty when there is nothing to share out. */
export function runningTotal(leaks: readonly LeakAssessment[], measure: Measure): RunningPoint[] {
	const ranked = [...leaks].sort((a, b) => a.rank - b.rank);
	const amounts = ranked.map((leak) => amountOf(leak, measure));
	const running = cumsum(amounts);
	const all = running.at(-1) ?? 0;
	if (!(all > 0)) return [];
	return ranked.map(({ leakId, tag }, index) => ({
		leakId,
		tag,
		amount: amounts[index] ?? 0,
		running: running[index] ?? 0,
		share: (running[index] ?? 0) / all
	}));
}

/** How many of the first leaks it takes to reach a share of all; 0 when there are no leaks. */
export function firstToReach(points: readonly RunningPoint[], share: number): number {
	return points.findIndex((point) => point.share >= share) + 1 || points.length;
}
