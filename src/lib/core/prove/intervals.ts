import { ok, type Result } from '../units/result.ts';
import { leakErrors, KINDS } from '../weigh/uncertainty/leak-errors.ts';
import { randomFrom } from '../weigh/uncertainty/random.ts';
import { readySharedErrors, type SharedErrors } from '../weigh/uncertainty/shared-errors.ts';
import { scaled, spreadOfSorted, type Spread } from '../weigh/uncertainty/spread.ts';
import type { WeighedLeak } from '../weigh/weigh-leak.ts';
import { siteConditions } from '../weigh/site-conditions.ts';
import { bundled, type BundledLeaks, type Loadings, type Sides } from './bundles.ts';
import { bridgeTerms, emptySums, FATES, TERMS, type FateSums, type Term } from './bridge.ts';
import type { Comparison } from './compare.ts';
import { surveyIn } from './conditions.ts';
import type { Survey } from '../survey/schema.ts';

/** 90 % intervals of one term. What is not known is absent. */
export interface TermSpread {
	readonly massFlowKgPerS: Spread;
	readonly energyKwhPerYear?: Spread;
	readonly costMinorPerYear?: Spread;
	readonly co2KgPerYear?: Spread;
}

export interface ComparisonSpread {
	readonly draws: number;
	readonly terms: Readonly<Record<Term, TermSpread>>;
	/** Draw by draw, for comparing with system tests: flow avoided, kg/s. */
	readonly avoidedFlow: Float64Array;
}

export interface SpreadOptions {
	readonly seed?: number;
	readonly draws?: number;
	readonly shared?: SharedErrors;
	/** So many leaks are still drawn each by itself. */
	readonly singlyUpTo?: number;
}

/** Above so many leaks fewer draws do: independent errors average out. */
const MANY = 1000;
const DRAWS = { few: 4000, many: 1000 } as const;
const GAUGE = KINDS.length;
const SHARED = GAUGE + 1;
const QUANTITIES = ['massFlow', 'energyKwh', 'costMinor'] as const;

/**
 * The 90 % interval of every term, drawn with the errors of both rounds together: a method's and the
 * gauge's error is the same in both, a reading that stands for both rounds has one error, and two
 * readings of one leak have an error each. So what is shared cancels in a difference. METHOD V6.
 *
 * @returns the spreads, or the refusals of the shared errors and of the pressure range
 */
export function comparisonSpread(
	survey: Survey,
	comparison: Comparison,
	{ seed = 1, draws, shared = {}, singlyUpTo = MANY }: SpreadOptions = {}
): Result<ComparisonSpread> {
	const errors = readySharedErrors(shared);
	if (!errors.ok) return errors;
	const air = siteConditions(surveyIn(survey, comparison.after).site);
	if (!air.ok) return air;
	const { pairs } = comparison.paired;
	const loadingsOf = (
		side: (pair: (typeof pairs)[number]) => WeighedLeak | undefined
	): Result<Loadings> => {
		const n = pairs.length;
		const made = {
			kind: new Uint8Array(n),
			own: new Float64Array(n),
			method: new Float64Array(n),
			gauge: new Float64Array(n)
		};
		for (const [i, pair] of pairs.entries()) {
			const leak = side(pair);
			if (!leak) continue;
			const error = leakErrors(leak, errors.value, air.value);
			if (!error.ok) return error;
			made.kind[i] = error.value.kind;
			made.own[i] = error.value.own;
			made.method[i] = error.value.method;
			made.gauge[i] = error.value.gauge;
		}
		return ok(made);
	};
	const before = loadingsOf((pair) => pair.before);
	if (!before.ok) return before;
	const after = loadingsOf((pair) => pair.after);
	if (!after.ok) return after;
	const usual = pairs.length > MANY ? DRAWS.many : DRAWS.few;
	return ok(
		draw(comparison, before.value, after.value, { seed, draws: draws ?? usual, singlyUpTo })
	);
}

