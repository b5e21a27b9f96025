import { applyTo } from '#lib/core/survey/apply.ts';
import type { Command, CommandBody } from '#lib/core/survey/command.ts';
import { Draft } from '#lib/core/survey/draft.ts';
import { invert } from '#lib/core/survey/invert.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { ok, type Result } from '#lib/core/units/result.ts';
import type { Reversible } from './history.ts';
import type { Identity } from './identity.ts';

/** What is to be done, and the command that it takes back or brings back. */
export interface Entry {
	readonly body: CommandBody;
	readonly undoes?: string;
	readonly redoes?: string;
}

/**
 * The commands of one step, in the order of the log, and the survey they lead to.
 *
 * @param log what they follow: the survey, and the next logical time
 * @returns the commands, each with the one that takes it back; or the refusal of the first that
 * cannot be applied or taken back, and then none of them is to be done
 */
export function stepOf(
	entries: readonly Entry[],
	log: { readonly survey: Survey; readonly nextTime: number },
	{ device, newId, now }: Identity
): Result<{ readonly done: readonly Reversible[]; readonly survey: Survey }> {
	const at = now();
	const step = entries.length > 1 ? newId('step') : undefined;
	const draft = new Draft(log.survey);
	const done: Reversible[] = [];
	for (const [index, { body, undoes, redoes }] of entries.entries()) {
		const inverse = invert(draft.survey, body);
		const applied = applyTo(draft, body);
		if (!applied.ok) return applied;
		if (!inverse.ok) return inverse;
		const command: Command = {
			id: newId('command'),
			device,
			time: log.nextTime + index,
			at,
			...(step !== undefined && { step }),
			...(undoes !== undefined && { undoes }),
			...(redoes !== undefined && { redoes }),
			body
		};
		done.push({ command, inverse: inverse.value });
	}
	return ok({ done, survey: draft.finish() });
}
