import type { EvidenceKind } from '../../survey/evidence-schema.ts';
import { ok, refuse, type Result } from '../../units/result.ts';

/** An error that all readings of one kind share, so that it does not average out. */
export interface SharedError {
	/** Standard deviation of the logarithm; for small values the relative standard uncertainty. */
	readonly spread: number;
	/** Why it is that much. */
	readonly reason: string;
}

/**
 * Shared error of each kind of evidence, beside the error of each reading (METHOD A8 to A12).
 * @source our starting value, every one; METHOD W6
 */
export const STARTING_METHOD_ERRORS: Readonly<Record<EvidenceKind, SharedError>> = {
	hole: {
		spread: 0.2,
		reason: 'our starting value: one eye judges every diameter, some 10 % too wide or too narrow'
	},
	slit: {
		spread: 0.2,
		reason: 'our starting value: one eye judges every width, some 20 % too wide or too narrow'
	},
	'thread-gap': {
		spread: 0.25,
		reason: 'our starting value: gaps are guessed, and no thread is open all the way round'
	},
	'bubble-growth': {
		spread: 0.2,
		reason: 'our starting value: one eye judges every bubble, some 7 % of its diameter'
	},
	'soap-response': {
		spread: 0.35,
		reason:
			'our starting value: no published source ties a film’s looks to a flow, so the whole scale may be off by a third'
	},
	bag: {
		spread: 0.08,
		reason: 'our starting value: the same bag and the same mark for every leak'
	},
	meter: { spread: 0.03, reason: 'our starting value: the calibration of one meter' },
	catalogue: {
		spread: 0.05,
		reason: 'our starting value: parts in use differ from new ones the same way'
	}
};

/**
 * Standard uncertainty of the pressure gauge that all readings come from, bar.
 * @source our starting value: a plain gauge of class 2.5 over 10 bar, ±0.25 bar, anything between as
 * likely (JCGM 100, 4.3.7); METHOD W6
 */
export const STARTING_GAUGE_BAR = 0.15;

/** The errors that leaks share. What is left out keeps its starting value, or is not counted. */
export interface SharedErrors {
	readonly methods?: Partial<Readonly<Record<EvidenceKind, number>>>;
	readonly gaugeBar?: number;
	/** Relative standard uncertainty of what making the air takes; not counted when left out. */
	readonly power?: number;
	/** Of the hours under pressure; not counted when left out. */
	readonly hours?: number;
	/** Of the price of energy; not counted when left out. */
	readonly price?: number;
}

export interface ReadySharedErrors {
	readonly methods: Readonly<Record<EvidenceKind, number>>;
	readonly gaugeBar: number;
	readonly power: number;
	readonly hours: number;
	readonly price: number;
}

/** Fills in the starting values, or refuses a spread below zero as `shared-error-out-of-range`. */
export function readySharedErrors(errors: SharedErrors): Result<ReadySharedErrors> {
	const starting = Object.fromEntries(
		Object.entries(STARTING_METHOD_ERRORS).map(([kind, { spread }]) => [kind, spread])
	) as Record<EvidenceKind, number>;
	const ready: ReadySharedErrors = {
		methods: { ...starting, ...errors.methods },
		gaugeBar: errors.gaugeBar ?? STARTING_GAUGE_BAR,
		power: errors.power ?? 0,
		hours: errors.hours ?? 0,
		price: errors.price ?? 0
	};
	const { methods, ...others } = ready;
	for (const [of, spread] of [...Object.entries(methods), ...Object.entries(others)])
		if (!(spread >= 0 && spread <= MOST))
			return refuse('shared-error-out-of-range', {
				of,
				spread: String(spread),
				least: 0,
				most: MOST
			});
	return ok(ready);
}

/** As the survey's limit for a reading's own uncertainty. */
const MOST = 5;
