import { z } from 'zod';
import { ENTITIES } from '#lib/core/survey/entities.ts';
import type { Quarantined } from '#lib/core/survey/log.ts';
import { Survey } from '#lib/core/survey/schema.ts';
import { ok, refuse, type Result } from '#lib/core/units/result.ts';

/**
 * Reads a survey that came from outside. A record of a table that does not parse, or that stands
 * under another name than its own, is set aside; the rest is offered.
 *
 * @returns a refusal `survey-invalid` when the survey does not parse even without such records
 */
export function salvageSurvey(
	raw: unknown
): Result<{ survey: Survey; quarantined: readonly Quarantined[] }> {
	const outer = z.record(z.string(), z.unknown()).safeParse(raw);
	if (!outer.success) return refuse('survey-invalid', { field: '' });
	const quarantined: Quarantined[] = [];
	const cleaned: Record<string, unknown> = { ...outer.data };
	for (const { table: name, schema } of Object.values(ENTITIES)) {
		const table = cleaned[name];
		if (typeof table !== 'object' || table === null) continue;
		const kept = Object.entries(table).filter(([id, entry]) => {
			const reason = faultOf(schema, id, entry);
			if (reason !== undefined) quarantined.push({ entry, reason: `${name}.${id}.${reason}` });
			return reason === undefined;
		});
		cleaned[name] = Object.fromEntries(kept);
	}
	const parsed = Survey.safeParse(cleaned);
	if (parsed.success) return ok({ survey: parsed.data, quarantined });
	return refuse('survey-invalid', { field: parsed.error.issues[0]?.path.join('.') ?? '' });
}

function faultOf(
	schema: z.ZodType<{ id: string }>,
	id: string,
	entry: unknown
): string | undefined {
	const parsed = schema.safeParse(entry);
	if (!parsed.success) {
		const issue = parsed.error.issues[0];
		return `${issue?.path.join('.') ?? ''}: ${issue?.message ?? ''}`;
	}
	return parsed.data.id === id ? undefined : 'id: another name';
}
