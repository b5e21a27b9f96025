import { describe, expect, test } from 'vitest';
import { shrinkPhoto } from './shrink-photo.ts';

/** What stands where in the scene that was photographed, clockwise from its upper left corner. */
const SCENE = ['red', 'green', 'blue', 'white'] as const;
type Colour = (typeof SCENE)[number];
const PAINT: Readonly<Record<Colour, string>> = {
	red: 'rgb(220 20 20)',
	green: 'rgb(20 200 20)',
	blue: 'rgb(20 20 220)',
	white: 'rgb(245 245 245)'
};

/**
 * Which corner of the scene the sensor has put upper left, upper right, lower right and lower left,
 * by the value of Orientation, and whether the picture lies on its side.
 * @source EXIF 2.32, 4.6.4, tag 0x0112 (from memory)
 */
const STORED: readonly (readonly [
	orientation: number,
	corners: readonly number[],
	onSide: boolean
])[] = [
	[1, [0, 1, 2, 3], false],
	[2, [1, 0, 3, 2], false],
	[3, [2, 3, 0, 1], false],
	[4, [3, 2, 1, 0], false],
	[5, [0, 3, 2, 1], true],
	[6, [1, 2, 3, 0], true],
	[7, [2, 1, 0, 3], true],
	[8, [3, 0, 1, 2], true]
];

/** The scene is 60 wide and 40 high; a picture that lies on its side is stored 40 wide. */
async function stored(
	orientation: number,
	corners: readonly number[],
	onSide: boolean
): Promise<File> {
	const [width, height] = onSide ? [40, 60] : [60, 40];
	const canvas = new OffscreenCanvas(width, height);
	const context = canvas.getContext('2d');
	if (!context) throw new Error('no canvas');
	for (const [place, corner] of corners.entries()) {
		context.fillStyle = PAINT[SCENE[corner] ?? 'red'];
		const right = place === 1 || place === 2;
		context.fillRect(right ? width / 2 : 0, place >= 2 ? height / 2 : 0, width / 2, height / 2);
	}
	const jpeg = await canvas.convertToBlob({ type: 'image/jpeg', quality: 1 });
	const bytes = new Uint8Array(await jpeg.arrayBuffer());
	return new File([bytes.slice(0, 2), exif(orientation), bytes.slice(2)], 'IMG_1.jpg');
}

/** A segment that holds nothing but the orientation. */
function exif(orientation: number): Uint8Array<ArrayBuffer> {
	const head = [0xff, 0xe1, 0, 34, 0x45, 0x78, 0x69, 0x66, 0, 0];
	const tiff = [0x4d, 0x4d, 0, 0x2a, 0, 0, 0, 8, 0, 1];
	const entry = [0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0];
	return new Uint8Array([...head, ...tiff, ...entry, 0, 0, 0, 0]);
}

/** The colours of the four quarters, clockwise from upper left. */
async function quarters(bytes: Uint8Array<ArrayBuffer>): Promise<Colour[]> {
	const picture = await createImageBitmap(new Blob([bytes], { type: 'image/jpeg' }));
	const { width, height } = picture;
	const context = new OffscreenCanvas(width, height).getContext('2d');
	if (!context) throw new Error('no canvas');
	context.drawImage(picture, 0, 0);
	const at = (x: number, y: number): Colour => {
		const [r = 0, g = 0, b = 0] = context.getImageData(x * width, y * height, 1, 1).data;
		if (Math.min(r, g, b) > 180) return 'white';
		return r > 120 ? 'red' : g > 120 ? 'green' : 'blue';
	};
	return [at(0.25, 0.25), at(0.75, 0.25), at(0.75, 0.75), at(0.25, 0.75)];
}

describe('a photo is turned upright once, and forgets how it lay', () => {
	test.each(STORED)('orientation %i', async (orientation, corners, onSide) => {
		const shrunk = await shrinkPhoto(await stored(orientation, corners, onSide));
		if (!shrunk.ok) throw new Error(shrunk.error.code);
		const { bytes, widthPx, heightPx } = shrunk.value;
		expect([widthPx, heightPx]).toEqual([60, 40]);
		expect(await quarters(bytes)).toEqual(SCENE);
		expect(new TextDecoder('latin1').decode(bytes)).not.toContain('Exif');
	});
});

test('a header that claims more than anyone can draw is refused before anything is drawn', async () => {
	// A JPEG frame header of 65,500 by 65,500: 4,290 megapixels in 30 bytes.
	const side = [0xff, 0xdc];
	const frame = [0xff, 0xc0, 0, 17, 8, ...side, ...side, 3, 1, 0x22, 0, 2, 0x11, 1, 3, 0x11, 1];
	const file = new File([new Uint8Array([0xff, 0xd8, ...frame, 0xff, 0xd9])], 'huge.jpg');
	const started = performance.now();
	const refused = await shrinkPhoto(file);
	expect(refused.ok ? '' : refused.error.code).toBe('image-too-many-pixels');
	// Nothing of that size is drawn: it takes no longer than reading a header.
	expect(performance.now() - started).toBeLessThan(100);
});
