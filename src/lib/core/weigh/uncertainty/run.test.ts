import { describe, expect, it } from 'vitest';
import {
	draws,
	modelOf,
	normalCdf,
	normalOf,
	resultOf,
	runOf,
	type HandLeak
} from '../../../../../tests/arbitrary/uncertainty-model.ts';
import { randomFrom } from './random.ts';
import { startRun } from './run.ts';
import { lognormalSpread, type Spread } from './spread.ts';

const ENDS = ['low', 'median', 'high'] as const;

/** Four standard errors of a 5 % point of a normal, as a share of its deviation. */
const far = (count: number) => (4 * 2.11) / Math.sqrt(count);

function meets(spread: Spread, exact: Spread, logTolerance: number) {
	for (const end of ENDS)
		expect(Math.abs(Math.log(spread[end] / exact[end])), end).toBeLessThan(logTolerance);
}

describe('[W7] draws against what is exact', () => {
	it('derived: one leak is lognormal', () => {
		const { totals, leaks } = resultOf(
			modelOf([{ massFlow: 2, own: 0.6, method: 0.3, gauge: 0.1 }]),
			draws(40_000)
		);
		const s = Math.hypot(0.6, 0.3, 0.1);
		meets(totals.massFlowKgPerS, lognormalSpread(2, s), far(40_000) * s);
		meets(totals.energyKwhPerYear!, lognormalSpread(200, s), far(40_000) * s);
		meets(totals.costMinorPerYear!, lognormalSpread(2000, s), far(40_000) * s);
		expect(leaks[0]!.costMinorPerYear).toEqual(lognormalSpread(2000, s));
	});

	it.each(['method', 'gauge'] as const)(
		'derived: an error that all share (%s) makes the total as lognormal as one leak',
		(error) => {
			const leaks: HandLeak[] = Array.from({ length: 30 }, (_, i) => ({
				massFlow: 1 + i,
				[error]: 0.35
			}));
			const { totals } = resultOf(modelOf(leaks), draws(40_000));
			meets(totals.massFlowKgPerS, lognormalSpread(465, 0.35), far(40_000) * 0.35);
		}
	);

	it('derived: sums of 2, 4 and 8 alike lognormals, by numeric convolution', () => {
		const s = 0.73;
		for (const [count, exact] of sumsOfLognormals(s, [2, 4, 8])) {
			const leaks = Array.from({ length: count }, () => ({ massFlow: 1, own: s }));
			const { totals } = resultOf(modelOf(leaks), draws(60_000));
			meets(totals.massFlowKgPerS, exact, (far(60_000) * s) / Math.sqrt(count) + 0.001);
			expect(Math.abs(totals.massFlowKgPerS.mean / exact.mean - 1)).toBeLessThan(
				4 * Math.sqrt(Math.expm1(s * s) / count / 60_000)
			);
		}
	});

	it('common practice: Fenton and Wilkinson’s lognormal of the same mean and variance comes near for many leaks', () => {
		const leaks = Array.from({ length: 60 }, (_, i) => ({ massFlow: 1 + (i % 5), own: 0.7 }));
		const { totals } = resultOf(modelOf(leaks), draws(40_000));
		const flows = leaks.map(({ massFlow }) => massFlow);
		const mean = flows.reduce((a, b) => a + b, 0) * Math.exp(0.7 ** 2 / 2);
		const variance =
			flows.reduce((a, b) => a + b * b, 0) * Math.exp(0.7 ** 2) * Math.expm1(0.7 ** 2);
		const s = Math.sqrt(Math.log1p(variance / mean ** 2));
		meets(totals.massFlowKgPerS, lognormalSpread(mean * Math.exp((-s * s) / 2), s), 0.015);
	});

	it('derived: means add up, and lie above the sum of the medians', () => {
		const leaks = Array.from({ length: 25 }, (_, i) => ({ massFlow: 1 + i, own: 0.6 }));
		const { totals, leaks: each } = resultOf(modelOf(leaks), draws(20_000));
		const sum = each.reduce((total, { energyKwhPerYear }) => total + energyKwhPerYear!.mean, 0);
		expect(sum / totals.energyKwhPerYear!.mean).toBeCloseTo(1, 2);
		expect(totals.massFlowKgPerS.mean).toBeGreaterThan(325);
	});

	it('hours, power and price reach what they belong to', () => {
		const only = (errors: Parameters<typeof modelOf>[1]) =>
			resultOf(modelOf([{ massFlow: 1, own: 1e-9 }], errors), draws(20_000)).totals;
		const width = (spread: Spread) => Math.log(spread.high / spread.low) / 2 / 1.645;
		const hours = only({ hours: 0.1 });
		expect(width(hours.freeAirM3PerYear)).toBeCloseTo(0.1, 2);
		expect(width(hours.massFlowKgPerS)).toBeLessThan(1e-6);
		expect(width(hours.costMinorPerYear!)).toBeCloseTo(0.1, 2);
		const power = only({ power: 0.1 });
		expect(width(power.freeAirM3PerYear)).toBeLessThan(1e-6);
		expect(width(power.energyKwhPerYear!)).toBeCloseTo(0.1, 2);
		const price = only({ price: 0.1 });
		expect(width(price.energyKwhPerYear!)).toBeLessThan(1e-6);
		expect(width(price.costMinorPerYear!)).toBeCloseTo(0.1, 2);
		// A leak's own interval widens with them too.
		const { leaks } = resultOf(
			modelOf([{ massFlow: 1, own: 0.3 }], { hours: 0.1, price: 0.2 }),
			draws(200)
		);
		expect(leaks[0]!.costMinorPerYear).toEqual(lognormalSpread(1000, Math.hypot(0.3, 0.1, 0, 0.2)));
	});
});

