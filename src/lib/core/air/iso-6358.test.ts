import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { as } from '../units/quantity.ts';
import { areaOfConductance, conductanceFlow, conductanceOfArea } from './iso-6358.ts';
import { massFlux, orificeFlow } from './orifice.ts';

function states(ratio: number): Parameters<typeof massFlux>[0] {
	return {
		upstream: as<'Pa absolute'>(700_000),
		upstreamTemperature: as<'K'>(293.15),
		downstream: as<'Pa absolute'>(700_000 * ratio)
	};
}

/** Ellipse against isentropic flow at one pressure ratio, as a share. */
function ellipseShare(b: number, ratio: number): number {
	const effectiveArea = as<'m²'>(1e-6);
	const ellipse = conductanceFlow({ effectiveArea, criticalRatio: b, ...states(ratio) });
	return ellipse.massFlow / orificeFlow({ effectiveArea, ...states(ratio) }).massFlow - 1;
}

describe('sonic conductance', () => {
	it('[A12] one square millimetre is C = 0.1992 dm³/(s·bar) (derived)', () => {
		expect(conductanceOfArea(as<'m²'>(1e-6))).toBeCloseTo(0.1992, 4);
	});

	it('[A12] choked flow is C·p1·ρ0 at 20 °C (ISO 6358, formula read in a tool manual)', () => {
		const flow = conductanceFlow({
			effectiveArea: areaOfConductance(2),
			criticalRatio: 0.3,
			...states(0.2)
		});
		expect(flow.massFlow).toBeCloseTo(2e-8 * 700_000 * 1.185, 9);
		expect(flow.regime).toBe('choked');
	});

	it('[A12] with b = 0.528 the ellipse keeps within 0.33 % of isentropic flow (derived)', () => {
		for (let ratio = 0.53; ratio < 0.999; ratio += 0.01) {
			expect(Math.abs(ellipseShare(0.528282, ratio))).toBeLessThan(0.0034);
		}
	});

	it.each([
		[0.5, -0.032],
		[0.4, -0.116],
		[0.2, -0.23]
	])(
		'[A12] with b = %s the ellipse falls to %s of the ideal near p2 = p1 (derived)',
		(b, worst) => {
			expect(ellipseShare(b, 0.9999)).toBeCloseTo(worst, 2);
		}
	);

	it('[A12] the flow functions at 0.9 and 0.7 are 0.616 and 0.931 of choked (derived)', () => {
		const share = (ratio: number): number => massFlux(states(ratio)) / massFlux(states(0));
		expect(share(0.9)).toBeCloseTo(0.617, 3);
		expect(share(0.7)).toBeCloseTo(0.932, 3);
		const ellipse = (ratio: number): number => share(ratio) * (1 + ellipseShare(0.528282, ratio));
		expect(ellipse(0.9)).toBeCloseTo(0.616, 3);
		expect(ellipse(0.7)).toBeCloseTo(0.931, 3);
	});

	it('[A12] law: conductance goes to area and back; the flow is finite and falls with p2', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 1e-6, max: 1e4, noNaN: true }),
				fc.double({ min: 0, max: 0.99, noNaN: true }),
				fc.double({ min: 0, max: 1.2, noNaN: true }),
				fc.double({ min: 0, max: 0.5, noNaN: true }),
				(c, criticalRatio, ratio, more) => {
					expect(conductanceOfArea(areaOfConductance(c)) / c).toBeCloseTo(1, 12);
					const flow = (r: number): number =>
						conductanceFlow({ effectiveArea: areaOfConductance(c), criticalRatio, ...states(r) })
							.massFlow;
					expect(Number.isFinite(flow(ratio))).toBe(true);
					expect(flow(ratio + more)).toBeLessThanOrEqual(flow(ratio) * (1 + 1e-12));
				}
			)
		);
	});
});
