import { fixList as english } from './en/fix-list.ts';
import { wordsOf } from './language.ts';

export const fixList = wordsOf('fixList', english);
