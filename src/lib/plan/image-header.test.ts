import { expect, test } from 'vitest';
import { readImageHeader } from './image-header.ts';

/** Headers written out by hand from the formats' specifications (from memory), 640 × 480. */
const png = [0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52];
const pngSize = [0, 0, 2, 0x80, 0, 0, 1, 0xe0, 8, 2, 0, 0, 0, 1, 2, 3, 4];
const pngEnd = [0, 0, 0, 0, 0x49, 0x45, 0x4e, 0x44, 0xae, 0x42, 0x60, 0x82];
const jpeg = [
	...[0xff, 0xd8, 0xff, 0xe0, 0, 4, 1, 2], // an application segment to step over
	...[0xff, 0xc4, 0, 3, 0], // Huffman tables, whose marker lies among the frame markers
	...[0xff, 0xff, 0xc2, 0, 11, 8, 1, 0xe0, 2, 0x80, 1, 1, 0x11, 0] // progressive frame after a fill byte
];
const webp = (chunk: string, ...body: number[]) => [
	...text('RIFF'),
	...[body.length + 24, 0, 0, 0],
	...text('WEBP'),
	...text(chunk),
	...[0, 0, 0, 0],
	...body,
	...Array<number>(12).fill(0)
];

test('a PNG, a JPEG and the three kinds of WebP state their size', () => {
	for (const bytes of [
		[...png, ...pngSize, ...pngEnd],
		jpeg,
		webp('VP8 ', 0, 0, 0, 0x9d, 0x01, 0x2a, 0x80, 2, 0xe0, 1),
		webp('VP8L', 0x2f, 0x7f, 0xc2, 0x77, 0),
		webp('VP8X', 0, 0, 0, 0, 0x7f, 2, 0, 0xdf, 1, 0)
	])
		expect(readImageHeader(new Uint8Array(bytes))).toMatchObject({
			ok: true,
			value: { size: { widthPx: 640, heightPx: 480 } }
		});
});

test('a drawing takes its shape from its own size, else from the view box', () => {
	const size = (svg: string) => {
		const header = readImageHeader(new Uint8Array(text(svg)));
		return header.ok ? header.value : header.error.code;
	};
	const wide = { mediaType: 'image/svg+xml', size: { widthPx: 3000, heightPx: 1500 } };
	expect(size('<svg xmlns="x" viewBox="0 0 9 9" width="20" height="10"/>')).toEqual(wide);
	expect(size("<svg width='84mm' height='42mm'>")).toEqual(wide);
	expect(
		size(
			'\ufeff<?xml version="1.0"?>\n<!-- <html> --><!DOCTYPE svg [<!ENTITY a "b">]>\n<svg viewBox="0,0,4,2">'
		)
	).toEqual(wide);
	expect(size('<svg width="100%" height="100%">')).toEqual({ mediaType: 'image/svg+xml' });
	expect(size('<html><body><svg viewBox="0 0 2 1"></svg>')).toBe('image-kind-unknown');
});

test('kinds that browsers do not all show are refused by name', () => {
	const kind = (bytes: number[]) => {
		const header = readImageHeader(new Uint8Array(bytes));
		return header.ok ? undefined : header.error;
	};
	expect(kind(text('%PDF-1.7'))).toEqual({
		code: 'image-kind-known-not-read',
		detail: { kind: 'PDF' }
	});
	expect(kind([0, 0, 0, 0x18, ...text('ftypheic')])?.detail).toEqual({ kind: 'HEIC' });
	expect(kind(text('hello'))?.code).toBe('image-kind-unknown');
	expect(kind([])?.code).toBe('file-empty');
});

test('a header cut anywhere is refused, never read past its end', () => {
	for (const whole of [
		[...png, ...pngSize, ...pngEnd],
		jpeg.slice(0, -5),
		webp('VP8X').slice(0, 30)
	])
		for (let length = 1; length < whole.length; length += 1) {
			const header = readImageHeader(new Uint8Array(whole.slice(0, length)));
			expect(header.ok, `${length} bytes`).toBe(false);
		}
});

function text(value: string): number[] {
	return [...new TextEncoder().encode(value)];
}
