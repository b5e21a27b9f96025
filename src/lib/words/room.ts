import type { RoomCheck } from '#lib/core/survey/schema.ts';
import { compressorRoom } from './compressor-room.ts';

/** The points of the compressor room: what they are called, and what to look for. */
export const ROOM_POINT_WORDS = compressorRoom.points;

/** What was found, and what is done about it. */
export const ROOM_FINDING_WORDS = compressorRoom.findings;

export function roomFoundWords({ finding }: Pick<RoomCheck, 'finding'>): string {
	return finding === undefined ? compressorRoom.somethingElse : ROOM_FINDING_WORDS[finding].found;
}

/** What is done about a finding; a rotary screw machine is left to its service engineer. */
export function roomActionWords({
	finding,
	rotaryScrew
}: Pick<RoomCheck, 'finding' | 'rotaryScrew'>): string {
	if (rotaryScrew && finding !== 'drain-rust') return compressorRoom.serviceEngineer;
	return finding === undefined ? compressorRoom.agree : ROOM_FINDING_WORDS[finding].action;
}

/** What a finding is called on the list: it hangs on no joint, so it has no number of a leak. */
export function roomTag(number: number): string {
	return `R${String(number)}`;
}
