import { mending as english } from './en/mending.ts';
import { wordsOf } from './language.ts';

export const mending = wordsOf('mending', english);
