import type { RoomCheck } from '#lib/core/survey/schema.ts';

/** What can be written down of a finding in the compressor room; each becomes a command at once. */
export interface RoomLog {
	putRight: (check: RoomCheck, done: boolean) => void;
	couldNot: (check: RoomCheck, why: string | undefined) => void;
	note: (check: RoomCheck, note: string | undefined) => void;
}
