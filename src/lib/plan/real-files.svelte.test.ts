import { describe, expect, test } from 'vitest';
import demoPicture from '../../../survey-examples/ceramics-works-upper-floor.jpg?url';
import demoPdf from '../../../survey-examples/ceramics-works-upper-floor.pdf?url';
import { redMarkOf } from '../../../tests/fixtures/red-mark.ts';
import { refusalSentence } from '#lib/words/refusals.ts';
import { cutPlan, type Cut } from './cut-plan.ts';
import { openPlanFile } from './open-plan.ts';
import { WHOLE } from './view.ts';

/** Files that other programs wrote; MADE.md beside them says which, and how. */
const ADDRESSES = import.meta.glob<string>(
	'../../../tests/fixtures/plan-files/*.{png,jpg,webp,svg,pdf,tif,gif,heic}',
	{ query: '?url', import: 'default', eager: true }
);
/** Where the mark is on all of them (by how they were made). */
const MARK = { x: 0.3, y: 0.7 };
const AS_IT_IS: Cut = { quarterTurns: 0, crop: WHOLE };

async function fileOf(name: string): Promise<Uint8Array<ArrayBuffer>> {
	const address = Object.entries(ADDRESSES).find(([path]) => path.endsWith(`/${name}`))?.[1];
	if (address === undefined) throw new Error(`no file ${name}`);
	return bytesAt(address);
}

async function bytesAt(address: string): Promise<Uint8Array<ArrayBuffer>> {
	return new Uint8Array(await (await fetch(address)).arrayBuffer());
}

async function opened(bytes: Uint8Array<ArrayBuffer>) {
	const source = await openPlanFile(new File([bytes], 'plan'));
	if (!source.ok) throw new Error(source.error.code);
	return source.value;
}

/** The refusal's code, once its sentence is there too; nothing when the file opens. */
async function refusalOf(bytes: Uint8Array<ArrayBuffer>): Promise<string | undefined> {
	const source = await openPlanFile(new File([bytes], 'plan'));
	if (source.ok) {
		source.value.close();
		return undefined;
	}
	expect(refusalSentence(source.error).length).toBeGreaterThan(20);
	return source.error.code;
}

describe('a file by another program', () => {
	const eight = [1, 2, 3, 4, 5, 6, 7, 8].map((turn) => `orientation-${turn}.jpg`);
	test.each([
		...['interlaced.png', 'sixteen-bit.png', 'progressive.jpg', 'cmyk.jpg', ...eight],
		...['lossy.webp', 'lossless.webp', 'drawing.svg'],
		...['a0.pdf', 'twelve-sheets.pdf', 'jpeg-2000.pdf']
	])('opens upright, with its mark in its place, as it is and cut: %s', async (name) => {
		const source = await opened(await fileOf(name));
		const page = source.pageCount; // the last one
		const size = await source.pageSize(page);
		if (!size.ok) throw new Error(size.error.code);
		expect(size.value.widthPx).toBeGreaterThan(size.value.heightPx);
		const box = { x: 0.1, y: 0.5, width: 0.5, height: 0.4 };
		for (const crop of [WHOLE, box]) {
			const cut = await cutPlan(source, page, { ...AS_IT_IS, crop });
			if (!cut.ok) throw new Error(cut.error.code);
			const [shown] = cut.value.blobs;
			if (!shown || shown.mediaType === 'image/svg+xml') continue;
			const mark = await redMarkOf(shown.bytes, shown.mediaType);
			expect(Math.abs(mark.x - (MARK.x - crop.x) / crop.width)).toBeLessThan(0.005);
			expect(Math.abs(mark.y - (MARK.y - crop.y) / crop.height)).toBeLessThan(0.005);
		}
		source.close();
	});

	test('has all its pages: the twelve of a print-out', async () => {
		const source = await opened(await fileOf('twelve-sheets.pdf'));
		expect(source.pageCount).toBe(12);
		source.close();
	});

	test.each([
		['locked.pdf', 'pdf-locked'],
		['scan.tif', 'image-kind-known-not-read'],
		['still.gif', 'image-kind-known-not-read'],
		['phone.heic', 'image-kind-known-not-read']
	])('is refused by name: %s', async (name, code) => {
		expect(await refusalOf(await fileOf(name))).toBe(code);
	});

	test('with a script and an address in it is drawn without either', async () => {
		const text = new TextDecoder().decode(await fileOf('drawing.svg'));
		const hostile = text.replace(
			'</svg>',
			'<script>top.ran = true</script><image href="http://127.0.0.1:9/x.png" onerror="top.ran = true"/></svg>'
		);
		expect(hostile).not.toBe(text);
		const source = await opened(new TextEncoder().encode(hostile));
		const cut = await cutPlan(source, 1, { ...AS_IT_IS, quarterTurns: 2 });
		source.close();
		if (!cut.ok) throw new Error(cut.error.code);
		const mark = await redMarkOf(cut.value.blobs[0]?.bytes ?? new Uint8Array(), 'image/jpeg');
		expect(mark.x).toBeCloseTo(1 - MARK.x, 2);
		expect('ran' in window).toBe(false);
	});
});

