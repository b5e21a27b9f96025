import { find } from '../core/survey/ids.ts';
import { metresPerPixel } from '../core/survey/plan-geometry.ts';
import { areasOn, flowsOn, valvesOn } from '../core/survey/plan-shapes.ts';
import type { Plan, PlanPoint, Survey } from '../core/survey/schema.ts';
import type { PlanPage, PlanPin } from './model.ts';

export type PinToPrint = Pick<PlanPin, 'leakId' | 'tag' | 'shape'>;

/** The plans that have something of these pins on them, with what is drawn on each. */
export function planPages(
	survey: Survey,
	roundId: string,
	pins: readonly PinToPrint[]
): PlanPage[] {
	return Object.values(survey.plans)
		.filter((plan) => !plan.removed)
		.map((plan) => ({
			...drawnOn(survey, roundId, plan),
			pins: pins.flatMap((pin) => {
				const found = pinOf(survey, pin.leakId);
				return found?.plan.id === plan.id ? [{ ...pin, x: found.at.x, y: found.at.y }] : [];
			})
		}))
		.filter((page) => page.pins.length > 0);
}

/** Where a leak's pin is; nothing when it is on no plan, or on one that was removed. */
export function pinOf(
	survey: Survey,
	leakId: string
): { readonly plan: Plan; readonly at: PlanPoint } | undefined {
	const leak = find(survey.leaks, leakId);
	const plan = find(survey.plans, leak?.planId);
	if (leak?.at === undefined || plan === undefined || plan.removed) return undefined;
	return { plan, at: leak.at };
}

function drawnOn(survey: Survey, roundId: string, plan: Plan): Omit<PlanPage, 'pins'> {
	const { id, name, image, northDegrees } = plan;
	const metres = metresPerPixel(plan);
	return {
		planId: id,
		name,
		sha256: image.sha256,
		widthPx: image.widthPx,
		heightPx: image.heightPx,
		...(metres !== undefined && { widthM: metres * image.widthPx }),
		...(northDegrees !== undefined && { northDegrees }),
		areas: areasOn(survey, id, roundId),
		valves: valvesOn(survey, id),
		flows: flowsOn(survey, id)
	};
}
