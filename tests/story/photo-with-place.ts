import type { Page } from 'playwright-core';

/**
 * A photo as a phone takes it: 3000 × 1500, red on its left and blue on its right, to be turned a
 * quarter clockwise (orientation 6), with the place where it was taken.
 * @source EXIF 2.32, 4.6.4 and 4.6.6 for the tags (from memory)
 */
export async function photoWithPlace(
	page: Page
): Promise<{ name: string; mimeType: string; buffer: Buffer }> {
	const plain = Buffer.from(
		await page.evaluate(async () => {
			const canvas = new OffscreenCanvas(3000, 1500);
			const context = canvas.getContext('2d');
			if (!context) throw new Error('no canvas');
			context.fillStyle = 'rgb(220 20 20)';
			context.fillRect(0, 0, 1500, 1500);
			context.fillStyle = 'rgb(20 20 220)';
			context.fillRect(1500, 0, 1500, 1500);
			const jpeg = await canvas.convertToBlob({ type: 'image/jpeg' });
			const bytes = new Uint8Array(await jpeg.arrayBuffer());
			let text = '';
			for (const byte of bytes) text += String.fromCharCode(byte);
			return btoa(text);
		}),
		'base64'
	);
	// The segment stands right behind the start of the image.
	const buffer = Buffer.concat([plain.subarray(0, 2), exif(), plain.subarray(2)]);
	return { name: 'IMG_0001.jpg', mimeType: 'image/jpeg', buffer };
}

function exif(): Buffer {
	const tiff = Buffer.alloc(92);
	tiff.write('MM\0*', 0, 'latin1');
	tiff.writeUInt32BE(8, 4);
	tiff.writeUInt16BE(2, 8);
	entry(tiff, 10, 0x0112, 3, 1); // Orientation, one short
	tiff.writeUInt16BE(6, 18);
	entry(tiff, 22, 0x8825, 4, 1); // where the place is
	tiff.writeUInt32BE(38, 30);
	tiff.writeUInt16BE(2, 38);
	entry(tiff, 40, 1, 2, 2); // north or south
	tiff.write('N\0', 48, 'latin1');
	entry(tiff, 52, 2, 5, 3); // latitude in degrees, minutes and seconds
	tiff.writeUInt32BE(68, 60);
	for (const [index, value] of [48, 1, 12, 1, 30, 1].entries())
		tiff.writeUInt32BE(value, 68 + 4 * index);
	const body = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff]);
	const head = Buffer.from([0xff, 0xe1, 0, 0]);
	head.writeUInt16BE(body.length + 2, 2);
	return Buffer.concat([head, body]);
}

function entry(tiff: Buffer, at: number, tag: number, type: number, count: number): void {
	tiff.writeUInt16BE(tag, at);
	tiff.writeUInt16BE(type, at + 2);
	tiff.writeUInt32BE(count, at + 4);
}
