import type { Result } from '../units/result.ts';
import { ok, refuse } from '../units/result.ts';
import type { BagReading } from './evidence/bag.ts';
import { bagArea } from './evidence/bag.ts';
import type { BubbleGrowthReading } from './evidence/bubble-growth.ts';
import { bubbleGrowthArea } from './evidence/bubble-growth.ts';
import type { CatalogueReading } from './evidence/catalogue.ts';
import { catalogueArea } from './evidence/catalogue.ts';
import type { EffectiveArea } from './evidence/effective-area.ts';
import type { HoleReading } from './evidence/hole.ts';
import { holeArea } from './evidence/hole.ts';
import type { MeterReading } from './evidence/meter.ts';
import { meterArea } from './evidence/meter.ts';
import type { SlitReading } from './evidence/slit.ts';
import { slitArea } from './evidence/slit.ts';
import type { SoapBands, SoapResponseReading } from './evidence/soap-response.ts';
import { soapResponseArea } from './evidence/soap-response.ts';
import type { ThreadGapReading } from './evidence/thread-gap.ts';
import { threadGapArea } from './evidence/thread-gap.ts';
import type { LineAir, LineConditions } from './line-air.ts';
import { lineAir } from './line-air.ts';

/** What was seen or measured of a leak. */
export type Evidence =
	| HoleReading
	| SlitReading
	| ThreadGapReading
	| BubbleGrowthReading
	| SoapResponseReading
	| BagReading
	| MeterReading
	| CatalogueReading;

export interface EvidenceConditions extends LineConditions {
	/** The site's own soap bands; a response that is left out keeps our starting band. */
	readonly soapBands: SoapBands;
}

function areaByKind(
	evidence: Evidence,
	line: LineAir,
	soapBands: SoapBands
): Result<EffectiveArea> {
	switch (evidence.kind) {
		case 'hole':
			return holeArea(evidence);
		case 'slit':
			return slitArea(evidence);
		case 'thread-gap':
			return threadGapArea(evidence);
		case 'bubble-growth':
			return bubbleGrowthArea(evidence, line);
		case 'soap-response':
			return soapResponseArea(evidence, soapBands);
		case 'bag':
			return bagArea(evidence, line);
		case 'meter':
			return meterArea(evidence, line);
		case 'catalogue':
			return catalogueArea(evidence);
	}
}

/**
 * The effective area of any evidence against a line that has been checked already.
 * @param evidence the reading, one of eight kinds
 * @param line the air on both sides of the leak
 * @param soapBands the site's own bands, by response
 * @returns effective area in m², u(ln A_e), METHOD id and the choices made on the way; or
 * `uncertainty-not-positive`, `opening-out-of-range` and the refusals of the kind's own function
 * @validity the ranges of METHOD A15
 * @source each kind's own function; METHOD A7 to A12
 */
export function effectiveAreaAt(
	evidence: Evidence,
	line: LineAir,
	soapBands: SoapBands
): Result<EffectiveArea> {
	const own = evidence.relativeUncertainty;
	if (own !== undefined && !(own > 0 && Number.isFinite(own))) {
		return refuse('uncertainty-not-positive', { relativeUncertainty: String(own) });
	}
	const result = areaByKind(evidence, line, soapBands);
	if (!result.ok) return result;
	const area: number = result.value.areaM2;
	if (!(area > 0 && Number.isFinite(area))) {
		return refuse('opening-out-of-range', { effectiveAreaM2: String(area) });
	}
	return ok(result.value);
}

/**
 * The one door from evidence to flow: what was seen becomes an effective area with an uncertainty.
 * @param evidence the reading, one of eight kinds
 * @param conditions the line the leak is on, the site's air and its soap bands
 * @returns effective area in m², u(ln A_e), METHOD id and the choices made on the way; or the
 * refusals of `lineAir` and of the kind's own function
 * @validity the ranges of METHOD A15
 * @source each kind's own function; METHOD A7 to A12
 */
export function effectiveArea(
	evidence: Evidence,
	conditions: EvidenceConditions
): Result<EffectiveArea> {
	const line = lineAir(conditions);
	if (!line.ok) return line;
	return effectiveAreaAt(evidence, line.value, conditions.soapBands);
}
