import { describe, expect, it } from 'vitest';
import { answered, captured } from './captured-run.ts';

interface Tested {
	readonly massFlowKgPerS: number;
	readonly freeAirM3PerS: number;
	readonly relativeUncertainty: number;
	readonly reference: string;
	readonly loadFraction: number;
	readonly scatterKnown: boolean;
	readonly atBarGauge: number | null;
	readonly effectiveAreaM2: number;
	readonly chokedThroughout: boolean;
	readonly law: string | null;
	readonly line: { readonly zeroFlowBarGauge: number } | null;
	readonly extrapolated: boolean;
	readonly handbook: { readonly freeAirM3PerS: number; readonly factor: number };
	readonly physicsFactor: number;
	readonly temperatureCorrected: boolean;
	readonly leakedMassFlowKgPerS: number;
}

const tested = (...args: string[]) => answered<Tested>(['test', ...args]);
const cfm = (m3PerS: number) => (m3PerS * 60) / 0.3048 ** 3;
const PSI_IN_BAR = 0.068947572932;

describe('test load-time', () => {
	it('[T1] 1.5 min on and 10.5 min off at 35 m³/min is 4.375 m³/min (BEE guidebook 3, from memory)', async () => {
		const found = await tested(
			...['load-time', '--capacity', '35 m3/min', '--cycle', '1.5 min/10.5 min']
		);
		expect(found.loadFraction).toBeCloseTo(0.125, 12);
		expect(found.freeAirM3PerS * 60).toBeCloseTo(4.375, 9);
		expect([found.scatterKnown, found.atBarGauge]).toEqual([false, null]);
	});

	it('[T1] counts stopped time as unloaded', async () => {
		const found = await tested(
			...['load-time', '--capacity', '10 m3/min', '--cycle', '60 s/120 s/420 s'],
			...['--cycle', '1 min/9 min']
		);
		expect(found.loadFraction).toBeCloseTo(0.1, 12);
		expect(found.scatterKnown).toBe(true);
	});

	it('[T9] carries the leak to another pressure by the absolute pressures (derived)', async () => {
		const at = (...more: string[]) =>
			tested(...['load-time', '--capacity', '10 m3/min', '--cycle', '1 min/9 min'], ...more);
		const plain = await at();
		const carried = await at('--pressure', '6 bar', '--at', '7 bar', '--barometer', '100 kPa');
		expect(carried.freeAirM3PerS / plain.freeAirM3PerS).toBeCloseTo(8 / 7, 9);
		expect(carried.atBarGauge).toBeCloseTo(7, 12);
	});

	it('does not carry a leak from a pressure that nobody gave', async () => {
		const { code, err } = await captured([
			...['test', 'load-time', '--capacity', '10 m3/min', '--cycle', '1 min/9 min', '--at', '7 bar']
		]);
		expect(code).toBe(2);
		expect(err).toContain('--pressure');
	});
});

describe('test bleed-down', () => {
	const two = ['--volume', '100 ft3', '--reading', '0 s: 100 psi', '--reading', '5 min: 50 psi'];
	const site = ['--barometer', '14.7 psi', '--reference', 'site'];

	it('[T4] prints V·(P1 − P2)/(T·14.7)·1.25 beside the physics (DOE / CAC sourcebook, verified)', async () => {
		const found = await tested('bleed-down', ...two, ...site);
		expect(cfm(found.handbook.freeAirM3PerS)).toBeCloseTo((100 * 50 * 1.25) / (5 * 14.7), 6);
		expect(found.handbook.factor).toBe(1.25);
		const { out } = await captured(['test', 'bleed-down', ...two, ...site]);
		expect(out).toMatch(/by physics.*\n.*by the handbook/);
		expect(out).toContain('choked');
	});

	it('[T3][T4] the factor is (P1/ΔP)·ln(P1/P2), 1.31 from 100 to 50 psi (derived)', async () => {
		const found = await tested('bleed-down', ...two, ...site);
		const factor = (114.7 / 50) * Math.log(114.7 / 64.7);
		expect(found.physicsFactor).toBeCloseTo(factor, 9);
		expect(found.freeAirM3PerS / found.handbook.freeAirM3PerS).toBeCloseTo(factor / 1.25, 9);
		expect(found.chokedThroughout).toBe(true);
		expect(found.law).toBe(null);
	});

	it('[T5] says when the flow was not choked all the way', async () => {
		const args = ['--volume', '2 m3', '--reading', '0: 3 bar', '--reading', '600: 0.3 bar'];
		expect((await tested('bleed-down', ...args)).chokedThroughout).toBe(false);
		expect((await captured(['test', 'bleed-down', ...args])).err).toContain('not choked');
	});

	// NAVFAC MO-209 (January 1989), tables 5-3 and 5-4 (verified): Q = 0.62·P − 12.75 scfm, 47 scfm
	// at 96 psig.
	it('[T6] a published naval series follows its straight line: 47 scfm at 96 psig (verified)', async () => {
		const readings = [
			['0 s', 90],
			['642 s', 80],
			['1397 s', 70],
			['2314 s', 60],
			['3536 s', 50],
			['5248 s', 40],
			['8101 s', 30],
			['16660 s', 20]
		].flatMap(([time, psi]) => ['--reading', `${time}: ${psi} psi`]);
		const args = [
			'--volume',
			'629 ft3',
			...readings,
			'--at',
			'96 psi',
			'--gauge',
			'1 psi',
			...site
		];
		const found = await tested('bleed-down', ...args);
		expect(found.law).toBe('line');
		expect(Math.abs(cfm(found.freeAirM3PerS) - 47)).toBeLessThan(0.5);
		expect(Number(found.line?.zeroFlowBarGauge) / PSI_IN_BAR).toBeCloseTo(20.5, 1);
		expect(found.extrapolated).toBe(true);
		const { err } = await captured(['test', 'bleed-down', ...args]);
		expect(err).toContain('straight line');
		expect(err).toContain('extrapolated');
	});
});

describe('test pump-up', () => {
	const fill = [
		...['pump-up', '--volume', '8.322 m3', '--from', '0.5 kg/cm2', '--to', '7.03 kg/cm2'],
		...['--seconds', '4.021 min', '--barometer', '1.026 kgf/cm2', '--reference', 'site']
	];

	it('[T8] the worked example delivers 13.17 m³/min (BEE guidebook 3, from memory)', async () => {
		const found = await tested(...fill);
		expect(found.freeAirM3PerS * 60).toBeCloseTo(13.17, 2);
		expect(found.temperatureCorrected).toBe(false);
	});

	it('[T8] with the receiver at 40 °C and the site at 30 °C it is 303/313 of that (derived)', async () => {
		const plain = await tested(...fill, '--temperature', '30 C');
		const warm = await tested(...fill, '--temperature', '30 C', '--tank-temperature', '40 C');
		expect(warm.freeAirM3PerS / plain.freeAirM3PerS).toBeCloseTo(303.15 / 313.15, 9);
	});

	it('[T8] adds back what leaked meanwhile: A_e·0.0404149·p/√T at the mean pressure (derived)', async () => {
		const tight = await tested(...fill);
		const leaky = await tested(...fill, '--leak-area', '20 mm2');
		const gained = leaky.massFlowKgPerS - tight.massFlowKgPerS;
		expect(gained).toBeCloseTo(leaky.leakedMassFlowKgPerS, 12);
		const meanPa = (1.026 + (0.5 + 7.03) / 2) * 98_066.5;
		const choked = (20e-6 * 0.0404149 * meanPa) / Math.sqrt(293.15);
		expect(Math.abs(gained / choked - 1)).toBeLessThan(0.005);
	});
});
