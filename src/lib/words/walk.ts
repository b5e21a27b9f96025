import { walk as english } from './en/walk.ts';
import { wordsOf } from './language.ts';

export const walk = wordsOf('walk', english);
