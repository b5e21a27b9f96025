import { describe, expect, it } from 'vitest';
import { area, code, conditions, flow } from '../../../../tests/arbitrary/evidence-at-seven-bar.ts';
import { gaugeFromBar, toSi } from '../units/convert.ts';
import { as } from '../units/quantity.ts';
import { dutyFactor } from './duty.ts';
import { EDGE_COEFFICIENTS } from './edge-coefficient.ts';
import type { Evidence, EvidenceConditions } from './evidence.ts';
import { effectiveArea } from './evidence.ts';
import { STARTING_SOAP_BANDS } from './evidence/soap-response.ts';
import { leakFlow } from './leak-flow.ts';
import { equivalentHole } from './orifice.ts';

describe('discharge coefficients', () => {
	it('[A7] sharp 0.61 and rounded 0.97 (DOE tip sheet 3, from memory) lie in the experiments’ spans (Weisbach in Britannica 11th ed., verified)', () => {
		const { sharp, rounded, unknown } = EDGE_COEFFICIENTS;
		expect([sharp.central, rounded.central]).toEqual([0.61, 0.97]);
		// Weisbach: sharp 0.563 to 0.788, rounded short tubes 0.92 to 0.93, conoidal 0.97 to 0.99.
		expect(sharp.lowest).toBeLessThanOrEqual(0.563);
		expect(sharp.highest).toBeGreaterThanOrEqual(0.788);
		expect(rounded.lowest).toBeLessThanOrEqual(0.92);
		expect(rounded.highest).toBeGreaterThanOrEqual(0.99);
		expect(unknown.central).toBeCloseTo(0.79, 12);
		expect([unknown.lowest, unknown.highest]).toEqual([sharp.lowest, rounded.highest]);
	});

	it('[A7] the sharp spread reaches the choked limit of the polynomial put down to Perry (partly read, signs inferred)', () => {
		const perry = (r: number): number =>
			0.8414 - 0.1002 * r + 0.8415 * r ** 2 - 3.9 * r ** 3 + 4.6001 * r ** 4 - 1.6827 * r ** 5;
		expect(perry(0)).toBeCloseTo(EDGE_COEFFICIENTS.sharp.highest, 2);
		expect(perry(1)).toBeGreaterThan(EDGE_COEFFICIENTS.sharp.lowest);
		expect(perry(1)).toBeLessThan(0.61);
	});

	it('[A7] the standard uncertainties follow from the spans (derived by hand)', () => {
		// sharp: √(0.28²/12 + 0.09²)/0.61; rounded: √(0.07²/12 + 0.015²)/0.97;
		// unknown: √((0.014633 + 0.000633)/2 + 0.18²)/0.79
		expect(EDGE_COEFFICIENTS.sharp.relativeStandardUncertainty).toBeCloseTo(0.1983, 4);
		expect(EDGE_COEFFICIENTS.rounded.relativeStandardUncertainty).toBeCloseTo(0.026, 3);
		expect(EDGE_COEFFICIENTS.unknown.relativeStandardUncertainty).toBeCloseTo(0.2533, 4);
	});
});

describe('openings', () => {
	it('[A8] a sharp 1 mm hole has an effective area of 0.61 × π/4 mm² (derived)', () => {
		const { areaM2, basis, choices } = area({ kind: 'hole', diameterMm: 1, edge: 'sharp' });
		expect(areaM2).toBeCloseTo(0.61 * (Math.PI / 4) * 1e-6, 15);
		expect(basis).toBe('A8');
		expect(choices[0]).toMatchObject({ name: 'discharge-coefficient', value: 0.61 });
	});

	it('[A8] an entered coefficient goes before the edge and adds no spread of its own', () => {
		const entered = area({ kind: 'hole', diameterMm: 1, edge: 'sharp', coefficient: 1 });
		expect(entered.areaM2).toBeCloseTo((Math.PI / 4) * 1e-6, 15);
		expect(entered.relativeStandardUncertainty).toBeCloseTo(0.4, 12);
		for (const coefficient of [0, -1, 1.01, Number.NaN]) {
			expect(code({ kind: 'hole', diameterMm: 1, edge: 'sharp', coefficient })).toBe(
				'coefficient-out-of-range'
			);
		}
	});

	it('[A8] slit and thread gap are plain geometry (derived)', () => {
		const slit = area({ kind: 'slit', lengthMm: 10, widthMm: 0.1, edge: 'rounded' });
		expect(slit.areaM2).toBeCloseTo(0.97e-6, 15);
		const ring = area({ kind: 'thread-gap', threadDiameterMm: 20, gapMm: 0.05, edge: 'unknown' });
		expect(ring.areaM2).toBeCloseTo(0.79 * Math.PI * 1e-6, 15);
	});

	it('[A8] 1/4 in at 100 psig, coefficient 1, is the handbook’s 104 cfm of 70 °F air (verified; 1.3 %)', () => {
		const handbook: EvidenceConditions = {
			linePressure: toSi('pressure', 'psi', 100),
			lineTemperature: toSi('temperature', 'F', 70),
			site: {
				pressure: toSi('absolutePressure', 'psi', 14.7),
				temperature: toSi('temperature', 'F', 70)
			},
			soapBands: {}
		};
		const leak = leakFlow(
			{ kind: 'hole', diameterMm: 6.35, edge: 'sharp', coefficient: 1 },
			{ ...handbook, reference: 'site' }
		);
		const cfm = leak.ok ? leak.value.freeAir / toSi('volumeFlow', 'cfm', 1) : 0;
		expect(cfm / 104).toBeGreaterThan(0.987);
		expect(cfm / 104).toBeLessThan(1.013);
	});
});

