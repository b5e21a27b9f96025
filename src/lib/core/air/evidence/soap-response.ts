import { metreFromMillimetre } from '../../units/convert.ts';
import type { Result } from '../../units/result.ts';
import { ok, refuse } from '../../units/result.ts';
import type { EffectiveArea, OwnUncertainty } from './effective-area.ts';
import { effectiveAreaOf } from './effective-area.ts';

export type SoapResponseId =
	| 'now-and-then'
	| 'bubble-after-bubble'
	| 'foam-cushion'
	| 'foam-spits'
	| 'film-tears'
	| 'film-blown-away';

/** The ideal round holes that a response may stand for: nine leaks in ten lie between. */
export interface SoapBand {
	readonly lowMm: number;
	readonly highMm: number;
}

export interface SoapResponse extends SoapBand {
	readonly description: string;
}

/** Bands by response; keys that are left out keep the starting band. */
export type SoapBands = Readonly<Record<string, SoapBand>>;

/**
 * What the film of soap solution or leak-test fluid does, mildest first, at some 4 to 10 bar.
 * @source our starting value, every band: no published source turns a film's looks into a flow
 * (ASTM E515 and EN 1593 locate with it and do not measure); to be corrected by the system test
 */
export const STARTING_SOAP_BANDS: Readonly<Record<SoapResponseId, SoapResponse>> = {
	'now-and-then': { description: 'a bubble now and then', lowMm: 0.005, highMm: 0.03 },
	'bubble-after-bubble': {
		description: 'one bubble after another, each keeps its shape',
		lowMm: 0.03,
		highMm: 0.1
	},
	'foam-cushion': { description: 'a cushion of fine foam builds up', lowMm: 0.08, highMm: 0.25 },
	'foam-spits': { description: 'foam builds and bursts, drops fly', lowMm: 0.2, highMm: 0.5 },
	'film-tears': {
		description: 'the film tears open at once and a hole stays in the foam',
		lowMm: 0.4,
		highMm: 1.1
	},
	'film-blown-away': {
		description: 'the film is blown away and nothing can stay on the joint',
		lowMm: 0.9,
		highMm: 3
	}
};

export interface SoapResponseReading extends OwnUncertainty {
	readonly kind: 'soap-response';
	/** A SoapResponseId, or a response that the site's own bands name. */
	readonly response: string;
}

/** How many standard deviations of a normal lie either side of its middle 90 %. */
const NINETY_PERCENT = 1.644_853_627;

/**
 * Effective area of a soap response: A_e = π/4·d², d = √(low·high); ln d normal with its middle
 * 90 % between low and high, so u(ln A_e) = 2·ln(high/low)/(2·1.645).
 * @param reading the response seen
 * @param ownBands the site's own bands, by response
 * @returns effective area, or `soap-response-unknown`, `soap-band-unusable`
 * @validity the starting bands are meant for 4 to 10 bar gauge
 * @source our starting value; METHOD A10
 */
export function soapResponseArea(
	reading: SoapResponseReading,
	ownBands: SoapBands
): Result<EffectiveArea> {
	const starting: SoapBands = STARTING_SOAP_BANDS;
	const own = Object.hasOwn(ownBands, reading.response) ? ownBands[reading.response] : undefined;
	const ours = Object.hasOwn(starting, reading.response) ? starting[reading.response] : undefined;
	const band = own ?? ours;
	if (band === undefined) {
		return refuse('soap-response-unknown', {
			response: reading.response,
			accepted: Object.keys(STARTING_SOAP_BANDS).join(', ')
		});
	}
	const { lowMm, highMm } = band;
	if (!(lowMm > 0 && highMm > lowMm && Number.isFinite(highMm))) {
		return refuse('soap-band-unusable', {
			response: reading.response,
			lowMm: String(lowMm),
			highMm: String(highMm)
		});
	}
	const diameterMm = Math.sqrt(lowMm * highMm);
	const source = own === undefined ? 'our starting value' : "the site's own band";
	return ok(
		effectiveAreaOf({
			area: (Math.PI / 4) * metreFromMillimetre(diameterMm) ** 2,
			basis: 'A10',
			own: reading.relativeUncertainty,
			starting: Math.log(highMm / lowMm) / NINETY_PERCENT,
			reason: `${source}: nine in ten between ${lowMm} and ${highMm} mm`,
			choices: [{ name: 'equivalent-hole', value: diameterMm, unit: 'mm', source }]
		})
	);
}
