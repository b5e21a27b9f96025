import { setUp as english } from './en/set-up.ts';
import { wordsOf } from './language.ts';

export const setUp = wordsOf('setUp', english);