describe('caught air', () => {
	it.each([
		[0.1, 1 / 24],
		[0.01, 1 / 2.4],
		[0.001, 4.2],
		[1e-4, 41.9],
		[1e-5, 420]
	])(
		'[A9] %s cm³/s is one 2 mm bubble every %s s (published bubble-rate conversion, verified)',
		(rateCm3PerS, seconds) => {
			const bubble = area({ kind: 'bubble-growth', bubbleDiameterMm: 2, seconds });
			const bag = area({ kind: 'bag', volumeL: rateCm3PerS / 1000, seconds: 1 });
			expect(bubble.areaM2 / bag.areaM2).toBeCloseTo(1, 1);
			expect(Math.abs(bubble.areaM2 / bag.areaM2 - 1)).toBeLessThan(0.01);
		}
	);

	it('[A9] a 1/32 in hole at 100 psig would need some 180 000 such bubbles a second (derived)', () => {
		const at = { ...conditions, linePressure: toSi('pressure', 'psi', 100) };
		const massFlow = flow(
			{ kind: 'hole', diameterMm: 25.4 / 32, edge: 'sharp', coefficient: 1 },
			at
		);
		expect(massFlow / 1.2041 / ((Math.PI / 6) * 0.002 ** 3) / 180_000).toBeCloseTo(1, 1);
	});

	it('[A9] a bag is its own flow: 10 L in 20 s is 0.5 L/s of site air, whatever the line (derived)', () => {
		for (const bar of [0.5, 3, 7, 12]) {
			const at = { ...conditions, linePressure: gaugeFromBar(bar) };
			const massFlow = flow({ kind: 'bag', volumeL: 10, seconds: 20 }, at);
			expect((massFlow * 287.05 * 293.15) / 101_325).toBeCloseTo(0.0005, 12);
		}
	});

	it('[A9] a bubble that grows faster than 2 cm³/s is refused and sent to the soap response', () => {
		const evidence: Evidence = { kind: 'bubble-growth', bubbleDiameterMm: 20, seconds: 1 };
		expect(effectiveArea(evidence, conditions)).toMatchObject({
			error: {
				code: 'bubble-rate-too-high',
				detail: { highestCm3PerS: 2, evidenceInstead: 'soap-response' }
			}
		});
		expect(code({ ...evidence, seconds: 2.2 })).toBe('accepted');
	});
});

