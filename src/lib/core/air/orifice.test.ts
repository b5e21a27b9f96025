import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromSi, kelvinFromCelsius, toSi } from '../units/convert.ts';
import type { PascalAbsolute } from '../units/quantity.ts';
import { as } from '../units/quantity.ts';
import {
	CHOKED_FLOW_CONSTANT,
	CRITICAL_PRESSURE_RATIO,
	effectiveAreaForFlow,
	equivalentHole,
	massFlux,
	orificeFlow,
	regimeOf
} from './orifice.ts';

const psia = (psi: number): PascalAbsolute => toSi('absolutePressure', 'psi', psi);
const kelvin = kelvinFromCelsius(20);
const atmosphere = as<'Pa absolute'>(101_325);

describe('choked flow constants', () => {
	it('[A3] the critical ratio is 0.5283 (NASA Glenn and Cengel & Boles, verified)', () => {
		expect(CRITICAL_PRESSURE_RATIO).toBeCloseTo(0.5283, 4);
		expect(CRITICAL_PRESSURE_RATIO).toBeCloseTo(0.5282817877, 10);
	});

	it('[A3] the SI constant is 0.0404149 (derived) and rounds to 0.0404 (printed, from memory)', () => {
		expect(CHOKED_FLOW_CONSTANT).toBeCloseTo(0.0404149, 6);
		expect(CHOKED_FLOW_CONSTANT * Math.sqrt(287.05)).toBeCloseTo(0.68473, 5);
	});

	it('[A3] Moss prints 0.5303 where isentropic flow gives 0.53175, 0.27 % more (verified text)', () => {
		const area = toSi('area', 'in2', 1);
		const rankine530 = as<'K'>((530 * 5) / 9);
		const flow = orificeFlow({
			effectiveArea: area,
			upstream: psia(100),
			upstreamTemperature: rankine530,
			downstream: psia(14.7)
		});
		const constant = (fromSi('massFlow', 'lb/s', flow.massFlow) * Math.sqrt(530)) / 100;
		expect(constant).toBeCloseTo(0.53175, 4);
		expect(constant / 0.5303).toBeCloseTo(1.0027, 3);
	});

	it('[A3] 14.7 psia chokes from 13.13 psig; 80 psig stays choked below 35.30 psig (verified text)', () => {
		expect(14.7 / CRITICAL_PRESSURE_RATIO - 14.7).toBeCloseTo(13.13, 2);
		expect(94.7 * CRITICAL_PRESSURE_RATIO - 14.7).toBeCloseTo(35.33, 2);
		const regime = (downstreamPsig: number): string =>
			regimeOf({
				upstream: psia(94.7),
				upstreamTemperature: kelvin,
				downstream: psia(downstreamPsig + 14.7)
			});
		expect(regime(35.3)).toBe('choked');
		expect(regime(35.4)).toBe('subsonic');
	});
});

describe('mass flow', () => {
	it('[A3] a 3 mm hole at 700 kPa gauge passes 0.008631 kg/s (Cengel & Boles ex. 7-22: inputs verified, value recomputed)', () => {
		const flow = orificeFlow({
			effectiveArea: as<'m²'>((0.65 * Math.PI * 0.003 ** 2) / 4),
			upstream: as<'Pa absolute'>(801_000),
			upstreamTemperature: as<'K'>(297),
			downstream: as<'Pa absolute'>(101_000)
		});
		// The book takes R = 287 and 24 °C = 297 K.
		expect(flow.massFlow).toBeCloseTo(0.008631, 6);
		expect(flow.regime).toBe('choked');
	});

	it('[A3] subsonic flow equals density × speed at the throat from the energy equation (derived)', () => {
		const upstream = 150_000;
		const downstream = 110_000;
		const throatTemperature = 293.15 * (downstream / upstream) ** (0.4 / 1.4);
		const speed = Math.sqrt(2 * 1.4 * (287.05 / 0.4) * (293.15 - throatTemperature));
		const density = downstream / (287.05 * throatTemperature);
		const flux = massFlux({
			upstream: as<'Pa absolute'>(upstream),
			upstreamTemperature: as<'K'>(293.15),
			downstream: as<'Pa absolute'>(downstream)
		});
		expect(flux / (density * speed)).toBeCloseTo(1, 9);
	});

	it('[A3] flow stops rising once choked', () => {
		const at = (downstream: number): number =>
			massFlux({
				upstream: as<'Pa absolute'>(800_000),
				upstreamTemperature: kelvin,
				downstream: as<'Pa absolute'>(downstream)
			});
		expect(at(400_000)).toBe(at(0));
		expect(at(430_000)).toBeLessThan(at(400_000));
	});

	it('[A3] law: the two regimes meet at the critical ratio without a step', () => {
		fc.assert(
			fc.property(fc.double({ min: 1e5, max: 1.7e6, noNaN: true }), (upstream) => {
				const at = (ratio: number): number =>
					massFlux({
						upstream: as<'Pa absolute'>(upstream),
						upstreamTemperature: kelvin,
						downstream: as<'Pa absolute'>(upstream * ratio)
					});
				const below = at(CRITICAL_PRESSURE_RATIO * (1 - 1e-9));
				const above = at(CRITICAL_PRESSURE_RATIO * (1 + 1e-9));
				expect(above / below).toBeCloseTo(1, 9);
			})
		);
	});

	const pressure = fc.double({ min: 101_326, max: 1.8e6, noNaN: true });
	const area = fc.double({ min: 1e-12, max: 1e-3, noNaN: true });

	it('[A3] law: more pressure or more area is more flow; nothing flows uphill; all finite', () => {
		fc.assert(
			fc.property(pressure, pressure, area, area, (p, q, a, b) => {
				const flow = (upstream: number, effectiveArea: number): number =>
					orificeFlow({
						effectiveArea: as<'m²'>(effectiveArea),
						upstream: as<'Pa absolute'>(upstream),
						upstreamTemperature: kelvin,
						downstream: atmosphere
					}).massFlow;
				const [low, high] = [Math.min(p, q), Math.max(p, q)];
				expect(flow(high, a)).toBeGreaterThanOrEqual(flow(low, a));
				expect(flow(low, Math.max(a, b))).toBeGreaterThanOrEqual(flow(low, Math.min(a, b)));
				expect(Number.isFinite(flow(p, a))).toBe(true);
				expect(flow(101_325, a)).toBe(0);
				expect(flow(50_000, a)).toBe(0);
			})
		);
	});

	it('[A6] law: a flow gives back the area that made it', () => {
		fc.assert(
			fc.property(pressure, area, (upstream, a) => {
				const states = {
					upstream: as<'Pa absolute'>(upstream + 10_000),
					upstreamTemperature: kelvin,
					downstream: atmosphere
				};
				const { massFlow } = orificeFlow({ effectiveArea: as<'m²'>(a), ...states });
				expect(effectiveAreaForFlow(massFlow, states) / a).toBeCloseTo(1, 9);
			})
		);
	});

	it('[A6] no area can pass a flow without a pressure difference: a broken promise, so it throws', () => {
		const still = { upstream: atmosphere, upstreamTemperature: kelvin, downstream: atmosphere };
		expect(() => effectiveAreaForFlow(as<'kg/s'>(1), still)).toThrow(RangeError);
		expect(() => equivalentHole(as<'m²'>(1), 0)).toThrow(RangeError);
	});

	it('[A6] the equivalent hole of C_d·π·d²/4 is d (derived)', () => {
		const area = as<'m²'>((0.61 * Math.PI * 0.004 ** 2) / 4);
		expect(equivalentHole(area, 0.61)).toBeCloseTo(0.004, 12);
	});
});
