import { sources as english } from './en/sources.ts';
import { wordsOf } from './language.ts';
import { readerLocale } from './locale.ts';

const sources = wordsOf('sources', english);

/** Finds a sentence that the core fills two numbers into. */
const patternOf = (sentence: (first: string, second: string) => string) =>
	new RegExp(
		sentence('FIRST', 'SECOND')
			.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
			.replace(/FIRST|SECOND/g, '([\\d.]+)')
	);
const BAND = patternOf(english.band);
const MACHINE = patternOf(english.machine);

type Passage = keyof typeof english.passages;
/** The longest first: a short one may stand within it. */
const PASSAGES = (Object.keys(english.passages) as Passage[]).sort(
	(a, b) => english.passages[b].length - english.passages[a].length
);

/**
 * Where a value comes from, in the reader's language: passages that the core has are put into it, what a
 * user entered stays as it is.
 * @param source as the core cites it, or as it was stored in a survey in English
 */
export function sourceWords(source: string): string {
	let text = source;
	for (const passage of PASSAGES)
		text = text.replaceAll(english.passages[passage], () => sources.passages[passage]);
	const number = new Intl.NumberFormat(readerLocale(), { maximumFractionDigits: 6 });
	const said =
		(say: (first: string, second: string) => string) =>
		(_: string, ...found: string[]) =>
			say(number.format(Number(found[0])), number.format(Number(found[1])));
	return text.replace(BAND, said(sources.band)).replace(MACHINE, said(sources.machine));
}
