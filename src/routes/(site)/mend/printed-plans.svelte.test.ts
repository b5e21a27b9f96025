import { jsPDF } from 'jspdf';
import * as pdfjs from 'pdfjs-dist';
import { expect, test } from 'vitest';
import { newSurvey } from '#lib/core/survey/new-survey.ts';
import type { Leak, Plan, PlanPoint, Survey } from '#lib/core/survey/schema.ts';
import { assess } from '#lib/core/weigh/assess.ts';
import { cutPlan, type Cut } from '#lib/plan/cut-plan.ts';
import { openPlanFile } from '#lib/plan/open-plan.ts';
import { WHOLE } from '#lib/plan/view.ts';
import { fixListModel } from '#lib/report/fix-list-model.ts';
import { loadPdfFonts } from '#lib/report/load-assets.ts';
import { buildFixListPdf } from '#lib/report/pdf/fix-list-pdf.ts';
import type { PaperName } from '#lib/report/paper.ts';
import type { OpenSurvey } from '#lib/session/open-survey.svelte.ts';
import { createFormat } from '#lib/words/format.ts';
import { cutPlans } from './cut-plans.ts';

const ROUND = 'round-1';
/** How far a printed pin may be from what it marks, as a share of the plan's width. */
const LIMIT = 0.005;
const GROUND = '#f4f4c0';

/** A sheet with a large red target, which a pin on its middle leaves to be seen all round. */
async function target(width: number, height: number, x: number, y: number): Promise<Blob> {
	const canvas = new OffscreenCanvas(width, height);
	const context = canvas.getContext('2d');
	if (!context) throw new Error('no canvas');
	context.fillStyle = GROUND;
	context.fillRect(0, 0, width, height);
	context.fillStyle = 'red';
	context.beginPath();
	context.arc(x * width, y * height, width / 22, 0, 7);
	context.fill();
	return canvas.convertToBlob({ type: 'image/png' });
}

function printedTarget(width: number, height: number, x: number, y: number): Blob {
	const pdf = new jsPDF({ unit: 'pt', format: [width, height], orientation: 'l' });
	pdf.setFillColor(GROUND);
	pdf.rect(0, 0, width, height, 'F');
	pdf.setFillColor(255, 0, 0);
	pdf.circle(x * width, y * height, width / 22, 'F');
	return new Blob([pdf.output('arraybuffer')]);
}

interface Held {
	readonly survey: Survey;
	readonly blobs: ReadonlyMap<string, Blob>;
}

/** A site with that plan, a leak at each of the places. */
async function siteWith(file: Blob, cut: Cut, places: readonly PlanPoint[]): Promise<Held> {
	const source = await openPlanFile(new File([file], 'plan'));
	if (!source.ok) throw new Error(source.error.code);
	const made = await cutPlan(source.value, 1, cut);
	source.value.close();
	if (!made.ok) throw new Error(made.error.code);
	const { image, original, blobs } = made.value;
	const plan: Plan = { id: 'plan-1', name: 'Hall', image, ...(original && { original }) };
	const leaks = places.map((at, index): Leak => ({
		id: `leak-${String(index + 1)}`,
		tag: index + 1,
		planId: plan.id,
		at,
		part: 'hose',
		hazards: [],
		sightings: { [ROUND]: { state: 'leaking', seenAt: '2026-03-02T09:00:00Z' } },
		mendings: {}
	}));
	const empty = newSurvey(
		{ id: 'site-1', name: 'Works', currency: 'EUR' },
		{ id: ROUND, name: 'Round', startedAt: '2026-03-02T08:00:00Z' }
	);
	return {
		survey: {
			...empty,
			plans: { [plan.id]: plan },
			leaks: Object.fromEntries(leaks.map((leak) => [leak.id, leak]))
		},
		blobs: new Map(
			blobs.map(({ sha256, bytes, mediaType }) => [sha256, new Blob([bytes], { type: mediaType })])
		)
	};
}

/** Prints the fix list as the screen does, and gives its pages from the first with the plan on. */
async function printed({ survey, blobs }: Held, paper: PaperName): Promise<ImageData[]> {
	const model = fixListModel(survey, assess(survey, ROUND), {
		format: createFormat({ locale: 'en-GB', currency: 'EUR', units: survey.site.units }),
		printedAt: '2026-03-10T07:30:00Z'
	});
	const open = {
		survey,
		blob: async (sha256: string) => {
			const blob = blobs.get(sha256);
			return (
				blob && { sha256, mediaType: blob.type, bytes: new Uint8Array(await blob.arrayBuffer()) }
			);
		}
	} as Partial<OpenSurvey> as OpenSurvey;
	const { sheets, spots, missing } = await cutPlans(
		open,
		model,
		paper,
		new AbortController().signal,
		() => undefined
	);
	expect(missing).toEqual([]);
	expect(spots.size).toBe(Object.keys(survey.leaks).length);
	const fonts = await loadPdfFonts();
	const bytes = buildFixListPdf(model, { fonts, paper, planImages: sheets, photos: spots });
	const document = await pdfjs.getDocument({ data: bytes, verbosity: 0 }).promise;
	const pages: ImageData[] = [];
	for (let number = 1; number <= document.numPages; number++) {
		const page = await document.getPage(number);
		const { items } = await page.getTextContent();
		const text = items.map((item) => ('str' in item ? item.str : '')).join(' ');
		if (!text.includes('tag on the joint') || text.includes('its sheets')) continue;
		const viewport = page.getViewport({ scale: 2 });
		const canvas = window.document.createElement('canvas');
		[canvas.width, canvas.height] = [viewport.width, viewport.height];
		await page.render({ canvas, viewport, background: 'white' }).promise;
		const context = canvas.getContext('2d');
		if (context) pages.push(context.getImageData(0, 0, canvas.width, canvas.height));
	}
	return pages;
}

