import { planDesk as english } from './en/plan-desk.ts';
import { wordsOf } from './language.ts';

export const planDesk = wordsOf('planDesk', english);
