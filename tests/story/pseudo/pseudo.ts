/**
 * A language that nobody speaks: English with an accent on every letter, some 40 % longer, in brackets.
 * What is shown without accents did not come from the catalogue; what sticks out has no room for
 * a language that needs more of it.
 */
const PLAIN = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ';
const ACCENTED = 'áƀçđéƒĝĥíĵķľɱñóþɋŕšťúṽŵẋýžÁƁÇĐÉƑĜĤÍĴĶĽṀÑÓÞɊŔŠŤÚṼŴẊÝŽ';
const LONGER = 0.4;

/** One text in it. Given values are kept as they are: they are data, or in that language already. */
export function pseudoText(text: string, given: readonly string[] = []): string {
	if (!/\p{L}/u.test(text)) return text;
	const kept = given.filter((value) => value !== '' && !isCode(value)).map(escaped);
	const pieces = kept.length === 0 ? [text] : text.split(new RegExp(`(${kept.join('|')})`, 'u'));
	return `⟦${pieces.map((piece, at) => (at % 2 === 1 ? piece : accented(piece))).join('')}⟧`;
}

/** All of a catalogue in it: texts, functions that make texts, and tables of both. */
export function pseudoWords(words: unknown): unknown {
	if (typeof words === 'string') return pseudoText(words);
	if (typeof words === 'function') {
		const speak = words as (...values: unknown[]) => unknown;
		return (...values: unknown[]) => {
			const said = speak(...values);
			return typeof said === 'string' ? pseudoText(said, textsIn(values)) : said;
		};
	}
	if (Array.isArray(words)) return words.map(pseudoWords);
	if (typeof words !== 'object' || words === null) return words;
	return Object.fromEntries(Object.entries(words).map(([key, word]) => [key, pseudoWords(word)]));
}

function accented(piece: string): string {
	// What stands in braces is filled in later.
	return piece.replace(/\{\w+\}|[A-Za-z]+/g, (word) => {
		if (word.startsWith('{')) return word;
		const letters = [...word].map((letter) => ACCENTED[PLAIN.indexOf(letter)] ?? letter).join('');
		return letters + 'ó'.repeat(Math.ceil(word.length * LONGER));
	});
}

/** What only chooses among words, such as `cost`, is never shown itself. */
function isCode(value: string): boolean {
	return /^[a-z]+(-[a-z]+)*$/.test(value);
}

function textsIn(value: unknown): string[] {
	if (typeof value === 'string') return [value];
	if (typeof value !== 'object' || value === null) return [];
	return Object.values(value)
		.flatMap(textsIn)
		.sort((one, other) => other.length - one.length);
}

function escaped(text: string): string {
	return text.replace(/[.*+?^${}()|[\]\\]/gu, '\\$&');
}
