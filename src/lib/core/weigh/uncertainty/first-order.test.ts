import { describe, expect, it } from 'vitest';
import {
	draws,
	modelOf,
	resultOf,
	type HandLeak
} from '../../../../../tests/arbitrary/uncertainty-model.ts';
import { firstOrder } from './first-order.ts';

describe('[W8] first order beside the draws', () => {
	const leaks = (own: number, method: number): HandLeak[] =>
		Array.from({ length: 40 }, (_, i) => ({ massFlow: 1 + (i % 7), own, method, kind: i % 3 }));

	it('derived: agrees with the draws where errors are small', () => {
		const model = modelOf(leaks(0.05, 0.04), { price: 0.03 });
		const { totals } = resultOf(model, draws(40_000));
		const order = firstOrder(model);
		for (const [drawn, law] of [
			[totals.massFlowKgPerS, order.massFlowKgPerS],
			[totals.costMinorPerYear!, order.costMinorPerYear!]
		] as const) {
			const width = (drawn.high - drawn.low) / (law.high - law.low);
			expect(Math.abs(width - 1)).toBeLessThan(0.03);
			expect(drawn.median / law.value).toBeCloseTo(1, 2);
		}
	});

	it('derived: falls short where they are not', () => {
		const model = modelOf([{ massFlow: 1, own: 1 }]);
		const order = firstOrder(model).massFlowKgPerS;
		expect(order.low).toBeLessThan(0);
		expect(resultOf(model).totals.massFlowKgPerS.high).toBeGreaterThan(order.high * 1.5);
	});

	it('derived: own errors average out, shared ones do not', () => {
		const alike = (n: number, errors: Omit<HandLeak, 'massFlow'>) =>
			firstOrder(modelOf(Array.from({ length: n }, () => ({ massFlow: 1, ...errors }))));
		const relative = ({
			massFlowKgPerS: { standardUncertainty, value }
		}: ReturnType<typeof alike>) => standardUncertainty / value;
		expect(relative(alike(100, { own: 0.3 }))).toBeCloseTo(0.03, 9);
		expect(relative(alike(100, { method: 0.3 }))).toBeCloseTo(0.3, 9);
		expect(relative(alike(100, { gauge: 0.3 }))).toBeCloseTo(0.3, 9);
		expect(alike(100, { own: 0.3, method: 0.03 }).massFlowKgPerS.sharedPart).toBeCloseTo(0.5, 9);
	});
});
