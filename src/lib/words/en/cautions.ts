import { CAUTION_RULES } from '#lib/core/mend/caution-rules.ts';

/** The cautions by their METHOD id. Their English stands beside the rules that call for them. */
export const cautions: Readonly<Record<string, string>> = Object.fromEntries(
	CAUTION_RULES.map(({ id, text }) => [id, text])
);
