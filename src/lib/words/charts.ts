import { charts as english } from './en/charts.ts';
import { wordsOf } from './language.ts';

export const charts = wordsOf('charts', english);
