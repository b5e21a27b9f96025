import { describe, expect, it } from 'vitest';
import { newSurvey } from '../survey/new-survey.ts';
import type { Survey } from '../survey/schema.ts';
import { startingStation } from '../survey/starting-station.ts';
import { stationReport } from './station-report.ts';

const ROUND = { id: 'round-1', name: 'First', startedAt: '2026-01-05T08:00:00Z' };

/** A throttled machine of 10 m³/min and 60 kW that delivers 7, of which one leak is 1 m³/min. */
function survey(): Survey {
	const empty = newSurvey({ id: 'site-a', name: 'A', currency: 'EUR' }, ROUND);
	const station = startingStation(
		{
			id: 'machine-a',
			name: 'A',
			capacityM3PerMin: 10,
			loadedKw: 60,
			ratedPressureBarGauge: 7,
			choice: 'throttled'
		},
		'period-a'
	);
	return {
		...empty,
		site: { ...empty.site, barometerKPa: 100 },
		supply: { setPressureBarGauge: 7, station },
		leaks: {
			'leak-a': {
				id: 'leak-a',
				tag: 1,
				part: 'hose',
				hazards: [],
				sightings: {
					[ROUND.id]: {
						state: 'leaking',
						seenAt: '2026-01-05T09:00:00Z',
						evidence: { kind: 'meter', flowLPerS: 1000 / 60, reference: 'iso-1217' }
					}
				},
				mendings: {}
			}
		}
	};
}

describe('station report', () => {
	it('[S7][S12][W4] what each part draws with the leaks and without (derived by hand)', () => {
		const report = stationReport(survey());
		if (!report.ok) throw new Error(report.error.code);
		const { parts, outcome, leaks, capacityM3PerMin } = report.value;
		// P = 60·(1 − 0.3·(1 − q/10)): 54.6 kW at 7, 52.8 kW at 6 m³/min.
		expect(parts[0]?.now?.powerKw).toBeCloseTo(54.6, 9);
		expect(parts[0]?.without?.powerKw).toBeCloseTo(52.8, 6);
		expect(parts[0]?.now?.machines).toMatchObject([{ id: 'machine-a', role: 'trim' }]);
		expect(outcome.savingKwh / (parts[0]?.outcome.hours ?? NaN)).toBeCloseTo(1.8, 6);
		expect(parts[1]).toMatchObject({ outcome: { id: 'closed', delivered: null } });
		expect(parts[1]?.now).toBeUndefined();
		expect({ leaks, capacityM3PerMin }).toEqual({
			leaks: { counted: 1, unweighed: 0 },
			capacityM3PerMin: 10
		});
	});

	it('[S12] without a round no leak is counted', () => {
		const report = stationReport({ ...survey(), rounds: {} });
		expect(report).toMatchObject({ ok: true, value: { outcome: { savingKwh: 0 } } });
	});

	it('refuses a survey without machines or without air', () => {
		expect(stationReport({ ...survey(), supply: {} })).toMatchObject({
			error: { code: 'station-missing' }
		});
		const { site } = survey();
		const airless = { ...site, barometerKPa: 1 };
		expect(stationReport({ ...survey(), site: airless })).toMatchObject({
			error: { code: 'barometer-out-of-range' }
		});
	});
});
