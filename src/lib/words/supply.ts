import { supply as english } from './en/supply.ts';
import { wordsOf } from './language.ts';

export const supply = wordsOf('supply', english);
