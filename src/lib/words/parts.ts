import type { Hazard, Part } from '#lib/core/survey/parts.ts';

/** What leaks, in words. */
export const PART_WORDS: Readonly<Record<Part, string>> = {
	'threaded-joint': 'Threaded joint',
	'push-in-fitting': 'Push-in fitting',
	'quick-coupling': 'Quick coupling',
	hose: 'Hose',
	'hose-clip': 'Hose clip',
	'pipe-joint': 'Pipe joint',
	flange: 'Flange',
	valve: 'Valve',
	regulator: 'Regulator',
	'filter-bowl': 'Filter bowl',
	'lubricator-bowl': 'Lubricator bowl',
	gauge: 'Gauge',
	drain: 'Drain',
	cylinder: 'Cylinder',
	'blow-gun': 'Blow gun',
	tool: 'Tool',
	'pump-joint': 'Compressor pump joint',
	'pressure-vessel': 'Pressure vessel',
	other: 'Something else'
};

/** What makes the place risky, in words. */
export const HAZARD_WORDS: Readonly<Record<Hazard, string>> = {
	'at-height': 'At height',
	'hot-surface': 'Hot surface',
	'live-electrics': 'Live electrics',
	'moving-machinery': 'Moving machinery',
	'confined-space': 'Confined space',
	'rotary-screw': 'Rotary screw machine'
};
