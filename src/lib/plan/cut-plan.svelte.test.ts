import { jsPDF } from 'jspdf';
import { expect, test } from 'vitest';
import { redMarkOf } from '../../../tests/fixtures/red-mark.ts';
import { cutPlan, type Cut } from './cut-plan.ts';
import { openPlanFile } from './open-plan.ts';
import { viewOf } from './tile-places.ts';
import { WHOLE } from './view.ts';

const AS_IT_IS: Cut = { quarterTurns: 0, crop: WHOLE };

async function opened(file: File) {
	const source = await openPlanFile(file);
	if (!source.ok) throw new Error(source.error.code);
	return source.value;
}

async function refusalOf(bytes: BlobPart, name = 'plan'): Promise<string | undefined> {
	const source = await openPlanFile(new File([bytes], name));
	if (!source.ok) return source.error.code;
	source.value.close();
	return undefined;
}

/** A plan with a red mark at a place given in shares. */
function printed(width: number, height: number, x: number, y: number, pages = 1) {
	const pdf = new jsPDF({
		unit: 'pt',
		format: [width, height],
		orientation: width > height ? 'l' : 'p'
	});
	for (let page = 1; page <= pages; page++) {
		if (page > 1) pdf.addPage([width, height], width > height ? 'l' : 'p');
		pdf.setDrawColor(120);
		pdf.rect(10, 10, width - 20, height - 20);
		pdf.text(`Floor ${page}`, 30, 40);
		pdf.setFillColor(255, 0, 0);
		pdf.circle(x * width, y * height, width / 120, 'F');
	}
	return pdf.output('arraybuffer');
}

async function painted(width: number, height: number, x: number, y: number, type: string) {
	const canvas = new OffscreenCanvas(width, height);
	const context = canvas.getContext('2d');
	if (!context) throw new Error('no canvas');
	context.fillStyle = 'white';
	context.fillRect(0, 0, width, height);
	context.fillStyle = 'red';
	const half = Math.max(3, width / 120);
	context.fillRect(x * width - half, y * height - half, 2 * half, 2 * half);
	const blob = await canvas.convertToBlob({ type, quality: 0.95 });
	return new Uint8Array(await blob.arrayBuffer());
}

test('pictures that can be shown as they are keep their bytes, and have no other original', async () => {
	for (const type of ['image/png', 'image/jpeg', 'image/webp']) {
		const bytes = await painted(64, 48, 0.5, 0.5, type);
		const source = await opened(new File([bytes], 'anything.bin'));
		const cut = await cutPlan(source, 1, AS_IT_IS);
		source.close();
		expect(cut).toMatchObject({
			ok: true,
			value: {
				image: { mediaType: type, widthPx: 64, heightPx: 48 },
				blobs: [{ bytes, mediaType: type }]
			}
		});
		expect(cut.ok && cut.value.original).toBeUndefined();
	}
});

test('the bytes are named by their SHA-256', async () => {
	const source = await opened(new File(['<svg xmlns="http://www.w3.org/2000/svg"/>'], 'x.svg'));
	const cut = await cutPlan(source, 1, AS_IT_IS);
	// sha256sum of GNU coreutils on the same bytes (verified)
	expect(cut.ok && cut.value.image.sha256.slice(0, 16)).toBe('900fbe934249ad12');
	source.close();
});

test('a drawing is shown as a picture only: its scripts do not run', async () => {
	const hostile =
		'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 20" onload="window.top.ran = true">' +
		'<script>window.top.ran = true</script><rect width="9" height="9"/></svg>';
	const source = await opened(new File([hostile], 'plan.svg'));
	const whole = await cutPlan(source, 1, AS_IT_IS);
	const turned = await cutPlan(source, 1, { ...AS_IT_IS, quarterTurns: 1 });
	source.close();
	expect(whole).toMatchObject({ value: { image: { widthPx: 3000, heightPx: 1500 } } });
	expect(turned).toMatchObject({
		value: { image: { mediaType: 'image/jpeg', widthPx: 1500, heightPx: 3000 } }
	});
	expect('ran' in window).toBe(false);
});

