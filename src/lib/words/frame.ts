import { frame as english } from './en/frame.ts';
import { wordsOf } from './language.ts';

export const frame = wordsOf('frame', english);
