import type { CommandBody } from '../survey/command.ts';
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
	const add: CommandBody = { kind: 'add-round', round };
	if (!last) return [add];
	return [
		{ kind: 'set-round', roundId: last.id, changes: { conditions: conditionsOf(survey) } },
		add
	];
}
