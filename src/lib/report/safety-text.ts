import type { CautionLine, JobGroup, JobRow, ReportModel } from './model.ts';

/** Cautions as one piece of text, each behind its METHOD id. */
export function cautionText(cautions: readonly CautionLine[], between = ' | '): string {
	return cautions.map(({ id, text }) => `${id} ${text}`).join(between);
}

/** What a job must never be handed over without: its own cautions, its section's and the site's, once each. */
export function safetyLines(row: JobRow, group: JobGroup, model: ReportModel): CautionLine[] {
	const all = [...row.cautions, ...group.cautions, ...model.cautions];
	return [...new Map(all.map((caution) => [caution.id, caution])).values()];
}
