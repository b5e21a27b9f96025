import { expect, test } from 'vitest';
import { smallPhoto } from './small-photo.ts';

const RED =
	'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 640 480" width="640" height="480"><rect width="640" height="480" fill="#d00"/></svg>';

async function middleOf(jpeg: Uint8Array<ArrayBuffer>) {
	const drawn = await createImageBitmap(new Blob([jpeg]));
	const canvas = new OffscreenCanvas(drawn.width, drawn.height);
	const context = canvas.getContext('2d');
	if (!context) throw new Error('no canvas');
	context.drawImage(drawn, 0, 0);
	const [red = 0, green = 0] = context.getImageData(drawn.width / 2, drawn.height / 2, 1, 1).data;
	return { size: [drawn.width, drawn.height], red: red > 180 && green < 40 };
}

async function paintedPng(): Promise<Blob> {
	const canvas = new OffscreenCanvas(640, 480);
	const context = canvas.getContext('2d');
	if (!context) throw new Error('no canvas');
	context.fillStyle = '#d00';
	context.fillRect(0, 0, 640, 480);
	return canvas.convertToBlob();
}

test.each([
	['a photo', paintedPng],
	['a drawing', () => Promise.resolve(new Blob([RED], { type: 'image/svg+xml' }))]
])('%s is made small enough to print', async (_name, made) => {
	const small = await smallPhoto(await made(), { widthPx: 160, heightPx: 120 });
	if (!small.ok) throw new Error(small.error.code);
	expect(await middleOf(small.value)).toEqual({ size: [160, 120], red: true });
});

test('what is no picture is refused', async () => {
	for (const type of ['image/jpeg', 'image/svg+xml'])
		expect(
			await smallPhoto(new Blob(['not a picture'], { type }), { widthPx: 9, heightPx: 9 })
		).toMatchObject({ ok: false, error: { code: 'image-not-decoded' } });
});
