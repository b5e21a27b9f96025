import type { Compressor, Control, SupplyStation } from '../src/lib/core/survey/station-schema.ts';

/** The machines and the week of the demo works. All of it is invented. */

const LOAD_UNLOAD = {
	kind: 'cycling',
	unloadedFraction: 0.26,
	unloadStartFraction: 0.85,
	blowDownS: 35,
	runOnS: null,
	pressureBandBar: 0.7
} as const satisfies Control;

const C1: Compressor = {
	id: 'compressor-c1',
	name: 'C1',
	build: 'screw',
	capacityM3PerMin: 7.1,
	loadedKw: 47,
	ratedPressureBarGauge: 7.5,
	control: LOAD_UNLOAD
};

const C2: Compressor = {
	...C1,
	id: 'compressor-c2',
	name: 'C2, the older one',
	loadedKw: 49
};

const C3: Compressor = {
	...C1,
	id: 'compressor-c3',
	name: 'C3, trim',
	capacityM3PerMin: 8,
	loadedKw: 54,
	control: {
		kind: 'variable-speed',
		minimumFraction: 0.3,
		minimumPowerFraction: 0.36,
		below: { ...LOAD_UNLOAD, runOnS: 300 }
	}
};

export const C1_CAPACITY_M3_PER_MIN = C1.capacityM3PerMin;
const SET_PRESSURE_BAR_GAUGE = 7;
const hour = (hours: number) => hours * 60;

function week(
	name: 'early' | 'late' | 'night' | 'saturday' | 'weekend',
	days: readonly number[],
	[from, to]: readonly [number, number],
	demandM3PerMin: number,
	part = ''
): SupplyStation['schedule']['periods'][number] {
	return {
		id: `period-${name}${part}`,
		name: NAMES[name],
		days: [...days],
		fromMin: hour(from),
		toMin: hour(to),
		air: { state: 'on', demandM3PerMin, setPressureBarGauge: SET_PRESSURE_BAR_GAUGE },
		priceId: null
	};
}

const NAMES = {
	early: 'Early shift',
	late: 'Late shift',
	night: 'Night, kilns and slip only',
	saturday: 'Saturday shift',
	weekend: 'Weekend, kilns only'
} as const;

const WORKDAYS = [0, 1, 2, 3, 4];

/** What is delivered in each period was read off the flow log, leaks included. */
export const STATION: SupplyStation = {
	compressors: [C1, C2, C3],
	trimId: C3.id,
	receiverVolumeM3: 5,
	pipingVolumeM3: 2.1,
	demandIs: 'delivered',
	schedule: {
		periods: [
			week('early', WORKDAYS, [6, 14], 17.2),
			week('late', WORKDAYS, [14, 22], 15.8),
			week('night', WORKDAYS, [22, 6], 9.1),
			week('saturday', [5], [6, 14], 12.6),
			week('weekend', [5], [14, 24], 6.3, '-saturday'),
			week('weekend', [6], [0, 24], 6.3, '-sunday'),
			week('weekend', [0], [0, 6], 6.3, '-monday')
		],
		weeksPerYear: 50,
		closed: { state: 'on', demandM3PerMin: 5.2, setPressureBarGauge: SET_PRESSURE_BAR_GAUGE },
		closedPriceId: null
	},
	purge: { kind: 'none' }
};
