let spoken: string | undefined;

/** How numbers, dates and names of currencies are written, BCP 47; the machine's own when absent. */
export function readerLocale(): string | undefined {
	return spoken;
}

/** Only `speak` in language.ts calls this: language and locale change together. */
export function setReaderLocale(locale: string | undefined): void {
	spoken = locale;
}
