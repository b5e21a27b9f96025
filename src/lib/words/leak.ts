import { leak as english } from './en/leak.ts';
import { wordsOf } from './language.ts';

export const leak = wordsOf('leak', english);
