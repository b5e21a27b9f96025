import { currentLanguage, readerLanguage, speak, type Language } from '#lib/words/language.ts';

const KEY = 'airtally-language';

/** Speaks the reader's language, before the first page is drawn. */
export async function settleLanguage(): Promise<void> {
	const { language, locale } = readerLanguage(chosen(), navigator.languages);
	try {
		await speak(language, locale);
	} catch {
		await speak('en'); // Words that could not be loaded: English came with the page.
	}
	document.documentElement.lang = currentLanguage();
}

/** Keeps the choice on this device and draws the page anew in it: everything recorded is on disk. */
export function chooseLanguage(language: Language): void {
	localStorage.setItem(KEY, language);
	location.reload();
}

function chosen(): string | undefined {
	try {
		return localStorage.getItem(KEY) ?? undefined;
	} catch {
		return undefined; // A browser that keeps nothing has no choice to read.
	}
}
