import type { CommandBody } from '#lib/core/survey/command.ts';
import type { Photo } from '#lib/core/survey/schema.ts';
import type { ShrunkPhoto } from '#lib/plan/shrink-photo.ts';
import { newId, now } from '#lib/session/identity.ts';

/** The command that puts a photo with a leak; its bytes go beside it. */
export function photoTaken(
	leakId: string,
	roundId: string,
	photo: ShrunkPhoto,
	of: Photo['of']
): CommandBody {
	const { bytes: _, ...image } = photo;
	return {
		kind: 'add-photo',
		leakId,
		photo: { id: newId('photo'), image, roundId, of, takenAt: now() }
	};
}
