/** The points of the short round through the compressor room, in the order of walking up to a machine. */
export const ROOM_POINTS = [
	'condensate-drain',
	'timed-drain',
	'intake-filter',
	'oil-level',
	'belt-tension',
	'head-bolts',
	'pump-joints'
] as const;
export type RoomPoint = (typeof ROOM_POINTS)[number];

/** What can be found at a point. */
export const ROOM_FINDINGS = [
	'drain-rust',
	'drain-no-water',
	'drain-stuck-open',
	'drain-stuck-shut',
	'filter-dirty',
	'filter-hard',
	'oil-low',
	'oil-high',
	'belt-slack',
	'belt-tight',
	'belt-worn',
	'bolts-loose',
	'joint-leaks'
] as const;
export type RoomFindingKind = (typeof ROOM_FINDINGS)[number];

export const FINDINGS_AT: Readonly<Record<RoomPoint, readonly RoomFindingKind[]>> = {
	'condensate-drain': ['drain-rust', 'drain-no-water'],
	'timed-drain': ['drain-stuck-open', 'drain-stuck-shut'],
	'intake-filter': ['filter-dirty', 'filter-hard'],
	'oil-level': ['oil-low', 'oil-high'],
	'belt-tension': ['belt-slack', 'belt-tight', 'belt-worn'],
	'head-bolts': ['bolts-loose'],
	'pump-joints': ['joint-leaks']
};

/** What can be looked at on a rotary screw machine from outside; the rest is its service engineer's. */
export const POINTS_OUTSIDE: readonly RoomPoint[] = ['condensate-drain', 'timed-drain'];
