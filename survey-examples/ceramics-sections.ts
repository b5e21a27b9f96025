import type { Section } from '../src/lib/core/survey/schema.ts';

/** What each valve of the demo works shuts. All of it is invented. */
export const SECTIONS = {
	compressors: {
		id: 'section-compressor-house',
		name: 'Compressor house',
		valve: 'V1, after receiver R2; stop C1, C2 and C3 as well',
		pressureBarGauge: 7.1,
		pressurisedHoursPerYear: 8760,
		volumeL: 5200,
		isolateMinutes: 20,
		ventMinutes: 25,
		restoreMinutes: 20,
		note: 'Feeds everything else: with V1 shut the whole works is without air.'
	},
	slip: {
		id: 'section-slip-house',
		name: 'Slip house',
		valve: 'V2, north wall of the compressor house, at head height',
		pressureBarGauge: 6.5,
		pressurisedHoursPerYear: 8400,
		volumeL: 180,
		isolateMinutes: 5,
		ventMinutes: 5,
		restoreMinutes: 10
	},
	presses: {
		id: 'section-press-hall',
		name: 'Press hall',
		valve: 'V3, on the pillar by press 4, chain wheel',
		pressureBarGauge: 6.9,
		pressurisedHoursPerYear: 8400,
		volumeL: 520,
		isolateMinutes: 15,
		ventMinutes: 10,
		restoreMinutes: 15
	},
	glaze: {
		id: 'section-glaze-line',
		name: 'Glaze line',
		valve: 'V4, above the door from the press hall',
		pressureBarGauge: 5.5,
		pressurisedHoursPerYear: 6240,
		volumeL: 310,
		isolateMinutes: 10,
		ventMinutes: 5,
		restoreMinutes: 15,
		note: 'Shut by the late shift on Saturday, opened on Monday.'
	},
	kilns: {
		id: 'section-kiln-hall',
		name: 'Kiln hall',
		valve: 'V5, west wall by the transfer car',
		pressureBarGauge: 6.8,
		pressurisedHoursPerYear: 8760,
		volumeL: 420,
		isolateMinutes: 25,
		ventMinutes: 10,
		restoreMinutes: 25,
		note: 'The kilns need their purge air day and night: agree any stop with the kiln foreman.'
	},
	sorting: {
		id: 'section-sorting',
		name: 'Sorting',
		valve: 'V6, over the passage to the kiln hall',
		pressureBarGauge: 6.4,
		pressurisedHoursPerYear: 6240,
		volumeL: 240,
		isolateMinutes: 10,
		ventMinutes: 5,
		restoreMinutes: 10
	},
	pallets: {
		id: 'section-pallet-line',
		name: 'Pallet line',
		valve: 'V7, north wall by the strapper',
		pressureBarGauge: 6.6,
		pressurisedHoursPerYear: 6240,
		volumeL: 210,
		isolateMinutes: 5,
		ventMinutes: 5,
		restoreMinutes: 10
	},
	workshop: {
		id: 'section-workshop',
		name: 'Workshop',
		valve: 'V8, south wall of the compressor house',
		pressureBarGauge: 6.9,
		pressurisedHoursPerYear: 8760,
		volumeL: 90,
		isolateMinutes: 5,
		ventMinutes: 3,
		restoreMinutes: 5
	}
} as const satisfies Record<string, Section>;

export type SectionKey = keyof typeof SECTIONS;
