import { method as english } from './en/method.ts';
import { wordsOf } from './language.ts';

export const method = wordsOf('method', english);
