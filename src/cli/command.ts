import { refuse } from '#lib/core/units/result.ts';
import { complain, type Answer } from './complaint.ts';
import type { Io } from './io.ts';
import { flag, readOptions, type Given, type Option, type Options } from './options.ts';

/** What a command answers; which of the two forms is printed is not its business. */
export interface Outcome {
	readonly text: string;
	readonly json: Readonly<Record<string, unknown>>;
	/** What must be read beside the answer, line by line on standard error. */
	readonly notes: readonly string[];
}

/** A key of the JSON answer and what it means, with its unit. */
export type JsonKey = readonly [path: string, meaning: string];

const COMMON = {
	json: flag('print JSON, for scripts'),
	help: flag('say how this command is used')
};

interface About {
	/** One or two words. */
	readonly name: string;
	readonly summary: string;
	/** A word that is no option, where there is one; `most` where there may be more of them. */
	readonly word?: {
		readonly as: string;
		readonly says: string;
		readonly must: boolean;
		readonly most?: number;
	};
	readonly usage: readonly string[];
	readonly notes?: readonly string[];
	readonly json: readonly JsonKey[];
}

export interface Command extends About {
	readonly options: Readonly<Record<string, Option<unknown>>>;
	readonly answer: (
		args: readonly string[],
		io: Io
	) => Promise<Answer<{ readonly outcome: Outcome; readonly asJson: boolean }>>;
}

/** Ties the description of a command to what it does. */
export function command<S extends Options>(
	about: About & {
		readonly options: S;
		readonly run: (given: Given<S>, io: Io) => Promise<Answer<Outcome>> | Answer<Outcome>;
	}
): Command {
	const { options, run, word } = about;
	const spec = { ...options, ...COMMON };
	return {
		...about,
		options: spec,
		answer: async (args, io) => {
			const given = readOptions(spec, args, word ? (word.most ?? 1) : 0);
			if (!given.ok) return given;
			if (word?.must === true && given.value.words.length === 0)
				return complain(
					refuse('argument-missing', {
						argument: word.as,
						example: about.usage[0] ?? about.name
					}).error
				);
			const outcome = await run(given.value, io);
			if (!outcome.ok) return outcome;
			const { json } = given.value.options as { readonly json: boolean };
			return { ok: true, value: { outcome: outcome.value, asJson: json } };
		}
	};
}