describe('[W7] how many draws', () => {
	it('stops when both ends are known to a hundredth of the width, and says so', () => {
		const run = runOf(modelOf([{ massFlow: 1, own: 0.3 }]));
		expect(run.settled).toBe(true);
		const { totals } = resultOf(modelOf([{ massFlow: 1, own: 0.3 }]));
		const { low, high, lowError, highError } = totals.massFlowKgPerS;
		expect(Math.max(lowError, highError) / (high - low)).toBeLessThanOrEqual(0.01);
		// Twice as sharp takes some four times the draws.
		const sharper = runOf(modelOf([{ massFlow: 1, own: 0.3 }]), { tolerance: 0.005 });
		expect(sharper.draws / run.draws).toBeGreaterThan(2);
	});

	it('derived: the error that is told is the error that other seeds show', () => {
		const model = modelOf([{ massFlow: 1, own: 0.5 }]);
		const ends: number[] = [];
		let told = 0;
		for (let seed = 1; seed <= 200; seed++) {
			const { totals } = resultOf(model, { ...draws(1000), seed });
			ends.push(totals.massFlowKgPerS.high);
			told += totals.massFlowKgPerS.highError / 200;
		}
		const mean = ends.reduce((a, b) => a + b, 0) / ends.length;
		const seen = Math.sqrt(ends.reduce((a, b) => a + (b - mean) ** 2, 0) / (ends.length - 1));
		expect(told / seen).toBeGreaterThan(0.8);
		expect(told / seen).toBeLessThan(1.25);
	});

	it('gives up at the most draws, and says that it did', () => {
		const run = runOf(modelOf([{ massFlow: 1, own: 1.5 }]), { mostDraws: 3000 });
		expect([run.settled, run.draws, run.progress]).toEqual([false, 3000, 1]);
	});

	it('refuses options that make no sense', () => {
		for (const bad of [{ tolerance: 0 }, { mostDraws: 1e6 }, { topN: 0 }, { leastDraws: NaN }]) {
			const started = startRun(modelOf([]), bad);
			expect(started.ok ? 'started' : started.error.code).toBe('run-option-out-of-range');
		}
	});

	it('a round without leaks is nothing, for certain', () => {
		const { totals, leaks, settled } = resultOf(modelOf([]));
		expect([totals.massFlowKgPerS.high, leaks.length, settled]).toEqual([0, 0, true]);
	});

	it('the same seed gives the same figures, however the run is cut into steps', () => {
		const model = modelOf([
			{ massFlow: 1, own: 0.5, method: 0.2 },
			{ massFlow: 3, own: 0.7, gauge: 0.1 }
		]);
		const one = resultOf(model, { seed: 42 });
		const started = startRun(model, { seed: 42 });
		if (!started.ok) throw new Error(started.error.code);
		while (!started.value.finished) started.value.step(7);
		expect(started.value.drawsOf('massFlow')).toEqual(one.flowDraws.all);
		expect(resultOf(model, { seed: 42 })).toEqual(one);
		expect(resultOf(model, { seed: 43 }).totals).not.toEqual(one.totals);
	});
});

describe('[W6] coverage', () => {
	it('derived: of 400 sites made up from the model, the interval holds the truth in nine of ten', () => {
		const leaks: HandLeak[] = Array.from({ length: 12 }, (_, i) => ({
			massFlow: 0.5 + (i % 4),
			own: 0.5,
			method: 0.25,
			gauge: 0.02,
			kind: i % 2
		}));
		const { totals } = resultOf(modelOf(leaks), draws(20_000));
		const truth = randomFrom(2026);
		let held = 0;
		for (let site = 0; site < 400; site++) {
			const kinds = [normalOf(truth), normalOf(truth)];
			const gauge = normalOf(truth);
			let flow = 0;
			for (const { massFlow, kind = 0 } of leaks)
				flow += massFlow * Math.exp(0.5 * normalOf(truth) + 0.25 * kinds[kind]! + 0.02 * gauge);
			if (flow >= totals.massFlowKgPerS.low && flow <= totals.massFlowKgPerS.high) held++;
		}
		// 360 expected, standard deviation 6.
		expect(Math.abs(held - 360)).toBeLessThan(4 * 6);
	});
});

