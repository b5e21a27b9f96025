import { steps as english } from './en/steps.ts';
import { wordsOf } from './language.ts';

export const steps = wordsOf('steps', english);
