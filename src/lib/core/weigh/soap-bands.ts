import { effectiveArea } from '../air/evidence.ts';
import {
	STARTING_SOAP_BANDS,
	type SoapBand,
	type SoapBands
} from '../air/evidence/soap-response.ts';
import type { SiteAir } from '../air/gas-state.ts';
import { leaksInOrder, roundsInOrder, sightingIn } from '../survey/leak-state.ts';
import type { Leak, Sighting, StartingValues, Survey } from '../survey/schema.ts';
import { gaugeFromBar } from '../units/convert.ts';
import { assess } from './assess.ts';
import type { Totals } from './assessment.ts';
import { pressureOf, sectionOf } from './leak-inputs.ts';
import { siteConditions } from './site-conditions.ts';
import { LEAST_PAIRS, refitSoapBands, type SoapPair } from './uncertainty/refit-soap.ts';

/** One soap response, what stands behind its band, and what measured leaks would make of it. */
export interface SoapBandFit {
	readonly response: string;
	/** The band in use. */
	readonly today: SoapBand;
	/** Leaks of which both the response and the flow are known. */
	readonly leaks: number;
	/** Absent while too few leaks stand behind it. */
	readonly refitted?: SoapBand;
	/** Whether the band in use was itself re-fitted, and from what. */
	readonly taken?: { readonly before: SoapBand; readonly leaks: number };
}

export interface SoapBandFits {
	readonly least: number;
	/** Mildest response first. */
	readonly fits: readonly SoapBandFit[];
}

type Refits = NonNullable<StartingValues['soapRefits']>;
type BandChanges = Pick<StartingValues, 'soapBands'> & { readonly soapRefits: Refits | null };

/**
 * What this site's measured leaks say of its soap bands. A band that was re-fitted before is fitted
 * anew from the band before that, so that no leak counts twice. METHOD W13.
 */
export function soapBandFits(survey: Survey): SoapBandFits {
	const own = survey.startingValues.soapBands;
	const standing = standingRefits(survey.startingValues);
	const pairs = soapPairs(survey);
	const refitted = new Map(
		refitSoapBands(pairs, { ...own, ...beforeOf(standing) }).map((each) => [each.response, each])
	);
	return {
		least: LEAST_PAIRS,
		fits: Object.keys(STARTING_SOAP_BANDS).map((response) => {
			const fit = refitted.get(response);
			const taken = standing[response];
			return {
				response,
				today: bandOf(own, response),
				leaks: pairs.filter((pair) => pair.response === response).length,
				...(fit && { refitted: { lowMm: rounded(fit.lowMm), highMm: rounded(fit.highMm) } }),
				...(taken && { taken: { before: taken.before, leaks: taken.leaks } })
			};
		})
	};
}

/** Fields of the starting values that put the re-fitted bands in use. METHOD W13. */
export function takeSoapBands(survey: Survey): BandChanges {
	const { fits } = soapBandFits(survey);
	const bands: Record<string, SoapBand> = { ...survey.startingValues.soapBands };
	const refits: Record<string, Refits[string]> = {};
	for (const { response, today, refitted, taken, leaks } of fits) {
		if (!refitted) continue;
		bands[response] = refitted;
		refits[response] = { before: taken?.before ?? today, after: refitted, leaks };
	}
	return { soapBands: bands, soapRefits: refits };
}

/** A round's totals at face value, with the bands in use and with the re-fitted ones. METHOD W13. */
export function totalsWithSoapBands(
	survey: Survey,
	roundId: string
): { readonly today: Totals; readonly then: Totals } {
	const { soapBands } = takeSoapBands(survey);
	const copy = { ...survey, startingValues: { ...survey.startingValues, soapBands } };
	return { today: assess(survey, roundId).totals, then: assess(copy, roundId).totals };
}

/** Fields of the starting values that put back what stood before the re-fit. METHOD W13. */
export function takeBackSoapBands({ startingValues }: Survey): BandChanges {
	const bands = { ...startingValues.soapBands };
	for (const [response, { before }] of Object.entries(standingRefits(startingValues))) {
		const { lowMm, highMm } = bandOf({}, response);
		if (before.lowMm === lowMm && before.highMm === highMm) delete bands[response];
		else bands[response] = before;
	}
	return { soapBands: bands, soapRefits: null };
}

/** A band that somebody set by hand after the re-fit is theirs. */
function standingRefits({ soapBands, soapRefits = {} }: StartingValues): Refits {
	return Object.fromEntries(
		Object.entries(soapRefits).filter(([response, { after }]) => {
			const now = Object.hasOwn(soapBands, response) ? soapBands[response] : undefined;
			return now?.lowMm === after.lowMm && now.highMm === after.highMm;
		})
	);
}

function beforeOf(refits: Refits): SoapBands {
	return Object.fromEntries(
		Object.entries(refits).map(([response, { before }]) => [response, before])
	);
}

function bandOf(own: SoapBands, response: string): SoapBand {
	const starting: SoapBands = STARTING_SOAP_BANDS;
	const band = (Object.hasOwn(own, response) ? own[response] : undefined) ?? starting[response];
	if (!band) throw new RangeError(`no band for ${response}`);
	return { lowMm: band.lowMm, highMm: band.highMm };
}

/** One pair for each leak that was measured after its soap was looked at: the newest. */
function soapPairs(survey: Survey): SoapPair[] {
	const air = siteConditions(survey.site);
	if (!air.ok) return [];
	const newest = roundsInOrder(survey)
		.map(({ id }) => id)
		.reverse();
	return leaksInOrder(survey).flatMap((leak) => {
		for (const roundId of newest) {
			const sighting = sightingIn(leak, roundId);
			const pair = sighting && pairOf(survey, leak, sighting, air.value);
			if (pair) return [pair];
		}
		return [];
	});
}

function pairOf(
	survey: Survey,
	leak: Leak,
	{ evidence, ...sighting }: Sighting,
	site: SiteAir
): SoapPair | undefined {
	if (!evidence || !('soapResponse' in evidence) || evidence.soapResponse === undefined)
		return undefined;
	const section = sectionOf(survey, leak);
	const pressure = pressureOf(sighting, section, survey.supply.setPressureBarGauge);
	if (!pressure.ok) return undefined;
	const area = effectiveArea(evidence, {
		linePressure: gaugeFromBar(pressure.value.value),
		lineTemperature: site.temperature,
		site,
		soapBands: {}
	});
	if (!area.ok) return undefined;
	return {
		response: evidence.soapResponse,
		areaM2: area.value.areaM2,
		relativeStandardUncertainty: area.value.relativeStandardUncertainty
	};
}

/** Three digits: a band is no better known, and it is a number for people to read and change. */
function rounded(mm: number): number {
	return Number(mm.toPrecision(3));
}
