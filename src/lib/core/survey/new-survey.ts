import { SCHEMA_VERSION, type Round, type Site, type Survey } from './schema.ts';

/**
 * An empty survey with one round. It has no prices and no supply: those are asked for, because a
 * default would look like an answer.
 */
export function newSurvey(site: Pick<Site, 'id' | 'name' | 'currency'>, round: Round): Survey {
	return {
		schemaVersion: SCHEMA_VERSION,
		site: {
			...site,
			airTemperatureC: 20,
			reference: 'iso-1217',
			units: { pressure: 'bar', flow: 'L/s', length: 'mm' }
		},
		supply: {},
		prices: {},
		startingValues: { soapBands: {} },
		plans: {},
		sections: {},
		rounds: { [round.id]: round },
		leaks: {},
		systemTests: {}
	};
}
