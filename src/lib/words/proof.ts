import { proof as english } from './en/proof.ts';
import { wordsOf } from './language.ts';

export const proof = wordsOf('proof', english);
