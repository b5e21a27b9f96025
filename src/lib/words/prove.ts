import { proof } from './proof.ts';

/** What became of a leak between two rounds, in words. */
export const FATE_WORDS = proof.fates;

/** The conditions that both rounds are put under, in words. */
export const ROUTINE_WORDS = proof.routines;

/** Whether what was found by walking and what the system shows belong together. */
export const AGREEMENT_WORDS = proof.agreements;

/** The steps of the bridge, in words. */
export const BRIDGE_WORDS = proof.bridge;