describe('[W9] ranks', () => {
	it('derived: of two leaks the larger comes first with probability Φ(ln ratio / √(s₁² + s₂²))', () => {
		for (const [a, b] of [
			[1.5, 1],
			[3, 1],
			[1, 1.2]
		] as const) {
			const { leaks } = resultOf(
				modelOf([
					{ massFlow: a, own: 0.4 },
					{ massFlow: b, own: 0.6 }
				]),
				{ ...draws(40_000), topN: 1 }
			);
			const chance = normalCdf(Math.log(a / b) / Math.hypot(0.4, 0.6));
			const error = Math.sqrt((chance * (1 - chance)) / 40_000);
			expect(Math.abs(leaks[0]!.rank.chanceOfTop - chance)).toBeLessThan(4 * error);
		}
	});

	it('derived: divided by minutes, the second comes first with probability Φ(ln(b·m₁/a·m₂) / √(s₁² + s₂²))', () => {
		const ranking = { by: 'perMinute', divisors: { 'leak-1': 60, 'leak-2': 20 } };
		const { leaks, rankedBy } = resultOf(
			modelOf([
				{ massFlow: 2, own: 0.4 },
				{ massFlow: 1, own: 0.6 }
			]),
			{ ...draws(40_000), topN: 1, ranking }
		);
		const chance = normalCdf(Math.log(1.5) / Math.hypot(0.4, 0.6));
		const error = Math.sqrt((chance * (1 - chance)) / 40_000);
		expect(rankedBy).toBe('perMinute');
		expect(Math.abs(leaks[1]!.rank.chanceOfTop - chance)).toBeLessThan(4 * error);
	});

	it('derived: what takes nothing comes before all that takes something, whatever it wastes', () => {
		const ranking = { by: 'payback', divisors: { 'leak-1': 10, 'leak-2': 0 } };
		const { leaks } = resultOf(
			modelOf([
				{ massFlow: 1000, own: 0.4 },
				{ massFlow: 1, own: 0.6 }
			]),
			{ ...draws(500), topN: 1, ranking }
		);
		expect(leaks.map(({ rank }) => rank.chanceOfTop)).toEqual([0, 1]);
	});

	it('derived: what two leaks share does not move their order; what they do not share does', () => {
		const pair = (kinds: readonly [number, number]) =>
			resultOf(
				modelOf([
					{ massFlow: 1.5, own: 0.3, method: 0.5, kind: kinds[0] },
					{ massFlow: 1, own: 0.3, method: 0.5, kind: kinds[1] }
				]),
				{ ...draws(40_000), topN: 1 }
			).leaks[0]!.rank.chanceOfTop;
		const alike = normalCdf(Math.log(1.5) / Math.hypot(0.3, 0.3));
		const apart = normalCdf(Math.log(1.5) / Math.hypot(0.3, 0.3, 0.5, 0.5));
		expect(Math.abs(pair([0, 0]) - alike)).toBeLessThan(0.01);
		expect(Math.abs(pair([0, 1]) - apart)).toBeLessThan(0.01);
	});

	it('derived: with shared errors alone the order and the shares are certain', () => {
		const run = runOf(
			modelOf([3, 2, 1].map((massFlow) => ({ massFlow, method: 0.5 }))),
			draws(500)
		);
		for (const leak of [0, 1, 2])
			expect(run.ranks.spreadOf(leak)).toMatchObject({ low: leak + 1, high: leak + 1 });
		const flow = run.drawsOf('massFlow');
		const energy = run.drawsOf('energyKwh');
		for (let i = 0; i < 500; i++) expect(energy[i]! / flow[i]!).toBeCloseTo(100, 9);
	});
});

/** Exact spreads of sums of alike lognormals of median 1: masses on a grid, convolved by doubling. */
function sumsOfLognormals(s: number, counts: readonly number[]): [number, Spread][] {
	const step = 0.01;
	let size = 1400;
	const cdf = (x: number) => (x <= 0 ? 0 : normalCdf(Math.log(x) / s));
	let mass = Float64Array.from(
		{ length: size },
		(_, i) => cdf((i + 0.5) * step) - cdf((i - 0.5) * step)
	);
	const found: [number, Spread][] = [];
	for (let count = 2; count <= Math.max(...counts); count *= 2) {
		const sum = new Float64Array(2 * size);
		for (let i = 0; i < size; i++)
			for (let j = 0; j < size; j++) sum[i + j]! += mass[i]! * mass[j]!;
		mass = sum;
		size *= 2;
		const at = (share: number) => {
			let below = 0;
			for (let i = 0; i < size; i++) {
				if (below + mass[i]! >= share) return (i - 0.5 + (share - below) / mass[i]!) * step;
				below += mass[i]!;
			}
			return NaN;
		};
		if (counts.includes(count))
			found.push([
				count,
				{ low: at(0.05), median: at(0.5), high: at(0.95), mean: count * Math.exp((s * s) / 2) }
			]);
	}
	return found;
}
