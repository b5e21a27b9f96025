import { systemCheck as english } from './en/system-check.ts';
import { wordsOf } from './language.ts';

export const systemCheck = wordsOf('systemCheck', english);
