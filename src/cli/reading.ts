import type { ReferenceId } from '#lib/core/air/reference-air.ts';
import type { Dimension, SiOf } from '#lib/core/units/convert.ts';
import { parseNumber } from '#lib/core/units/parse-number.ts';
import { parseQuantity } from '#lib/core/units/parse.ts';
import { ok, refuse, type Result } from '#lib/core/units/result.ts';

/** Reads the value of an option from what was typed. */
export type Read<T> = (text: string) => Result<T>;

/** A number with its unit, in SI. */
export function quantity<D extends Dimension>(dimension: D): Read<SiOf<D>> {
	return (text) => parseQuantity(text, dimension);
}

/** A number without a unit. */
export const number: Read<number> = (text) => parseNumber(text, { decimal: '.' });

/** A share of a whole: "25 %" or "0.25". */
export const share: Read<number> = (text) => {
	const percent = /^(.*\S)\s*%$/u.exec(text.trim())?.[1];
	const read = number(percent ?? text);
	if (!read.ok) return refuse('share-unreadable', { text });
	const value = percent === undefined ? read.value : read.value / 100;
	return value >= 0 && value <= 1 ? ok(value) : refuse('share-unreadable', { text });
};

/** Seconds, as a plain number or with a unit of time. */
export const seconds: Read<SiOf<'time'>> = (text) =>
	parseQuantity(/[a-z]/iu.test(text) ? text : `${text} s`, 'time');

/** One of a few words. */
export function choice<const C extends string>(choices: readonly C[]): Read<C> {
	return (text) => {
		const found = choices.find((each) => each === text.trim().toLowerCase());
		if (found !== undefined) return ok(found);
		return refuse('choice-unknown', { text, accepted: choices.join(', ') });
	};
}

export const words: Read<string> = (text) => ok(text);

/** Values joined by a mark, each read by its own reader, as "60 s/240 s". */
export function joined<T>(
	mark: string,
	counts: readonly number[],
	example: string,
	read: Read<T>
): Read<readonly T[]> {
	return (text) => {
		const parts = text.split(mark);
		if (!counts.includes(parts.length)) return refuse('pair-unreadable', { text, example });
		const values: T[] = [];
		for (const part of parts) {
			const value = read(part);
			if (!value.ok) return value;
			values.push(value.value);
		}
		return ok(values);
	};
}

export const REFERENCE_CHOICES = [
	'iso-1217',
	'anr',
	'normal',
	'site'
] as const satisfies readonly ReferenceId[];