describe('soap responses', () => {
	it('[A10] each response is stronger than the one before, from under 0.1 to over 100 L/min at 7 bar', () => {
		const flows = Object.keys(STARTING_SOAP_BANDS).map((response) =>
			flow({ kind: 'soap-response', response })
		);
		expect(flows).toHaveLength(6);
		expect(flows.toSorted((a, b) => a - b)).toEqual(flows);
		const litresPerMinute = flows.map((massFlow) => (massFlow / 1.1884) * 60_000);
		expect(litresPerMinute[0]).toBeLessThan(0.1);
		expect(litresPerMinute[5]).toBeGreaterThan(100);
	});

	it('[A10] the middle 90 % of the spread is the band itself (derived)', () => {
		for (const [response, { lowMm, highMm }] of Object.entries(STARTING_SOAP_BANDS)) {
			const { areaM2, relativeStandardUncertainty } = area({ kind: 'soap-response', response });
			const edge = (sign: number): number =>
				equivalentHole(
					as<'m²'>(areaM2 * Math.exp(sign * 1.644854 * relativeStandardUncertainty)),
					1
				);
			expect((edge(-1) * 1000) / lowMm).toBeCloseTo(1, 5);
			expect((edge(1) * 1000) / highMm).toBeCloseTo(1, 5);
		}
	});

	it('[A10] the site’s own band goes before ours; an unknown response or a bad band is refused', () => {
		const soapBands = {
			'film-tears': { lowMm: 0.5, highMm: 2 },
			'foam-spits': { lowMm: 2, highMm: 1 }
		};
		const at = { ...conditions, soapBands };
		const own = area({ kind: 'soap-response', response: 'film-tears' }, at);
		expect(equivalentHole(own.areaM2, 1)).toBeCloseTo(0.001, 12);
		expect(own.choices[0]?.source).toBe("the site's own band");
		expect(code({ kind: 'soap-response', response: 'foam-spits' }, at)).toBe('soap-band-unusable');
		for (const response of ['loud', 'constructor', '__proto__', '']) {
			expect(code({ kind: 'soap-response', response }, at)).toBe('soap-response-unknown');
		}
	});
});

describe('meter, catalogue and duty', () => {
	it('[A11] a meter’s litres come back at their own reference, and 9 % apart at another (derived)', () => {
		const anr = flow({ kind: 'meter', flowLPerS: 2, reference: 'anr' });
		const normal = flow({ kind: 'meter', flowLPerS: 2, reference: 'normal' });
		expect(normal / anr).toBeCloseTo(1.094, 3);
		const back = leakFlow(
			{ kind: 'meter', flowLPerS: 2, reference: 'anr' },
			{ ...conditions, reference: 'anr' }
		);
		expect(back.ok ? back.value.freeAir : 0).toBeCloseTo(0.002, 12);
	});

	it('[A12] a blow gun of C = 0.5 at 6 bar gauge passes C·p1 of ANR air at 1.185 (derived)', () => {
		const at = { ...conditions, linePressure: gaugeFromBar(6) };
		const massFlow = flow({ kind: 'catalogue', cDm3PerSBar: 0.5, b: 0.3 }, at);
		expect(massFlow).toBeCloseTo(0.5e-3 * 7.01325 * 1.185, 9);
		expect(area({ kind: 'catalogue', cDm3PerSBar: 0.5, b: 0.3 }).criticalRatio).toBe(0.3);
		for (const b of [-0.1, 1, Number.NaN]) {
			expect(code({ kind: 'catalogue', cDm3PerSBar: 0.5, b })).toBe('critical-ratio-out-of-range');
		}
	});

	it('[A12] below its critical ratio a catalogue part passes less than an ideal opening', () => {
		const at = { ...conditions, linePressure: gaugeFromBar(0.5) };
		const part: Evidence = { kind: 'catalogue', cDm3PerSBar: 0.5, b: 0.2 };
		const sameArea = 0.5 / 0.19918;
		const diameterMm = Math.sqrt((4 * sameArea) / Math.PI);
		const ideal = flow({ kind: 'hole', diameterMm, edge: 'sharp', coefficient: 1 }, at);
		expect(flow(part, at) / ideal).toBeLessThan(0.95);
	});

	it('[A13] a drain that opens 3 s in every 600 s leaks 0.5 % of the time (derived)', () => {
		const evidence: Evidence = { kind: 'hole', diameterMm: 3, edge: 'rounded' };
		const timed = leakFlow(evidence, {
			...conditions,
			reference: 'anr',
			duty: { openSeconds: 3, everySeconds: 600 }
		});
		expect(timed.ok ? timed.value.massFlow / flow(evidence) : 0).toBeCloseTo(0.005, 12);
		expect(dutyFactor({ openSeconds: 5, everySeconds: 5 })).toEqual({ ok: true, value: 1 });
		for (const [openSeconds, everySeconds] of [
			[0, 5],
			[6, 5],
			[-1, -5],
			[1, 0],
			[Number.NaN, 5],
			[1, Number.POSITIVE_INFINITY]
		] as const) {
			expect(dutyFactor({ openSeconds, everySeconds })).toMatchObject({
				error: { code: 'duty-unreadable' }
			});
		}
	});
});
