import { mending } from './mending.ts';

/** Who does a job, in words. */
export const SKILL_WORDS = mending.skills;

/** Why a leak is in no window, in words. */
export const LEFT_WORDS = mending.left;
