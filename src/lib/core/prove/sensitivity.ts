import type { Evidence } from '../survey/evidence-schema.ts';
import type { Amounts } from './amounts.ts';
import type { ComparedLeak, Comparison } from './compare.ts';

/** One thing that may be otherwise, and what would have been avoided then. */
export interface Otherwise {
	readonly what: 'claims-hold' | 'not-reached-tight' | 'largest-smaller' | 'method-smaller';
	/** Of the leak that it is about. */
	readonly tag?: number;
	/** The way of sizing that it is about. */
	readonly evidence?: Evidence['kind'];
	readonly avoided: Comparison['avoided'];
}

/** What the largest proved leak and the leading way of sizing would be multiplied by. Our starting values. */
export const LARGEST_SHARE = 1 / 2;
export const METHOD_SHARE = 2 / 3;

type Size = Pick<Amounts, 'energyKwhPerYear' | 'costMinorPerYear' | 'co2KgPerYear'>;

/**
 * What would change the answer: what was avoided, with one thing at a time seen otherwise. METHOD V10.
 * @returns what applies to these rounds
 */
export function sensitivity(comparison: Comparison): Otherwise[] {
	const { terms, counts, avoided, leaks } = comparison;
	const cases: Otherwise[] = [];
	if (counts.claimed > 0)
		cases.push({ what: 'claims-hold', avoided: plus(avoided, terms.claimed, 1) });
	if (counts['not-reached'] > 0)
		cases.push({ what: 'not-reached-tight', avoided: plus(avoided, terms.notReached, 1) });
	const largest = leaks
		.filter(({ fate }) => fate === 'held')
		.reduce<ComparedLeak | undefined>(
			(most, leak) => (sizeOf(leak.before) > sizeOf(most?.before) ? leak : most),
			undefined
		);
	if (largest?.before)
		cases.push({
			what: 'largest-smaller',
			tag: largest.tag,
			avoided: plus(avoided, largest.before, LARGEST_SHARE - 1)
		});
	const leading = leadingMethod(comparison);
	if (leading) {
		const parts = methodParts(comparison, leading);
		cases.push({
			what: 'method-smaller',
			evidence: leading,
			avoided: parts.reduce(
				(sum, { side, size }) => plus(sum, size, (METHOD_SHARE - 1) * (side === 'before' ? 1 : -1)),
				avoided
			)
		});
	}
	return cases;
}

/** Money where it is known, else energy, else air. */
function sizeOf(amounts: Amounts | undefined): number {
	return amounts?.costMinorPerYear ?? amounts?.energyKwhPerYear ?? amounts?.massFlowKgPerS ?? 0;
}

function plus(to: Size, size: Size, times: number): Size {
	const sum = (key: keyof Size) => {
		const [a, b] = [to[key], size[key]];
		return a === undefined || b === undefined ? undefined : a + b * times;
	};
	const [energy, cost, carbon] = [
		sum('energyKwhPerYear'),
		sum('costMinorPerYear'),
		sum('co2KgPerYear')
	];
	return {
		...(energy !== undefined && { energyKwhPerYear: energy }),
		...(cost !== undefined && { costMinorPerYear: cost }),
		...(carbon !== undefined && { co2KgPerYear: carbon })
	};
}

interface Part {
	readonly kind: Evidence['kind'];
	readonly side: 'before' | 'after';
	readonly size: Amounts;
}

/** Each side of each leak with the way it was sized. */
function* partsOf({ paired, leaks }: Comparison): Generator<Part> {
	for (const [i, leak] of leaks.entries())
		for (const side of ['before', 'after'] as const) {
			const kind = paired.pairs[i]?.[side]?.sighting.evidence?.kind;
			const size = leak[side];
			if (kind && size) yield { kind, side, size };
		}
}

function methodParts(comparison: Comparison, kind: Evidence['kind']): Part[] {
	return [...partsOf(comparison)].filter((part) => part.kind === kind);
}

/** The way of sizing that most of what was avoided rests on. */
function leadingMethod(comparison: Comparison): Evidence['kind'] | undefined {
	const shares = new Map<Evidence['kind'], number>();
	for (const { kind, side, size } of partsOf(comparison))
		shares.set(kind, (shares.get(kind) ?? 0) + sizeOf(size) * (side === 'before' ? 1 : -1));
	let leading: Evidence['kind'] | undefined;
	let most = 0;
	for (const [kind, share] of shares)
		if (share > most) {
			most = share;
			leading = kind;
		}
	return leading;
}