test('what cannot be opened is refused by name', async () => {
	const png = await painted(64, 48, 0.5, 0.5, 'image/png');
	expect(await refusalOf(png.subarray(0, 60))).toBe('image-cut-short');
	expect(await refusalOf('<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 2"><g>')).toBe(
		'image-not-decoded'
	);
	const huge = png.slice();
	new DataView(huge.buffer).setUint32(16, 60_000);
	new DataView(huge.buffer).setUint32(20, 60_000);
	expect(await refusalOf(huge)).toBe('image-too-many-pixels');
	const pdf = printed(300, 200, 0.5, 0.5);
	expect(await refusalOf(pdf.slice(0, pdf.byteLength * 0.6))).toBe('pdf-unreadable');
	expect(await refusalOf('%PDF-1.7 and nothing of the kind %%EOF')).toBe('pdf-unreadable');
	const locked = new jsPDF({ encryption: { userPassword: 'secret', ownerPassword: 'owner' } });
	locked.text('hidden', 20, 20);
	expect(await refusalOf(locked.output('arraybuffer'))).toBe('pdf-locked');
});

test('a page of a PDF becomes a picture, the original beside it, a place where it was printed', async () => {
	const source = await opened(new File([printed(842, 595, 0.3, 0.7, 12)], 'building.pdf'));
	expect(source.pageCount).toBe(12);
	const cut = await cutPlan(source, 3, AS_IT_IS);
	source.close();
	if (!cut.ok) throw new Error(cut.error.code);
	const { image, original, blobs } = cut.value;
	expect(Math.max(image.widthPx, image.heightPx)).toBeLessThanOrEqual(4096);
	expect(image.widthPx * image.heightPx).toBeLessThanOrEqual(16_700_000);
	expect(original).toMatchObject({ mediaType: 'application/pdf', page: 3 });
	expect(blobs.map(({ mediaType }) => mediaType)).toEqual(['image/jpeg', 'application/pdf']);
	const cross = await redMarkOf(blobs[0]?.bytes ?? new Uint8Array(), 'image/jpeg');
	expect(Math.abs(cross.x - 0.3)).toBeLessThan(0.005);
	expect(Math.abs(cross.y - 0.7)).toBeLessThan(0.005);
});

// derived: after one quarter turn clockwise (x, y) is at (1 − y, x); the crop then shifts and sizes it
test.each([
	['PDF', () => Promise.resolve(new Uint8Array(printed(842, 595, 0.3, 0.7)))],
	['JPEG', () => painted(1200, 800, 0.3, 0.7, 'image/jpeg')]
] as const)('a place of a turned and cut %s is where it was printed', async (_kind, make) => {
	const source = await opened(new File([await make()], 'plan'));
	const crop = { x: 0.1, y: 0.2, width: 0.5, height: 0.6 };
	for (const [quarterTurns, x, y] of [
		[1, 0.3, 0.3],
		[2, 0.7, 0.3],
		[3, 0.7, 0.7],
		[0, 0.3, 0.7]
	] as const) {
		const box = quarterTurns === 2 || quarterTurns === 3 ? { ...crop, x: 0.4 } : crop;
		const cut = await cutPlan(source, 1, { quarterTurns, crop: box });
		if (!cut.ok) throw new Error(cut.error.code);
		const cross = await redMarkOf(cut.value.blobs[0]?.bytes ?? new Uint8Array(), 'image/jpeg');
		expect(Math.abs(cross.x - (x - box.x) / box.width)).toBeLessThan(0.005);
		expect(Math.abs(cross.y - (y - box.y) / box.height)).toBeLessThan(0.005);
		expect(viewOf(cut.value)).toEqual({ quarterTurns, crop: box });
	}
	source.close();
});

test('an A0 sheet and a strip of twenty thousand pixels fit what a canvas holds', async () => {
	// A0 is 841 × 1189 mm (ISO 216, verified): 2384 × 3370 pt.
	const sheet = await opened(new File([printed(2384, 3370, 0.8, 0.1)], 'a0.pdf'));
	const a0 = await cutPlan(sheet, 1, AS_IT_IS);
	sheet.close();
	const strip = await opened(
		new File([await painted(20_000, 1000, 0.9, 0.5, 'image/png')], 'strip.png')
	);
	const cut = await cutPlan(strip, 1, AS_IT_IS);
	strip.close();
	for (const [plan, x] of [
		[a0, 0.8],
		[cut, 0.9]
	] as const) {
		if (!plan.ok) throw new Error(plan.error.code);
		const { widthPx, heightPx } = plan.value.image;
		expect(Math.max(widthPx, heightPx)).toBeLessThanOrEqual(4096);
		expect(widthPx * heightPx).toBeLessThanOrEqual(16_700_000);
		const cross = await redMarkOf(plan.value.blobs[0]?.bytes ?? new Uint8Array(), 'image/jpeg');
		expect(Math.abs(cross.x - x)).toBeLessThan(0.005);
	}
});

