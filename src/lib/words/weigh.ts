import { weigh as english } from './en/weigh.ts';
import { wordsOf } from './language.ts';

export const weigh = wordsOf('weigh', english);
