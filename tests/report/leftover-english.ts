import { german } from '../../src/lib/words/de/index.ts';

type Word = string | ((...values: string[]) => unknown) | { readonly [key: string]: Word };

/** What stands where a sentence takes a value. */
const VALUE = '\u0001';
/** Shorter than this, and in one word, a piece may stand in a name or in both languages. */
const TOO_SHORT = 9;

/** Every sentence of a catalogue, cut where values go into it, the short ones left out. */
function pieces(word: Word): string[] {
	if (typeof word === 'object') return Object.values(word).flatMap(pieces);
	const text = typeof word === 'string' ? word : written(word);
	return text
		.split(VALUE)
		.map((piece) => piece.replaceAll(/\s+/g, ' ').trim())
		.filter((piece) => piece.length >= TOO_SHORT && /\p{L}{2,}.*\p{L}{2,}/u.test(piece));
}

function written(say: (...values: string[]) => unknown): string {
	try {
		return String(say(...Array.from({ length: say.length }, () => VALUE)));
	} catch {
		return ''; // It wants a table and no text: its parts are found by themselves.
	}
}

const ENGLISH = new Set(
	pieces(import.meta.glob('../../src/lib/words/en/*.ts', { eager: true }) as unknown as Word)
);
const GERMAN = pieces(german as unknown as Word).join('\n');

/**
 * Sentences, or pieces of them, of the English catalogue in a text that should be German.
 * @param text what is shown, spaces collapsed
 * @param names what the survey itself says in whatever language it was written in
 */
export function leftoverEnglish(text: string, names = ''): string[] {
	return [...ENGLISH].filter(
		(piece) => text.includes(piece) && !GERMAN.includes(piece) && !names.includes(piece)
	);
}
