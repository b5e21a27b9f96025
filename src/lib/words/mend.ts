import { mend as english } from './en/mend.ts';
import { wordsOf } from './language.ts';

export const mend = wordsOf('mend', english);
