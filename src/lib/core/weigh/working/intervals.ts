import type { LeakUncertainty, UncertaintyResult } from '../uncertainty/result.ts';
import type { Spread } from '../uncertainty/spread.ts';
import type { Working } from './tree.ts';

/** Spreads by the unit they are in: a leak's, or those of all leaks. */
type Drawn = Partial<
	Pick<
		LeakUncertainty,
		'massFlowKgPerS' | 'freeAirM3PerS' | 'energyKwhPerYear' | 'costMinorPerYear' | 'co2KgPerYear'
	>
>;

/** Smaller than this share of the figure, a difference is only rounding. */
const ROUNDING = 1e-9;

/**
 * A working with the intervals of the draws in it, those that stand beside the same figures
 * everywhere else, in place of what one reading's own uncertainty says. METHOD W7.
 *
 * @param working of all leaks, or of the leak with the tag
 * @param drawn the result of the draws over the same survey and round
 * @param tag of the leak that the working is of; absent for all leaks
 */
export function withDrawnIntervals(
	working: Working,
	drawn: Pick<UncertaintyResult, 'totals' | 'leaks'>,
	tag?: number
): Working {
	const byTag = new Map(drawn.leaks.map((leak) => [leak.tag, leak]));
	const whole: Drawn | undefined = tag === undefined ? drawn.totals : byTag.get(tag);
	const visit = (node: Working): Working => {
		const of = node.of?.kind === 'leak' ? byTag.get(node.of.tag) : whole;
		const spread = of && spreadOf(node, of);
		const inputs = node.inputs.map(visit);
		if (!spread) return { ...node, inputs };
		const { relativeUncertainty: _, ...rest } = node;
		const { low, median, high } = spread;
		return { ...rest, inputs, interval: { low, median, high } };
	};
	return visit(working);
}

function spreadOf({ id, of, value }: Working, drawn: Drawn): Spread | undefined {
	switch (id) {
		case 'cost-per-year':
			return drawn.costMinorPerYear;
		case 'energy-per-year':
			return drawn.energyKwhPerYear;
		case 'carbon-per-year':
			return drawn.co2KgPerYear;
		// The same air is written in several references and, by the station, at several pressures.
		case 'free-air-flow':
			return of === undefined ? drawn.freeAirM3PerS : about(drawn.freeAirM3PerS, value);
		case 'mass-flow':
			return about(drawn.massFlowKgPerS, value);
		default:
			return undefined;
	}
}

/** A leak's flow is lognormal about its face value, so its median says whether it is the same flow. */
function about(spread: Spread | undefined, value: number): Spread | undefined {
	return spread && Math.abs(spread.median - value) <= ROUNDING * value ? spread : undefined;
}
