/**
 * What leaks, what is done about it, and what makes the place risky. These are words of the trade;
 * the starting action of a part is our own starting value, and the user can change it on each leak.
 */
export const PARTS = [
	'threaded-joint',
	'push-in-fitting',
	'quick-coupling',
	'hose',
	'hose-clip',
	'pipe-joint',
	'flange',
	'valve',
	'regulator',
	'filter-bowl',
	'lubricator-bowl',
	'gauge',
	'drain',
	'cylinder',
	'blow-gun',
	'tool',
	'pump-joint',
	'pressure-vessel',
	'other'
] as const;
export type Part = (typeof PARTS)[number];

export const ACTIONS = [
	'nip-up',
	'remake-thread',
	'replace-fitting',
	'replace-coupling',
	'replace-hose',
	'replace-clip',
	'replace-seal',
	'replace-gasket',
	'replace-valve',
	'replace-bowl',
	'replace-gauge',
	'mend-drain',
	'close-off',
	'service-engineer',
	'out-of-service',
	'other'
] as const;
export type Action = (typeof ACTIONS)[number];

/** What about the place asks for a caution of its own. */
export const HAZARDS = [
	'at-height',
	'hot-surface',
	'live-electrics',
	'moving-machinery',
	'confined-space',
	'rotary-screw'
] as const;
export type Hazard = (typeof HAZARDS)[number];

/** The action that a part starts with; our starting values. */
export const STARTING_ACTION: Readonly<Record<Part, Action>> = {
	'threaded-joint': 'remake-thread',
	'push-in-fitting': 'replace-fitting',
	'quick-coupling': 'replace-coupling',
	hose: 'replace-hose',
	'hose-clip': 'replace-clip',
	'pipe-joint': 'remake-thread',
	flange: 'replace-gasket',
	valve: 'replace-valve',
	regulator: 'replace-seal',
	'filter-bowl': 'replace-bowl',
	'lubricator-bowl': 'replace-bowl',
	gauge: 'replace-gauge',
	drain: 'mend-drain',
	cylinder: 'replace-seal',
	'blow-gun': 'replace-seal',
	tool: 'replace-seal',
	'pump-joint': 'nip-up',
	'pressure-vessel': 'out-of-service',
	other: 'other'
};
