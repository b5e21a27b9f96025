import { refusalParts as english } from './en/refusal-parts.ts';
import { wordsOf } from './language.ts';

export const refusalParts = wordsOf('refusalParts', english);
