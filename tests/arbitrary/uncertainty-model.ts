import type { UncertaintyModel } from '#lib/core/weigh/uncertainty/model.ts';
import type { Random } from '#lib/core/weigh/uncertainty/random.ts';
import { uncertaintyResult, type UncertaintyResult } from '#lib/core/weigh/uncertainty/result.ts';
import { startRun, type RunOptions, type UncertaintyRun } from '#lib/core/weigh/uncertainty/run.ts';
import { readySharedErrors } from '#lib/core/weigh/uncertainty/shared-errors.ts';

/** One leak of a model made by hand; what is left out is zero. */
export interface HandLeak {
	readonly massFlow: number;
	readonly own?: number;
	readonly method?: number;
	readonly gauge?: number;
	/** Place among the kinds of evidence. */
	readonly kind?: number;
	readonly measured?: boolean;
}

/** A model whose every error is given, where a kg/s costs 100 kWh and 1,000 cents a year. */
export function modelOf(
	leaks: readonly HandLeak[],
	errors: Partial<Record<'hours' | 'power' | 'price', number>> = {}
): UncertaintyModel {
	const column = (of: (leak: HandLeak) => number) => Float64Array.from(leaks, of);
	const ready = readySharedErrors(errors);
	if (!ready.ok) throw new Error(ready.error.code);
	const amounts = column((leak) => leak.massFlow);
	return {
		roundId: 'round-1',
		leakIds: leaks.map((_, i) => `leak-${i + 1}`),
		tags: leaks.map((_, i) => i + 1),
		massFlow: amounts,
		measured: Uint8Array.from(leaks, (leak) => (leak.measured ? 1 : 0)),
		kind: Uint8Array.from(leaks, (leak) => leak.kind ?? 0),
		own: column((leak) => leak.own ?? 0),
		method: column((leak) => leak.method ?? 0),
		gauge: column((leak) => leak.gauge ?? 0),
		whole: column((leak) => Math.hypot(leak.own ?? 0, leak.method ?? 0, leak.gauge ?? 0)),
		year: {
			method: 'quick',
			amounts: [amounts],
			weightsVary: false,
			energyKnown: true,
			costKnown: true,
			missing: [],
			weigh: (_, weights) => {
				weights.energyKwh[0] = 100;
				weights.costMinor[0] = 1000;
				weights.airM3[0] = 10;
			}
		},
		errors: ready.value,
		shownPerIsoM3: 1,
		shownM3PerKg: 1,
		missing: []
	};
}

export function runOf(model: UncertaintyModel, options: RunOptions = {}): UncertaintyRun {
	const run = startRun(model, options);
	if (!run.ok) throw new Error(run.error.code);
	while (!run.value.finished) run.value.step(1000);
	return run.value;
}

export function resultOf(model: UncertaintyModel, options: RunOptions = {}): UncertaintyResult {
	return uncertaintyResult(runOf(model, options));
}

/** A fixed number of draws, whatever the intervals say. */
export function draws(count: number): RunOptions {
	return { leastDraws: count, mostDraws: count };
}

export function normalOf(random: Random): number {
	const one = new Float64Array(1);
	random.fillNormals(one, 1);
	return one[0] ?? 0;
}

/** Φ(z) by Simpson's rule. */
export function normalCdf(z: number): number {
	if (z < -9) return 0;
	if (z > 9) return 1;
	const steps = 2000;
	const h = (z + 9) / steps;
	const f = (x: number) => Math.exp(-0.5 * x * x);
	let sum = f(-9) + f(z);
	for (let i = 1; i < steps; i++) sum += f(-9 + i * h) * (i % 2 === 1 ? 4 : 2);
	return (sum * h) / 3 / Math.sqrt(2 * Math.PI);
}
