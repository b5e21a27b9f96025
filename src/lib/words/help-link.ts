import { helpLink as english } from './en/help-link.ts';
import { wordsOf } from './language.ts';

export const helpLink = wordsOf('helpLink', english);