// EXIF orientations as in the Exif standard, tag 0x0112 (from memory): what the first row and column show
test.each([
	[1, 0.25, 0.25],
	[2, 0.75, 0.25],
	[3, 0.75, 0.75],
	[4, 0.25, 0.75],
	[5, 0.25, 0.25],
	[6, 0.75, 0.25],
	[7, 0.75, 0.75],
	[8, 0.25, 0.75]
])('a photograph of orientation %i stands upright once', async (orientation, x, y) => {
	const jpeg = withOrientation(await painted(400, 200, 0.25, 0.25, 'image/jpeg'), orientation);
	const source = await opened(new File([jpeg], 'photo.jpg'));
	const size = await source.pageSize(1);
	const turned = orientation > 4;
	expect(size).toMatchObject({
		value: turned ? { widthPx: 200, heightPx: 400 } : { widthPx: 400, heightPx: 200 }
	});
	const asItIs = await cutPlan(source, 1, AS_IT_IS);
	const cut = await cutPlan(source, 1, {
		...AS_IT_IS,
		crop: { x: 0, y: 0, width: 1, height: 0.99 }
	});
	source.close();
	if (!cut.ok || !asItIs.ok) throw new Error('not cut');
	for (const plan of [asItIs.value, cut.value]) {
		const cross = await redMarkOf(plan.blobs[0]?.bytes ?? new Uint8Array(), 'image/jpeg');
		expect(Math.abs(cross.x - x)).toBeLessThan(0.01);
		expect(Math.abs(cross.y - y)).toBeLessThan(0.02);
	}
});

test('a photographed sheet is straightened by its corners', async () => {
	const width = 1000;
	const canvas = new OffscreenCanvas(width, width);
	const context = canvas.getContext('2d');
	if (!context) throw new Error('no canvas');
	context.fillStyle = '#888';
	context.fillRect(0, 0, width, width);
	const corners = [
		{ x: 0.2, y: 0.1 },
		{ x: 0.8, y: 0.2 },
		{ x: 0.9, y: 0.9 },
		{ x: 0.1, y: 0.8 }
	] as const;
	context.fillStyle = 'white';
	context.beginPath();
	for (const { x, y } of corners) context.lineTo(x * width, y * width);
	context.fill();
	// The diagonals of a sheet cross at its middle, in a photograph too (law of perspective).
	context.fillStyle = 'red';
	const middle = crossing(corners);
	context.beginPath();
	context.arc(middle.x * width, middle.y * width, 6, 0, 7);
	context.fill();
	const blob = await canvas.convertToBlob({ type: 'image/png' });
	const source = await opened(new File([blob], 'wall.png'));
	const cut = await cutPlan(source, 1, { ...AS_IT_IS, corners });
	source.close();
	if (!cut.ok) throw new Error(cut.error.code);
	const cross = await redMarkOf(cut.value.blobs[0]?.bytes ?? new Uint8Array(), 'image/jpeg');
	expect(Math.abs(cross.x - 0.5)).toBeLessThan(0.005);
	expect(Math.abs(cross.y - 0.5)).toBeLessThan(0.005);
	expect(cut.value.original?.corners).toHaveLength(4);
});

type At = { readonly x: number; readonly y: number };

/** Where the diagonals cross, by Cramer's rule. */
function crossing([p, q, r, s]: readonly [At, At, At, At]): At {
	const u = { x: r.x - p.x, y: r.y - p.y };
	const v = { x: s.x - q.x, y: s.y - q.y };
	const t = ((q.x - p.x) * v.y - (q.y - p.y) * v.x) / (u.x * v.y - u.y * v.x);
	return { x: p.x + t * u.x, y: p.y + t * u.y };
}

/** A hand-made APP1 segment with one entry, put behind the start of the picture. */
function withOrientation(jpeg: Uint8Array, orientation: number): Uint8Array<ArrayBuffer> {
	const exif = [0x45, 0x78, 0x69, 0x66, 0, 0];
	const tiff = [0x4d, 0x4d, 0, 0x2a, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1];
	const body = [...exif, ...tiff, 0, orientation, 0, 0, 0, 0, 0, 0];
	const head = [0xff, 0xe1, 0, body.length + 2];
	const made = new Uint8Array(jpeg.length + head.length + body.length);
	made.set(jpeg.subarray(0, 2));
	made.set([...head, ...body], 2);
	made.set(jpeg.subarray(2), 2 + head.length + body.length);
	return made;
}
