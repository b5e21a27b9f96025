import { readyYear } from '#lib/core/supply/supply-year.ts';
import { yearWithLeaks } from '#lib/core/supply/year.ts';
import { STARTING_CONTROL } from '#lib/core/supply/starting-values.ts';
import { as } from '#lib/core/units/quantity.ts';
import { median, type Row } from './measure.ts';

/** A year's energy of a large station, with its leaks and without. */
export async function supplyYear(): Promise<Row[]> {
	const ready = readyYear(
		{
			station: {
				compressors: Array.from({ length: 6 }, (_, index) => ({
					id: `machine-${index}`,
					name: '',
					build: 'screw' as const,
					capacityM3PerMin: 10,
					loadedKw: 65,
					ratedPressureBarGauge: 7,
					control: STARTING_CONTROL['load-unload'].control
				})),
				trimId: null,
				receiverVolumeM3: 5,
				pipingVolumeM3: 2
			},
			schedule: {
				periods: Array.from({ length: 40 }, (_, index) => ({
					id: `period-${index}`,
					name: '',
					days: [Math.floor(index / 6)],
					fromMin: (index % 6) * 240,
					toMin: ((index % 6) + 1) * 240,
					air: { state: 'on' as const, demandM3PerMin: 5 + index, setPressureBarGauge: 7 },
					priceId: null
				})),
				weeksPerYear: 50,
				closed: { state: 'off' },
				closedPriceId: null
			},
			demandIs: 'delivered',
			purge: { kind: 'none' }
		},
		as<'Pa absolute'>(100_000)
	);
	if (!ready.ok) throw new Error(ready.error.code);
	const leaks = Float64Array.from(ready.value.year.parts, ({ air }) =>
		air.state === 'on' ? 3 : 0
	);
	const ms = await median(201, () => yearWithLeaks(ready.value, leaks));
	return [
		{ what: 'a year of 6 machines × 40 periods, with and without leaks', ms, target: '≤ 1 ms' }
	];
}
