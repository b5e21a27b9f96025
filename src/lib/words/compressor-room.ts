import { compressorRoom as english } from './en/compressor-room.ts';
import { wordsOf } from './language.ts';

export const compressorRoom = wordsOf('compressorRoom', english);
