import { photos as english } from './en/photos.ts';
import { wordsOf } from './language.ts';

export const photos = wordsOf('photos', english);