function draw(
	{ paired: { pairs }, worth }: Comparison,
	before: Loadings,
	after: Loadings,
	{ seed, draws, singlyUpTo }: Required<Omit<SpreadOptions, 'shared'>>
): ComparisonSpread {
	const n = pairs.length;
	const sides: Sides = {
		fate: Uint8Array.from(pairs, ({ fate }) => FATES.indexOf(fate)),
		same: Uint8Array.from(pairs, ({ sameReading }) => (sameReading ? 1 : 0)),
		was: QUANTITIES.map((quantity) => worth.before[quantity]),
		is: QUANTITIES.map((quantity) => worth.after[quantity]),
		before,
		after
	};
	const { singles, bundles } =
		n > singlyUpTo ? bundled(sides) : { singles: Array.from(sides.fate.keys()), bundles: [] };
	const random = randomFrom(seed);
	const normals = new Float64Array(SHARED + 2 * singles.length + bundles.length);
	const sums = new Float64Array(QUANTITIES.length * FATES.length * 2);
	const drawn = QUANTITIES.map(() => TERMS.map(() => new Float64Array(draws)));

	const fateSums = emptySums();
	for (let d = 0; d < draws; d++) {
		random.fillNormals(normals, normals.length);
		sums.fill(0);
		addSingles(sums, singles, sides, normals);
		addBundles(sums, bundles, normals, SHARED + 2 * singles.length);
		for (let q = 0; q < QUANTITIES.length; q++) {
			takeSums(sums, q, fateSums);
			const terms = bridgeTerms(fateSums);
			for (const [t, term] of TERMS.entries()) drawn[q]![t]![d] = terms[term];
		}
	}
	const spread = (q: number, t: number): Spread => spreadOfSorted(drawn[q]![t]!.slice().sort());
	const { energyKnown, costKnown, kgCo2PerKwh } = worth;
	return {
		draws,
		terms: Object.fromEntries(
			TERMS.map((term, t): [Term, TermSpread] => {
				const energy = spread(1, t);
				return [
					term,
					{
						massFlowKgPerS: spread(0, t),
						...(energyKnown && { energyKwhPerYear: energy }),
						...(costKnown && { costMinorPerYear: spread(2, t) }),
						...(energyKnown &&
							kgCo2PerKwh !== undefined && { co2KgPerYear: scaled(energy, kgCo2PerKwh) })
					}
				];
			})
		) as Record<Term, TermSpread>,
		avoidedFlow: drawn[0]![TERMS.indexOf('avoided')]!
	};
}

/** Leaks that are drawn each by itself, by quantity and fate, before and after. */
function addSingles(
	sums: Float64Array,
	singles: BundledLeaks['singles'],
	{ fate, same, was, is, before, after }: Sides,
	normals: Float64Array
): void {
	const factor = (of: Loadings, i: number, own: number): number =>
		Math.exp(
			of.own[i]! * own + of.method[i]! * normals[of.kind[i]!]! + of.gauge[i]! * normals[GAUGE]!
		);
	for (let k = 0; k < singles.length; k++) {
		const i = singles[k]!;
		const left = was[0]![i]! > 0 ? factor(before, i, normals[SHARED + k]!) : 0;
		const right =
			is[0]![i]! > 0
				? same[i]
					? left
					: factor(after, i, normals[SHARED + singles.length + k]!)
				: 0;
		for (let q = 0; q < QUANTITIES.length; q++) {
			const place = (q * FATES.length + fate[i]!) * 2;
			sums[place]! += was[q]![i]! * left;
			sums[place + 1]! += is[q]![i]! * right;
		}
	}
}

/** Leaks whose own errors are drawn together; a sum that comes out below zero is nothing. */
function addBundles(
	sums: Float64Array,
	bundles: BundledLeaks['bundles'],
	normals: Float64Array,
	first: number
): void {
	for (let b = 0; b < bundles.length; b++) {
		const { fate, kind, method, gauge, mean, deviation } = bundles[b]!;
		const own = normals[first + b]!;
		const shared = Math.exp(method * normals[kind]! + gauge * normals[GAUGE]!);
		for (let q = 0; q < QUANTITIES.length; q++)
			for (let side = 0; side < 2; side++) {
				const sum = mean[2 * q + side]! + deviation[2 * q + side]! * own;
				sums[(q * FATES.length + fate) * 2 + side]! += shared * Math.max(0, sum);
			}
	}
}

function takeSums(sums: Float64Array, quantity: number, into: FateSums): void {
	const first = quantity * FATES.length * 2;
	for (const [f, fate] of FATES.entries()) {
		into[fate].before = sums[first + 2 * f]!;
		into[fate].after = sums[first + 2 * f + 1]!;
	}
}
