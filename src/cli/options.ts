import { parseArgs } from 'node:util';
import { ok, refuse } from '#lib/core/units/result.ts';
import { complain, type Answer } from './complaint.ts';
import { oneLine } from './plain-text.ts';
import type { Read } from './reading.ts';

/** One option: how often it may stand, how its value is read, and what help says of it. */
export interface Option<T> {
	readonly takes: 'nothing' | 'one' | 'many';
	readonly must: boolean;
	/** What its value looks like, in help and in refusals. */
	readonly as: string;
	readonly says: string;
	readonly from: (name: string, texts: readonly string[]) => Answer<T>;
}

export type Options = Readonly<Record<string, Option<unknown>>>;
export type Values<S extends Options> = {
	readonly [K in keyof S]: S[K] extends Option<infer T> ? T : never;
};

export function flag(says: string): Option<boolean> {
	return {
		takes: 'nothing',
		must: false,
		as: '',
		says,
		from: (_, texts) => ok(texts.length > 0)
	};
}

/** An option that may be left out. */
export function may<T>(as: string, says: string, read: Read<T>): Option<T | undefined> {
	return {
		takes: 'one',
		must: false,
		as,
		says,
		from: (name, [text]) => (text === undefined ? ok(undefined) : readOne(name, text, read))
	};
}

/** An option that there is no answer without. */
export function must<T>(as: string, says: string, read: Read<T>): Option<T> {
	return {
		takes: 'one',
		must: true,
		as,
		says,
		from: (name, [text]) =>
			text === undefined ? complain(missing(name, as)) : readOne(name, text, read)
	};
}

/** An option that may stand several times. */
export function many<T>(as: string, says: string, read: Read<T>): Option<readonly T[]> {
	return {
		takes: 'many',
		must: false,
		as,
		says,
		from: (name, texts) => {
			const values: T[] = [];
			for (const text of texts) {
				const value = readOne(name, text, read);
				if (!value.ok) return value;
				values.push(value.value);
			}
			return ok(values);
		}
	};
}

/** What a refusal calls an option that was typed: `--pressure "100"`. */
export function typed(name: string, text: string): string {
	return `--${name} "${oneLine(text).slice(0, 80)}"`;
}

export function missing(name: string, example: string) {
	return refuse('option-missing', { option: `--${name}`, example: `--${name} "${example}"` }).error;
}

function readOne<T>(name: string, text: string, read: Read<T>): Answer<T> {
	const value = read(text);
	return value.ok ? value : complain(value.error, typed(name, text));
}

export interface Given<S extends Options> {
	readonly options: Values<S>;
	/** Words that belong to no option. */
	readonly words: readonly string[];
	/** Options as they were typed, the last of each. */
	readonly written: Readonly<Record<string, string>>;
}

/** Reads a command's arguments; what it does not know, or cannot read, is refused by name. */
export function readOptions<S extends Options>(
	spec: S,
	args: readonly string[],
	mostWords: number
): Answer<Given<S>> {
	const { tokens } = parseArgs({
		args: [...args],
		options: Object.fromEntries(
			Object.entries(spec).map(([name, { takes }]) => [
				name,
				{ type: takes === 'nothing' ? ('boolean' as const) : ('string' as const) }
			])
		),
		strict: false,
		tokens: true
	});
	const found = new Map<string, string[]>();
	const words: string[] = [];
	for (const token of tokens) {
		if (token.kind === 'positional') words.push(token.value);
		if (token.kind !== 'option') continue;
		const { name, rawName, value, inlineValue } = token;
		const option = Object.hasOwn(spec, name) && rawName.startsWith('--') ? spec[name] : undefined;
		if (option === undefined)
			return complain(
				refuse('option-unknown', { option: oneLine(rawName), accepted: namesOf(spec) }).error
			);
		if (option.takes === 'nothing') {
			if (value !== undefined)
				return complain(refuse('option-with-value', { option: rawName, text: value }).error);
		} else if (value === undefined || value.trim() === '' || isOption(value, inlineValue))
			return complain(
				refuse('option-without-value', {
					option: rawName,
					example: `${rawName} "${option.as}"`
				}).error
			);
		const texts = found.get(name) ?? [];
		if (texts.length > 0 && option.takes !== 'many')
			return complain(refuse('option-twice', { option: rawName }).error);
		found.set(name, [...texts, value ?? '']);
	}
	const extra = words[mostWords];
	if (extra !== undefined)
		return complain(refuse('argument-unexpected', { text: oneLine(extra) || ' ' }).error);
	return readValues(spec, found, words);
}

/** A value that begins with a dash is the next option, unless it is a number below zero. */
function isOption(value: string, inline: boolean | undefined): boolean {
	return inline !== true && /^-(?! ?[\d.,])/u.test(value);
}

function readValues<S extends Options>(
	spec: S,
	found: ReadonlyMap<string, readonly string[]>,
	words: readonly string[]
): Answer<Given<S>> {
	const options: Record<string, unknown> = {};
	for (const [name, option] of Object.entries(spec)) {
		const value = option.from(name, found.get(name) ?? []);
		if (!value.ok) return value;
		options[name] = value.value;
	}
	const written = [...found].map(([name, texts]) => [name, texts.at(-1) ?? ''] as const);
	return ok({
		options: options as Values<S>,
		words,
		written: Object.fromEntries(written)
	});
}

function namesOf(spec: Options): string {
	return Object.keys(spec)
		.map((name) => `--${name}`)
		.join(', ');
}
