import type { Survey } from '../survey/schema.ts';
import type { Amounts } from './amounts.ts';
import { sameConditions, stepsBetween, type Routine } from './conditions.ts';
import { groundOf, underConditions, type Ground, type PairedLeak } from './paired-leaks.ts';
import { worthOf } from './worth.ts';

/** What one condition's change does to the baseline; both may be below zero. */
export interface RoutineAdjustment {
	readonly what: Routine;
	readonly energyKwhPerYear: number;
	readonly costMinorPerYear: number;
}

/** A change that is not of the leaks' making, as it was entered. */
export interface HandAdjustment {
	readonly id: string;
	readonly what: string;
	readonly reason: string;
	readonly energyKwhPerYear: number;
	readonly costMinorPerYear?: number;
}

/**
 * What the baseline becomes when one condition after another is made that of the later round: each
 * adjustment is the step that it makes, and the steps add up. METHOD V5.
 * @returns nothing where nothing changed, or where the baseline cannot be priced
 */
export function routineSteps(
	past: Survey,
	present: Survey,
	pairs: readonly PairedLeak[]
): readonly RoutineAdjustment[] {
	if (sameConditions(past, present)) return [];
	const leaking = pairs.filter(({ beforeAsSeen }) => beforeAsSeen);
	const baseline = (survey: Survey): Baseline | undefined => {
		const ground = groundOf(survey);
		return ground.ok ? priced(leaking, ground.value) : undefined;
	};
	let here = baseline(past);
	let survey = past;
	const steps: RoutineAdjustment[] = [];
	for (const step of stepsBetween(past, present)) {
		if (sameConditions(survey, step.survey)) continue;
		survey = step.survey;
		const next = baseline(survey);
		if (!here || !next) return [];
		const energyKwhPerYear = next.energyKwh - here.energyKwh;
		const costMinorPerYear = next.costMinor - here.costMinor;
		// What was changed without touching these leaks is no adjustment of them.
		if (costMinorPerYear !== 0 || Math.abs(energyKwhPerYear) > 1e-6)
			steps.push({ what: step.what, energyKwhPerYear, costMinorPerYear });
		here = next;
	}
	return steps;
}

interface Baseline {
	readonly energyKwh: number;
	/** Whole minor units, rounded leak by leak. */
	readonly costMinor: number;
}

function priced(leaking: readonly PairedLeak[], ground: Ground): Baseline | undefined {
	const moved: PairedLeak[] = [];
	for (const pair of leaking) {
		if (!pair.beforeAsSeen) continue;
		const before = underConditions(
			pair.beforeAsSeen,
			ground,
			pair.before?.sighting.pressureBarGauge
		);
		if (!before.ok) return undefined;
		moved.push({
			leak: pair.leak,
			fate: pair.fate,
			claimFailed: false,
			sameReading: false,
			before: before.value
		});
	}
	const { before, energyKnown } = worthOf(moved, ground);
	if (!energyKnown) return undefined;
	return {
		energyKwh: before.energyKwh.reduce((a, b) => a + b, 0),
		costMinor: before.costMinor.reduce((sum, cost) => sum + Math.round(cost), 0)
	};
}

/** Changes entered by hand for a round; their money is at what the baseline pays for a kWh. METHOD V5. */
export function byHand(survey: Survey, roundId: string, before: Amounts): HandAdjustment[] {
	const { energyKwhPerYear: kwh, costMinorPerYear: minor } = before;
	const perKwh = kwh !== undefined && kwh > 0 && minor !== undefined ? minor / kwh : undefined;
	return Object.values(survey.adjustments ?? {})
		.filter((each) => !each.removed && each.roundId === roundId)
		.map(({ id, what, reason, energyKwhPerYear }) => ({
			id,
			what,
			reason,
			energyKwhPerYear,
			...(perKwh !== undefined && { costMinorPerYear: Math.round(energyKwhPerYear * perKwh) })
		}));
}
