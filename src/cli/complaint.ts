import type { Refusal, Result } from '#lib/core/units/result.ts';
import { refusalSentence } from '#lib/words/refusals.ts';

/** Why a command does not answer, and which of its words was the reason. */
export interface Complaint {
	readonly refusal: Refusal;
	/** The option or argument, as it was typed: `--pressure "100"`. */
	readonly about?: string;
}

export type Answer<T> = Result<T, Complaint>;

/** Turns a refusal into a complaint about an option, quoting what was typed. */
export function complain(refusal: Refusal, about?: string): { ok: false; error: Complaint } {
	return { ok: false, error: about === undefined ? { refusal } : { refusal, about } };
}

/** As it stands behind the program's name: one sentence on one line. */
export function complaintLine({ refusal, about }: Complaint): string {
	const sentence = oneSentence(refusalSentence(refusal));
	return about === undefined ? sentence : `${about}: ${sentence}`;
}

/** Joins what is wrong and what to do next; what stands in quotes is left as it is. */
function oneSentence(text: string): string {
	return text.replace(
		/“[^”]*”|\. ([A-Z])(?=[a-z]* )/gu,
		(found: string, letter: string | undefined) =>
			letter === undefined ? found : `; ${letter.toLowerCase()}`
	);
}
