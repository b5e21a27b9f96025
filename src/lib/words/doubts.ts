import { doubts as english } from './en/doubts.ts';
import { wordsOf } from './language.ts';

export const doubts = wordsOf('doubts', english);
