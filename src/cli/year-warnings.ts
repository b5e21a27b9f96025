import { CLOSED } from '#lib/core/supply/schedule.ts';
import type { YearWarning } from '#lib/core/supply/year.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { createFormat } from '#lib/words/format.ts';
import { supplyWarningSentence } from '#lib/words/supply-warnings.ts';

/** What a part of the year is called. */
export function partName(survey: Survey, partId: string): string {
	if (partId === CLOSED) return 'closed time';
	const periods = survey.supply.station?.schedule.periods ?? [];
	return periods.find(({ id }) => id === partId)?.name ?? partId;
}

/** What the station model found that must be read beside its figures. */
export function warningSentences(
	survey: Survey,
	warnings: readonly YearWarning[]
): readonly { readonly code: string; readonly sentence: string }[] {
	const { currency, units } = survey.site;
	const format = createFormat({ locale: 'en-GB', currency, units });
	return warnings.map((warning) => ({
		code: warning.code,
		sentence: supplyWarningSentence(warning, (id) => partName(survey, id), format)
	}));
}
