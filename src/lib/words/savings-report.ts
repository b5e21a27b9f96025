import { savingsReport as english } from './en/savings-report.ts';
import { wordsOf } from './language.ts';

export const savingsReport = wordsOf('savingsReport', english);
