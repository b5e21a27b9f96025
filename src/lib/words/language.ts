import type { Catalogue } from './catalogue.ts';
import { setReaderLocale } from './locale.ts';

/** The languages that Airtally is written in, each by its own name. */
export const LANGUAGES = { en: 'English', de: 'Deutsch' } as const;
export type Language = keyof typeof LANGUAGES;
export const ALL_LANGUAGES = Object.keys(LANGUAGES) as readonly Language[];

/** Languages besides English, loaded when they are asked for. English is loaded with each room. */
const LOADERS: Readonly<Record<Exclude<Language, 'en'>, () => Promise<Catalogue>>> = {
	de: async () => (await import('./de/index.ts')).german
};

/** What a room says: sentences, sentences with values in them, and tables of both. */
interface Words {
	[key: string]: Words | string | ((...values: never[]) => unknown);
}

const english = new Map<keyof Catalogue, object>();
const spoken = new Map<keyof Catalogue, object>();
let language: Language = 'en';
let translated: Catalogue | undefined;

/**
 * The words of a room, always in the language that is spoken: when that changes, the same object holds
 * the other words. Read a word where it is shown; one that is kept elsewhere stays as it was.
 * @param room its name in the catalogue
 * @param words its English, which the other languages have to match
 */
export function wordsOf<Room extends keyof Catalogue>(
	room: Room,
	words: Catalogue[Room]
): Catalogue[Room] {
	const live = {} as Catalogue[Room];
	pour(words, live);
	english.set(room, words);
	spoken.set(room, live);
	if (translated) pour(translated[room], live);
	return live;
}

/**
 * Changes the language of every room, once its words are there.
 * @param locale how numbers and dates are written; the machine's own way when absent
 */
export async function speak(wanted: Language, locale?: string): Promise<void> {
	translated = wanted === 'en' ? undefined : await LOADERS[wanted]();
	language = wanted;
	setReaderLocale(locale);
	for (const [room, live] of spoken) pour(translated?.[room] ?? english.get(room) ?? {}, live);
}

/** The language that is spoken. */
export function currentLanguage(): Language {
	return language;
}

/**
 * The language and the locale for a reader.
 * @param chosen what the reader chose on this device
 * @param wanted what the browser is set to, the most wanted first, BCP 47
 */
export function readerLanguage(
	chosen: string | undefined,
	wanted: readonly string[]
): { readonly language: Language; readonly locale: string | undefined } {
	const offered = (tag: string) => ALL_LANGUAGES.find((one) => one === tag.split('-')[0]);
	const own = chosen === undefined ? undefined : offered(chosen);
	const picked = own ?? wanted.map(offered).find((one) => one !== undefined) ?? 'en';
	const locale = wanted.find((tag) => offered(tag) === picked) ?? own;
	return { language: picked, locale };
}

function pour(from: object, into: object): void {
	const source = from as Words;
	const target = into as Words;
	for (const [key, word] of Object.entries(source)) {
		if (typeof word !== 'object') target[key] = word;
		else pour(word, (target[key] ??= Array.isArray(word) ? ([] as unknown as Words) : {}) as Words);
	}
}
