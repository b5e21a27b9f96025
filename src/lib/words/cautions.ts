import type { Caution } from '#lib/core/mend/cautions.ts';
import { cautions as english } from './en/cautions.ts';
import { wordsOf } from './language.ts';

const cautions = wordsOf('cautions', english);

/** A caution in the language that is spoken, whole. */
export function cautionText({ id, text }: Pick<Caution, 'id' | 'text'>): string {
	return cautions[id] ?? text;
}