describe('a file that is cut short', () => {
	test.each([
		...['interlaced.png', 'sixteen-bit.png', 'progressive.jpg', 'cmyk.jpg', 'orientation-6.jpg'],
		...['lossy.webp', 'lossless.webp', 'drawing.svg', 'a0.pdf', 'twelve-sheets.pdf']
	])('is refused wherever it was cut: %s', async (name) => {
		const bytes = await fileOf(name);
		for (const share of [0.05, 0.3, 0.5, 0.7, 0.9, 0.98]) {
			const code = await refusalOf(bytes.slice(0, Math.floor(share * bytes.length)));
			expect(code, `cut at ${share}`).toMatch(
				/^(image-cut-short|image-header-broken|image-not-decoded|pdf-unreadable|image-kind-unknown)$/
			);
		}
	});
});

describe('a few bytes that claim to be a huge picture', () => {
	// What the formats can say at most: 65,535 px a side in a JPEG, 16,383 or 16,384 in a WebP.
	test.each([
		['interlaced.png', (view: DataView) => [16, 20].forEach((at) => view.setUint32(at, 60_000))],
		['progressive.jpg', (view: DataView) => jpegSize(view, 0xc2)],
		['cmyk.jpg', (view: DataView) => jpegSize(view, 0xc0)],
		['lossy.webp', (view: DataView) => [26, 28].forEach((at) => view.setUint16(at, 16_383, true))],
		['lossless.webp', (view: DataView) => view.setUint32(21, 0x0fff_ffff, true)]
	] as const)('are refused by their header: %s', async (name, enlarge) => {
		const bytes = await fileOf(name);
		enlarge(new DataView(bytes.buffer));
		expect(await refusalOf(bytes)).toBe('image-too-many-pixels');
	});
});

test('the demo shows of its PDF what import makes of it', async () => {
	const source = await opened(await bytesAt(demoPdf));
	const cut = await cutPlan(source, 1, AS_IT_IS);
	source.close();
	if (!cut.ok) throw new Error(cut.error.code);
	const [made] = cut.value.blobs;
	const of = async (bytes: Uint8Array<ArrayBuffer>) => {
		const picture = await createImageBitmap(new Blob([bytes], { type: 'image/jpeg' }));
		const canvas = new OffscreenCanvas(picture.width, picture.height);
		const context = canvas.getContext('2d');
		context?.drawImage(picture, 0, 0);
		const pixels = context?.getImageData(0, 0, picture.width, picture.height).data ?? [];
		return { size: [picture.width, picture.height], pixels };
	};
	const kept = await of(await bytesAt(demoPicture));
	const fresh = await of(made?.bytes ?? new Uint8Array());
	expect(fresh.size).toEqual(kept.size);
	let different = 0;
	for (let at = 0; at < fresh.pixels.length; at += 4)
		if (Math.abs((fresh.pixels[at] ?? 0) - (kept.pixels[at] ?? 0)) > 100) different++;
	// Edges may fall otherwise in another Chromium; a line that is elsewhere is far more.
	expect(different / (fresh.pixels.length / 4)).toBeLessThan(0.001);
});

/** Writes 60,000 × 60,000 into the frame header of a JPEG. */
function jpegSize(view: DataView, frame: number): void {
	for (let at = 2; at + 9 <= view.byteLength; at += 2 + view.getUint16(at + 2))
		if (view.getUint8(at + 1) === frame) {
			view.setUint16(at + 5, 60_000);
			view.setUint16(at + 7, 60_000);
			return;
		}
	throw new Error('no frame header');
}