/** The box round the points of a picture that a colour test picks out. */
function boxOf(
	{ data, width }: ImageData,
	picks: (red: number, green: number, blue: number) => boolean,
	within?: { left: number; right: number; top: number; bottom: number }
) {
	const box = { left: Infinity, right: -Infinity, top: Infinity, bottom: -Infinity };
	for (let at = 0; at < data.length; at += 4) {
		const [x, y] = [(at / 4) % width, Math.floor(at / 4 / width)];
		if (within && (x < within.left || x > within.right || y < within.top || y > within.bottom))
			continue;
		if (!picks(data[at] ?? 0, data[at + 1] ?? 0, data[at + 2] ?? 0)) continue;
		box.left = Math.min(box.left, x);
		box.right = Math.max(box.right, x);
		box.top = Math.min(box.top, y);
		box.bottom = Math.max(box.bottom, y);
	}
	return { ...box, x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
}

const isRed = (red: number, green: number, blue: number) => red > 180 && green < 90 && blue < 90;
const isDark = (red: number) => red < 60;
const isGround = (red: number, green: number, blue: number) =>
	red > 225 && green > 225 && blue > 150 && blue < 215;

/** How far the pin on a page is from the target below it, in shares of the shown plan's width. */
function miss(page: ImageData): number {
	const red = boxOf(page, isRed);
	const pin = boxOf(page, isDark, red);
	const plan = boxOf(page, isGround);
	expect(red.right - red.left).toBeGreaterThan(pin.right - pin.left);
	return Math.hypot(red.x - pin.x, red.y - pin.y) / (plan.right - plan.left);
}

// derived: after one quarter turn clockwise (x, y) is at (1 − y, x); the crop then shifts and sizes it
const TURNED: Cut = { quarterTurns: 1, crop: { x: 0.1, y: 0.05, width: 0.8, height: 0.7 } };
const ON_TURNED = { x: (1 - 0.45 - 0.1) / 0.8, y: (0.3 - 0.05) / 0.7 };

test.each([
	['a PDF as it is', () => printedTarget(842, 595, 0.3, 0.45), undefined, { x: 0.3, y: 0.45 }],
	['a PDF turned and cut', () => printedTarget(842, 595, 0.3, 0.45), TURNED, ON_TURNED],
	['a scan turned and cut', () => target(1800, 1300, 0.3, 0.45), TURNED, ON_TURNED]
] as const)(
	'a pin is printed where it was set: %s',
	async (_what, make, cut, at) => {
		const held = await siteWith(await make(), cut ?? { quarterTurns: 0, crop: WHOLE }, [at]);
		for (const paper of ['a4', 'a3'] as const) {
			const [page, ...others] = await printed(held, paper);
			if (!page) throw new Error('no plan was printed');
			expect(others).toHaveLength(0);
			expect(miss(page)).toBeLessThan(LIMIT);
		}
	},
	60_000
);

test('a pin is printed where it was set: a photograph that was straightened', async () => {
	// The diagonals of a sheet cross at its middle, in a photograph too (law of perspective).
	const corners = [
		{ x: 0.2, y: 0.12 },
		{ x: 0.82, y: 0.2 },
		{ x: 0.9, y: 0.9 },
		{ x: 0.1, y: 0.82 }
	] as const;
	const [p, q, r, s] = corners;
	const u = { x: r.x - p.x, y: r.y - p.y };
	const v = { x: s.x - q.x, y: s.y - q.y };
	const t = ((q.x - p.x) * v.y - (q.y - p.y) * v.x) / (u.x * v.y - u.y * v.x);
	const photograph = await target(1400, 1400, p.x + t * u.x, p.y + t * u.y);
	const held = await siteWith(photograph, { quarterTurns: 0, crop: WHOLE, corners }, [
		{ x: 0.5, y: 0.5 }
	]);
	const [page] = await printed(held, 'a4');
	if (!page) throw new Error('no plan was printed');
	// A disc in perspective is an egg: the middle of its box is a little beside its own.
	expect(miss(page)).toBeLessThan(LIMIT);
}, 60_000);

test('a pin on a sheet of a divided plan is printed where it was set', async () => {
	const target = { x: 0.3, y: 0.45 };
	const crowd = Array.from({ length: 140 }, (_, index) => ({
		x: 0.6 + 0.38 * ((index * 0.618034) % 1),
		y: (index * 0.7071) % 1
	}));
	const held = await siteWith(
		printedTarget(842, 595, target.x, target.y),
		{ quarterTurns: 0, crop: WHOLE },
		[target, ...crowd]
	);
	const pages = await printed(held, 'a4');
	expect(pages.length).toBeGreaterThan(1);
	const withTarget = pages.filter((page) => {
		const red = boxOf(page, isRed);
		return red.right - red.left > 20 && boxOf(page, isDark, red).right > 0;
	});
	expect(withTarget.length).toBeGreaterThan(0);
	expect(Math.min(...withTarget.map(miss))).toBeLessThan(LIMIT);
}, 90_000);
