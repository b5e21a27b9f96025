import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area, code, conditions, flow } from '../../../../tests/arbitrary/evidence-at-seven-bar.ts';
import { gaugeFromBar, kelvinFromCelsius } from '../units/convert.ts';
import type { Edge } from './edge-coefficient.ts';
import type { Evidence, EvidenceConditions } from './evidence.ts';
import { effectiveArea } from './evidence.ts';
import { STARTING_SOAP_BANDS } from './evidence/soap-response.ts';

const size = fc.double({ min: 1e-3, max: 50, noNaN: true });
const edge = fc.constantFrom<Edge>('sharp', 'rounded', 'unknown');
const anyEvidence: fc.Arbitrary<Evidence> = fc.oneof(
	fc.record({ kind: fc.constant('hole' as const), diameterMm: size, edge }),
	fc.record({ kind: fc.constant('slit' as const), lengthMm: size, widthMm: size, edge }),
	fc.record({
		kind: fc.constant('thread-gap' as const),
		threadDiameterMm: size,
		gapMm: size,
		edge
	}),
	fc.record({
		kind: fc.constant('bubble-growth' as const),
		bubbleDiameterMm: fc.double({ min: 0.1, max: 15, noNaN: true }),
		seconds: fc.double({ min: 1, max: 600, noNaN: true })
	}),
	fc.record({
		kind: fc.constant('soap-response' as const),
		response: fc.constantFrom(...Object.keys(STARTING_SOAP_BANDS))
	}),
	fc.record({ kind: fc.constant('bag' as const), volumeL: size, seconds: size }),
	fc.record({
		kind: fc.constant('meter' as const),
		flowLPerS: size,
		reference: fc.constantFrom(
			'iso-1217' as const,
			'anr' as const,
			'normal' as const,
			'site' as const
		)
	}),
	fc.record({
		kind: fc.constant('catalogue' as const),
		cDm3PerSBar: size,
		b: fc.double({ min: 0, max: 0.9, noNaN: true })
	})
);

describe('every kind', () => {
	it('[A14] law: finite, above zero, explained, and more pressure never less flow for a fixed opening', () => {
		fc.assert(
			fc.property(
				anyEvidence,
				fc.double({ min: 0.1, max: 16, noNaN: true }),
				fc.double({ min: 0.1, max: 16, noNaN: true }),
				fc.double({ min: -20, max: 60, noNaN: true }),
				(evidence, bar, otherBar, celsius) => {
					const at: EvidenceConditions = {
						...conditions,
						linePressure: gaugeFromBar(bar),
						lineTemperature: kelvinFromCelsius(celsius)
					};
					const { areaM2, relativeStandardUncertainty, choices, basis } = area(evidence, at);
					expect(Number.isFinite(areaM2) && areaM2 > 0).toBe(true);
					expect(relativeStandardUncertainty).toBeGreaterThan(0);
					expect(basis).toMatch(/^A(8|9|1[0-2])$/u);
					expect(choices.every((choice) => choice.source.length > 0)).toBe(true);
					const other = { ...at, linePressure: gaugeFromBar(otherBar) };
					const [low, high] = bar <= otherBar ? [at, other] : [other, at];
					if (
						evidence.kind === 'hole' ||
						evidence.kind === 'soap-response' ||
						evidence.kind === 'catalogue'
					) {
						expect(flow(evidence, high)).toBeGreaterThanOrEqual(flow(evidence, low) * (1 - 1e-12));
					}
				}
			)
		);
	});

	it('[A8] law: a bigger opening is never less area', () => {
		fc.assert(
			fc.property(size, size, edge, (a, b, e) => {
				const hole = (diameterMm: number): number =>
					area({ kind: 'hole', diameterMm, edge: e }).areaM2;
				expect(hole(Math.max(a, b))).toBeGreaterThanOrEqual(hole(Math.min(a, b)));
			})
		);
	});

	it('[A14] law: whatever numbers come in, the answer is finite or a code', () => {
		const anything = fc.oneof(
			fc.double(),
			fc.constantFrom(0, -1, Number.NaN, Number.POSITIVE_INFINITY)
		);
		fc.assert(
			fc.property(anything, anything, anything, edge, (x, y, bar, e) => {
				const at = { ...conditions, linePressure: gaugeFromBar(bar) };
				const kinds: readonly Evidence[] = [
					{ kind: 'hole', diameterMm: x, edge: e, coefficient: y },
					{ kind: 'slit', lengthMm: x, widthMm: y, edge: e },
					{ kind: 'thread-gap', threadDiameterMm: x, gapMm: y, edge: e },
					{ kind: 'bubble-growth', bubbleDiameterMm: x, seconds: y },
					{ kind: 'bag', volumeL: x, seconds: y },
					{ kind: 'meter', flowLPerS: x, reference: 'anr', relativeUncertainty: y },
					{ kind: 'catalogue', cDm3PerSBar: x, b: y }
				];
				for (const evidence of kinds) {
					for (const each of [at, conditions]) {
						const result = effectiveArea(evidence, each);
						if (result.ok) expect(Number.isFinite(result.value.areaM2)).toBe(true);
						else expect(result.error.code).toMatch(/^[a-z]+(-[a-z]+)+$/u);
					}
				}
			})
		);
	});

	it('[A10] an entered uncertainty goes before the starting one, and says so', () => {
		const own = area({ kind: 'bag', volumeL: 1, seconds: 2, relativeUncertainty: 0.07 });
		expect(own.relativeStandardUncertainty).toBe(0.07);
		expect(own.choices.at(-1)?.source).toBe('entered by the user');
		expect(code({ kind: 'bag', volumeL: 1, seconds: 2, relativeUncertainty: 0 })).toBe(
			'uncertainty-not-positive'
		);
		expect(code({ kind: 'hole', diameterMm: 0, edge: 'sharp' })).toBe('reading-not-positive');
	});
});
