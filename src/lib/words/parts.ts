import { leak } from './leak.ts';

/** What leaks, in words. */
export const PART_WORDS = leak.parts;

/** What makes the place risky, in words. */
export const HAZARD_WORDS = leak.hazards;
