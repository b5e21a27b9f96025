import { underway as english } from './en/underway.ts';
import { wordsOf } from './language.ts';

export const underway = wordsOf('underway', english);
