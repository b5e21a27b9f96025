import type { LeakState } from '../survey/leak-state.ts';
import type { Survey } from '../survey/schema.ts';
import { ok, refuse, type Result } from '../units/result.ts';
import { leakEnergyWorking, totalEnergyWorking } from './working/energy.ts';
import { freeAirWorking } from './working/flow.ts';
import { carbonWorking, leakCostWorking, totalCostWorking } from './working/money.ts';
import { weighing } from './working/round.ts';
import { made, type Working } from './working/tree.ts';
import { BLEW, WASTING } from './weigh-round.ts';

/** The figures of a headline, each as a tree that can be opened. What is not known is absent. */
export interface TotalsWorking {
	readonly cost?: Working;
	readonly energy?: Working;
	readonly air: Working;
	readonly carbon?: Working;
}

/**
 * Shows the working of one leak: its cost a year, else its energy, else its free air, down to what
 * was read or entered. The figures are those of `assess`. METHOD W1 to W5.
 *
 * @returns the tree, or `leak-not-in-round`, or why the leak cannot be weighed
 */
export function workingOfLeak(survey: Survey, roundId: string, leakId: string): Result<Working> {
	for (const states of [WASTING, BLEW]) {
		const found = weighing(survey, roundId, states);
		if (!found.ok) return found;
		const { leaks, unweighed, air } = found.value;
		const index = leaks.findIndex(({ leak }) => leak.id === leakId);
		const leak = leaks[index];
		if (leak)
			return ok(
				leakCostWorking(found.value, index) ??
					leakEnergyWorking(found.value, index) ??
					freeAirWorking(leak, survey, air)
			);
		const refused = unweighed.find((each) => each.leakId === leakId);
		if (refused) return { ok: false, error: refused.refusal };
	}
	return refuse('leak-not-in-round', { leakId });
}

/**
 * Shows the working of the totals of one round. The figures are those of `assess`. METHOD W2, W5.
 *
 * @param states which leaks count; by default those that leak now
 * @returns a tree for each figure that is known, or why nothing can be weighed
 */
export function workingOfTotals(
	survey: Survey,
	roundId: string,
	states: readonly LeakState[] = WASTING
): Result<TotalsWorking> {
	const found = weighing(survey, roundId, states);
	if (!found.ok) return found;
	const { leaks } = found.value;
	const flows = leaks.map(({ leak, flow }) =>
		made('free-air-flow', flow.freeAir, 'm³/s', 'A14', [], {
			of: { kind: 'leak', tag: leak.tag },
			relativeUncertainty: flow.area.relativeStandardUncertainty
		})
	);
	const sum = flows.reduce((total, { value }) => total + value, 0);
	const cost = totalCostWorking(found.value);
	const energy = totalEnergyWorking(found.value);
	const carbon = carbonWorking(found.value, energy);
	return ok({
		...(cost && { cost }),
		...(energy && { energy }),
		air: made('free-air-flow', sum, 'm³/s', 'W2', flows),
		...(carbon && { carbon })
	});
}
