import type { Area, Feed, Plan, Section } from '../src/lib/core/survey/schema.ts';
import { SECTIONS } from './ceramics-sections.ts';
import { INTO_SECTIONS, VALVES } from './plan-air.ts';
import type { Point } from './plan-ink.ts';
import { SHEET } from './plan.ts';

export const PLAN_FILE = 'ceramics-works-plan.svg';
export const GALLERY_FILE = 'ceramics-works-upper-floor.pdf';
/** What the app's own import makes of that PDF; a test holds the one to the other. */
export const GALLERY_PICTURE = 'ceramics-works-upper-floor.jpg';
export const PLAN_ID = 'plan-ground-floor';
const GALLERY_ID = 'plan-upper-floor';

/** Names of the bytes that the plans are made of. */
export interface PlanHashes {
	readonly ground: string;
	readonly gallery: string;
	readonly galleryPdf: string;
}

/** A place on the ground floor, from metres on its sheet. */
export function shares([x, y]: Point) {
	const share = (metres: number, of: number) => Number((metres / of).toFixed(5));
	return { x: share(x, SHEET.widthM), y: share(y, SHEET.heightM) };
}

export function plansOf({ ground, gallery, galleryPdf }: PlanHashes): Record<string, Plan> {
	const { widthPx, heightPx } = SHEET;
	return {
		[PLAN_ID]: {
			id: PLAN_ID,
			name: 'Ground floor',
			image: { sha256: ground, mediaType: 'image/svg+xml', name: PLAN_FILE, widthPx, heightPx },
			compressorRoom: shares([13, 27]),
			scale: { from: shares([5, 52]), to: shares([91, 52]), metres: 86 },
			northDegrees: 0,
			level: 'Ground floor'
		},
		[GALLERY_ID]: {
			id: GALLERY_ID,
			name: 'Upper floor',
			image: {
				sha256: gallery,
				mediaType: 'image/jpeg',
				widthPx: 4096,
				heightPx: 2560
			},
			original: {
				sha256: galleryPdf,
				mediaType: 'application/pdf',
				name: GALLERY_FILE,
				page: 1
			},
			scale: { from: { x: 0.6875, y: 0.89 }, to: { x: 0.84375, y: 0.89 }, metres: 5 },
			level: 'Upper floor'
		}
	};
}

/** Where the sections lie on the ground floor: two corners across, in metres on the sheet. */
const ROOMS: Readonly<Record<keyof typeof SECTIONS, readonly [Point, Point]>> = {
	compressors: [
		[5, 21],
		[21, 35]
	],
	slip: [
		[5, 5],
		[21, 21]
	],
	presses: [
		[21, 5],
		[45, 29]
	],
	glaze: [
		[21, 29],
		[45, 52]
	],
	kilns: [
		[45, 5],
		[91, 30]
	],
	sorting: [
		[45, 30],
		[68, 52]
	],
	pallets: [
		[68, 30],
		[91, 52]
	],
	workshop: [
		[5, 35],
		[21, 52]
	]
};

export function areas(): Record<string, Area> {
	return {
		...groundAreas(),
		'area-press-gallery': {
			id: 'area-press-gallery',
			planId: GALLERY_ID,
			name: 'Press hall, gallery',
			outline: [
				{ x: 0.09375, y: 0.15 },
				{ x: 0.90625, y: 0.15 },
				{ x: 0.90625, y: 0.75 },
				{ x: 0.09375, y: 0.75 }
			],
			use: { kind: 'section', sectionId: SECTIONS.presses.id }
		}
	};
}

function groundAreas(): Record<string, Area> {
	return Object.fromEntries(
		Object.entries(ROOMS).map(([key, [[left, top], [right, bottom]]]): [string, Area] => {
			const { id: sectionId } = SECTIONS[key as keyof typeof SECTIONS];
			const corners: Point[] = [
				[left, top],
				[right, top],
				[right, bottom],
				[left, bottom]
			];
			const id = `area-${key}`;
			const use = { kind: 'section', sectionId } as const;
			return [id, { id, planId: PLAN_ID, outline: corners.map(shares), use }];
		})
	);
}

/** Where a section's isolating valve is, and which way its air goes: its words begin with the valve's number. */
export function valveAndWay(valve: string | undefined): Pick<Section, 'valveAt' | 'feedAt'> {
	const found = VALVES.find(({ name }) => valve?.startsWith(`${name},`));
	if (!found) return {};
	const [from, to] = INTO_SECTIONS[found.name];
	return {
		valveAt: { planId: PLAN_ID, at: shares(found.at) },
		feedAt: { planId: PLAN_ID, from: shares(from), to: shares(to) }
	};
}

/** The main line starts behind V1; everything else hangs on it. */
export function feeds(id: string): Feed[] {
	const { compressors } = SECTIONS;
	return id === compressors.id
		? [{ kind: 'station' }]
		: [{ kind: 'section', sectionId: compressors.id }];
}
