import type { Action, Hazard, Part } from '../survey/parts.ts';
import type { RoomPoint } from '../survey/room-points.ts';

/** Where a caution is printed: before all jobs, with each section, or with each job it fits. */
export type CautionPlace = 'headline' | 'section' | 'job';

/** How far we stand behind where a caution comes from. */
export interface CautionOrigin {
	readonly source: string;
	/** `verified`: we read the text; `common practice`: no document is claimed. */
	readonly status: 'verified' | 'common practice';
}

/** All that is named must fit; within one list any member does. */
export interface Condition {
	readonly actions?: readonly Action[];
	readonly parts?: readonly Part[];
	readonly hazards?: readonly Hazard[];
	/** Points of the compressor room; such a condition is never that of a leak. */
	readonly room?: readonly RoomPoint[];
	/** True for work whose isolating valve nobody has named yet. */
	readonly valveUnknown?: true;
}

/** A caution, and the work that calls for it: any one of its conditions is enough. */
export interface CautionRule {
	/** METHOD id. */
	readonly id: `C${number}`;
	readonly key: string;
	readonly when: 'always' | readonly Condition[];
	readonly text: string;
	readonly origin: CautionOrigin;
	readonly where: readonly CautionPlace[];
}

export const practice: CautionOrigin = { source: 'trade practice', status: 'common practice' };
