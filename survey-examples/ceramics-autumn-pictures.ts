import { createHash } from 'node:crypto';
import type { Photo } from '../src/lib/core/survey/schema.ts';
import type { StoredBlob } from '../src/lib/storage/file/write-survey-file.ts';
import { leakPicture, PICTURE_PX, type Scene } from './leak-pictures.ts';

/** One picture of the demo: whose, when, and what is on it. */
interface Shot {
	readonly tag: number;
	readonly scene: Scene;
	readonly of: Photo['of'];
	/** Taken on the walk in autumn; else in the round before. */
	readonly inAutumn: boolean;
	readonly foaming: boolean;
	readonly takenAt: string;
	readonly caption: string;
}

const before = (tag: number, scene: Scene, caption: string): Shot => ({
	tag,
	scene,
	of: 'leak',
	inAutumn: false,
	foaming: true,
	takenAt: `2026-04-${tag < 25 ? '14' : '15'}T09:00:00+02:00`,
	caption
});
const mended = (tag: number, scene: Scene, day: string, caption: string): Shot => ({
	tag,
	scene,
	of: 'mending',
	inAutumn: false,
	foaming: false,
	takenAt: `2026-${day}T11:30:00+02:00`,
	caption
});
const autumn = (tag: number, scene: Scene, caption: string): Shot => ({
	tag,
	scene,
	of: 'leak',
	inAutumn: true,
	foaming: true,
	takenAt: '2026-10-13T09:00:00+02:00',
	caption
});

const SHOTS: readonly Shot[] = [
	before(6, 'coupling', 'Film blown away at the wall coupling'),
	mended(6, 'coupling', '04-28', 'New coupling, dry under soap'),
	before(7, 'gun', 'Gun passes on its hook'),
	mended(7, 'gun', '05-09', 'New trigger valve'),
	before(8, 'hose', 'Crack at the first turn of the reel'),
	mended(8, 'hose', '05-09', 'New hose'),
	before(10, 'pipe', 'Air inlet elbow of P1'),
	autumn(10, 'pipe', 'The same elbow, said to be mended in May'),
	before(20, 'coupling', 'Coupling at hip height'),
	autumn(20, 'coupling', 'Foam again where it was tight in April'),
	before(22, 'hose', 'Split behind the ferrule'),
	mended(22, 'hose', '05-09', 'Hose cut back and a new ferrule'),
	before(24, 'gun', 'Gun hangs open on its hose'),
	autumn(24, 'gun', 'Hangs open again'),
	before(34, 'pipe', 'Purge valve 5 passes'),
	mended(34, 'pipe', '05-23', 'New valve, sealed and dry'),
	before(44, 'hose', 'Gripper hose at the wrist'),
	mended(44, 'hose', '05-23', 'New hose with a longer loop'),
	autumn(49, 'hose', 'Hose rubs on the frame')
];

/** The pictures of the autumn file, each with the leak that it is of. */
export function autumnPictures(
	springId: string,
	autumnId: string
): readonly { readonly tag: number; readonly photo: Photo; readonly blob: StoredBlob }[] {
	return SHOTS.map(({ tag, scene, of, inAutumn, foaming, takenAt, caption }, index) => {
		const bytes = new TextEncoder().encode(leakPicture(tag, scene, foaming, of === 'mending'));
		const mediaType = 'image/svg+xml';
		const sha256 = createHash('sha256').update(bytes).digest('hex');
		const photo: Photo = {
			id: `photo-demo-${String(index + 1).padStart(2, '0')}`,
			image: { sha256, mediaType, ...PICTURE_PX },
			roundId: inAutumn ? autumnId : springId,
			of,
			takenAt,
			caption
		};
		return { tag, photo, blob: { sha256, mediaType, bytes } };
	});
}
