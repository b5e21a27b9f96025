import { help as english } from './en/help.ts';
import { wordsOf } from './language.ts';

export const help = wordsOf('help', english);
