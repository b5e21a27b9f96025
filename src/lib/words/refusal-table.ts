import { refusals } from './en/refusals.ts';
import { wordsOf } from './language.ts';

/** The one table from code to sentence, in the language that is spoken. */
export const REFUSAL_SENTENCES: Readonly<Record<string, string>> = wordsOf('refusals', refusals);
