import { sums as english } from './en/sums.ts';
import { wordsOf } from './language.ts';

export const sums = wordsOf('sums', english);
