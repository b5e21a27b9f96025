import { siteAir } from '#lib/core/air/atmosphere.ts';
import { STARTING_SOAP_BANDS, type SoapResponseId } from '#lib/core/air/evidence/soap-response.ts';
import { leakFlow } from '#lib/core/air/leak-flow.ts';
import { gaugeFromBar, kelvinFromCelsius } from '#lib/core/units/convert.ts';
import { as } from '#lib/core/units/quantity.ts';

/** The pressure that the card's flows are stated at, bar gauge: a common working pressure. */
export const CARD_BAR_GAUGE = 7;

/** A row of the card: what the film does, and what that may lose. */
export interface CardRow {
	readonly response: SoapResponseId;
	/** The ideal round holes that it may stand for, mm. */
	readonly lowMm: number;
	readonly highMm: number;
	/** Free air at ISO 1217, m³/s, of the smallest and the largest of them. */
	readonly lowM3S: number;
	readonly highM3S: number;
}

/** The starting soap bands as flows at the card's pressure, at sea level and 20 °C, mildest first. */
export function cardRows(): readonly CardRow[] {
	return (Object.keys(STARTING_SOAP_BANDS) as SoapResponseId[]).map((response) => {
		const { lowMm, highMm } = STARTING_SOAP_BANDS[response];
		return {
			response,
			lowMm,
			highMm,
			lowM3S: freeAirOf(lowMm),
			highM3S: freeAirOf(highMm)
		};
	});
}

/** What an ideal round hole loses to the air around it, m³/s at ISO 1217. */
function freeAirOf(diameterMm: number): number {
	const temperature = kelvinFromCelsius(20);
	const site = siteAir({ temperature, altitude: as<'m'>(0) });
	if (!site.ok) throw new Error('the air at sea level is known');
	const flow = leakFlow(
		{ kind: 'hole', diameterMm, edge: 'unknown', coefficient: 1 },
		{
			linePressure: gaugeFromBar(CARD_BAR_GAUGE),
			lineTemperature: temperature,
			site: site.value,
			soapBands: {},
			reference: 'iso-1217'
		}
	);
	if (!flow.ok) throw new Error(`a hole of the card has no flow: ${flow.error.code}`);
	return flow.value.freeAir;
}
