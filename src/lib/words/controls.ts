import { controls as english } from './en/controls.ts';
import { wordsOf } from './language.ts';

export const controls = wordsOf('controls', english);
