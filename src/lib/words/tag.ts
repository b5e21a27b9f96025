import { tag as english } from './en/tag.ts';
import { wordsOf } from './language.ts';

export const tag = wordsOf('tag', english);
