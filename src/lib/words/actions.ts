import { leak } from './leak.ts';
import { sums } from './sums.ts';

/** What is done about a leak, in words. */
export const ACTION_WORDS = leak.actions;

/** Where a leak stands in a round, in words. */
export const STATE_WORDS = leak.states;

/** How flow was turned into power, in words. */
export const METHOD_WORDS = sums.methods;
