import { mendPlan as english } from './en/mend-plan.ts';
import { wordsOf } from './language.ts';

export const mendPlan = wordsOf('mendPlan', english);
