import type { Result } from './result.ts';
import { ok, refuse } from './result.ts';

export type DecimalMark = ',' | '.';

const VULGAR_FRACTION = /[¼½¾⅐-⅞↉]/gu;
const MINUS_SIGN = /[−–]/gu;
/** Every kind of space that a keyboard, a spreadsheet or a web page puts between digits. */
const SPACES = /[\s\u00a0\u2007\u2009\u200a\u202f]+/gu;
/** Marks of direction, which some languages put before a minus sign. */
const DIRECTION_MARKS = /[\u061c\u200e\u200f]/gu;

/** Makes minus signs, spaces and one-character fractions plain; digits are left alone. */
export function plainNumberText(text: string): string {
	return text
		.replace(DIRECTION_MARKS, '')
		.replace(VULGAR_FRACTION, (fraction) => ` ${fraction.normalize('NFKC').replace('⁄', '/')}`)
		.replace(MINUS_SIGN, '-')
		.replace(SPACES, ' ')
		.trim();
}

function unreadable(text: string): ReturnType<typeof refuse> {
	return refuse('number-unreadable', { text });
}

const FRACTION = /^(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)$/u;

function readFraction(text: string, original: string): Result<number> | undefined {
	const match = FRACTION.exec(text);
	if (match === null) return undefined;
	const [, whole, top, bottom] = match;
	const numerator = Number(top);
	const denominator = Number(bottom);
	if (denominator === 0 || (whole !== undefined && numerator >= denominator)) {
		return unreadable(original);
	}
	return ok(Number(whole ?? 0) + numerator / denominator);
}

const SPACE_OR_APOSTROPHE_GROUPS = /^\d{1,3}(?:[ '’]\d{3})+(?=$|[.,])/u;
const EXPONENT = /[eE][+-]?\d+$/u;

/** The digits before a separator that could be a thousands group: "1" to "999", no leading zero. */
const COULD_BE_GROUP = /^[1-9]\d{0,2}$/u;

/** The mantissa with a dot for its decimal mark and no grouping, or a refusal. */
function plainMantissa(text: string, decimal: DecimalMark, original: string): Result<string> {
	const spaced = SPACE_OR_APOSTROPHE_GROUPS.exec(text)?.[0];
	const joined =
		spaced === undefined ? text : spaced.replace(/[ '’]/gu, '') + text.slice(spaced.length);
	if (!/^[\d.,]+$/u.test(joined)) return unreadable(original);

	const marks = joined.replace(/\d/gu, '');
	if (marks === '') return ok(joined);
	const last = marks.at(-1) ?? '';
	const parts = joined.split(/[.,]/u);
	const before = parts.slice(0, -1);
	const after = parts.at(-1) ?? '';
	if (after === '') return unreadable(original);

	if (marks.length === 1) {
		const head = before[0] ?? '';
		const twoReadings =
			spaced === undefined && last !== decimal && after.length === 3 && COULD_BE_GROUP.test(head);
		if (!twoReadings) return ok(`${head === '' ? '0' : head}.${after}`);
		return refuse('number-ambiguous', {
			text: original,
			readAs: Number(`${head}.${after}`),
			orAs: Number(head + after)
		});
	}

	// Several marks: all but perhaps the last must be the same and cut off groups of three.
	const grouping = marks[0] ?? '';
	const groups =
		/^[1-9]\d{0,2}$/u.test(before[0] ?? '') && before.slice(1).every((g) => g.length === 3);
	const sameMarks = [...marks.slice(0, -1)].every((mark) => mark === grouping);
	if (spaced !== undefined || !groups || !sameMarks)
		return refuse('number-ambiguous', { text: original });
	if (last !== grouping) return ok(`${before.join('')}.${after}`);
	if (after.length === 3) return ok(parts.join(''));
	return refuse('number-ambiguous', { text: original });
}

/**
 * Reads a number as people write it: decimal comma or dot, grouped thousands, fractions ("1 1/2",
 * "½"), exponents. What could be read two ways is refused, never guessed.
 * @param text what was typed
 * @param options `decimal` is the mark the reader expects; the other one is understood where it
 * can only be a decimal mark
 * @returns the number, or `number-unreadable`, `number-ambiguous` (detail `readAs`, `orAs`) or
 * `number-out-of-range`
 */
export function parseNumber(
	text: string,
	options: { readonly decimal: DecimalMark }
): Result<number> {
	const plain = plainNumberText(text);
	const sign = plain.startsWith('-') ? -1 : 1;
	const magnitude = plain.replace(/^[+-] ?/u, '');
	const fraction = readFraction(magnitude, text);
	if (fraction !== undefined) {
		return fraction.ok ? ok(sign * fraction.value) : fraction;
	}

	const exponent = EXPONENT.exec(magnitude)?.[0] ?? '';
	const mantissaText = magnitude.slice(0, magnitude.length - exponent.length);
	const mantissa = plainMantissa(mantissaText, options.decimal, text);
	if (!mantissa.ok) return mantissa;
	const value = Number(mantissa.value + exponent);
	const vanished = value === 0 && /[1-9]/u.test(mantissa.value);
	if (!Number.isFinite(value) || vanished) return refuse('number-out-of-range', { text });
	return ok(value === 0 ? 0 : sign * value);
}
