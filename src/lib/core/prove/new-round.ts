import type { CommandBody } from '../survey/command.ts';
import { afterInstant } from '../survey/instants.ts';
import { latestRound } from '../survey/leak-state.ts';
import type { Survey } from '../survey/schema.ts';
import { conditionsOf } from './conditions.ts';

/**
 * The commands that start the next round: what the sums of the last one stand on is kept with it, so
 * that a later tariff cannot rewrite it, and the new round is added. METHOD V1, V2.
 */
export function startRound(
	survey: Survey,
	round: { readonly id: string; readonly name: string; readonly startedAt: string }
): CommandBody[] {
	const last = latestRound(survey);
	if (!last) return [{ kind: 'add-round', round }];
	// By a clock that runs behind it would sort before the last one, and would not be the round of now.
	const startedAt = afterInstant(round.startedAt, last.startedAt);
	return [
		{ kind: 'set-round', roundId: last.id, changes: { conditions: conditionsOf(survey) } },
		{ kind: 'add-round', round: { ...round, startedAt } }
	];
}
