import { metresPerPixel } from '../core/survey/plan-geometry.ts';
import type { Plan, PlanPoint } from '../core/survey/schema.ts';
import type { JobSpot } from './model.ts';

/** What is shown round a leak where the scale is known: enough to find the place by, m across. */
const METRES = 16;
/** Of the plan's longer side, where the scale is not known, and at least and at most where it is. */
const SHARE = 1 / 6;
const LEAST_SHARE = 1 / 14;
const MOST_SHARE = 1 / 3;

/** A square cut of a plan with a leak in it: in the middle, but at the plan's edges. */
export function leakSpot(leakId: string, plan: Plan, at: PlanPoint): JobSpot {
	const { widthPx, heightPx } = plan.image;
	const longer = Math.max(widthPx, heightPx);
	const metres = metresPerPixel(plan);
	const wanted = metres === undefined ? SHARE * longer : METRES / metres;
	const side = Math.min(
		widthPx,
		heightPx,
		Math.max(LEAST_SHARE * longer, Math.min(MOST_SHARE * longer, wanted))
	);
	const [width, height] = [side / widthPx, side / heightPx];
	const part = {
		x: Math.min(1 - width, Math.max(0, at.x - width / 2)),
		y: Math.min(1 - height, Math.max(0, at.y - height / 2)),
		width,
		height
	};
	return {
		key: `spot ${leakId}`,
		planId: plan.id,
		part,
		at: { x: (at.x - part.x) / width, y: (at.y - part.y) / height }
	};
}
