import type { RoomCheck, Survey } from '../survey/schema.ts';
import { ROOM_POINTS } from '../survey/room-points.ts';
import { cautionsForRoom, type Caution } from './cautions.ts';

/** Something found in the compressor room, as work to be done. */
export interface RoomFinding {
	readonly check: RoomCheck;
	/** Its number on the list of the round, which no tick changes. */
	readonly number: number;
	/** A rotary screw machine: its service engineer puts it right. */
	readonly forEngineer: boolean;
	readonly done: boolean;
	/** Rust out of a tank: first, whatever else there is. */
	readonly pinnedFirst: boolean;
	/** Never empty. */
	readonly cautions: readonly Caution[];
}

/** The checks of a round that stand, by machine and in the order of the points. */
export function roomChecksOf(survey: Survey, roundId: string): RoomCheck[] {
	const machines = new Map<string, RoomCheck[]>();
	for (const check of Object.values(survey.roomChecks ?? {}))
		if (!check.removed && check.roundId === roundId)
			machines.set(check.machine, [...(machines.get(check.machine) ?? []), check]);
	return [...machines.values()].flatMap((checks) =>
		checks.toSorted(
			(a, b) =>
				ROOM_POINTS.indexOf(a.point) - ROOM_POINTS.indexOf(b.point) || (a.id < b.id ? -1 : 1)
		)
	);
}

/** What the round through the compressor room found, what must come first ahead, what is done last. */
export function roomFindings(survey: Survey, roundId: string): RoomFinding[] {
	return roomChecksOf(survey, roundId)
		.filter(({ outcome }) => outcome === 'finding')
		.map((check, index) => ({
			check,
			number: index + 1,
			forEngineer: check.rotaryScrew ?? false,
			done: check.mendedAt !== undefined,
			pinnedFirst: check.finding === 'drain-rust',
			cautions: cautionsForRoom(check)
		}))
		.toSorted(
			(a, b) => Number(a.done) - Number(b.done) || Number(b.pinnedFirst) - Number(a.pinnedFirst)
		);
}
