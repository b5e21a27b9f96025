import { files as english } from './en/files.ts';
import { wordsOf } from './language.ts';

export const files = wordsOf('files', english);
