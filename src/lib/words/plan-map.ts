import { planMap as english } from './en/plan-map.ts';
import { wordsOf } from './language.ts';

export const planMap = wordsOf('planMap', english);
