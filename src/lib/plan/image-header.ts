import { ok, refuse, type Result } from '#lib/core/units/result.ts';

/** What the first bytes of an image say about it, before anything is decoded. */
export interface ImageHeader {
	readonly mediaType: 'image/png' | 'image/jpeg' | 'image/webp' | 'image/svg+xml';
	/** Absent where only decoding can tell: some drawings state no size. */
	readonly size?: { readonly widthPx: number; readonly heightPx: number };
}

/** A drawing has no pixels of its own: its longer side is taken as this many, the shape is kept. */
export const DRAWING_LONG_SIDE_PX = 3000;

/** How much of a drawing is searched for its root tag; long comments may stand before it. */
const DRAWING_HEAD_BYTES = 65_536;

/**
 * Reads kind and size from an image's header, so that a huge picture is refused before it is
 * decoded. The name of the file and what the sender says of its kind are not trusted.
 *
 * @returns a refusal `image-kind-known-not-read` for kinds that a browser cannot be relied on to
 * show, `image-kind-unknown`, `image-header-broken` or `image-cut-short`
 */
export function readImageHeader(bytes: Uint8Array): Result<ImageHeader> {
	const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
	if (bytes.length === 0) return refuse('file-empty');
	if (starts(bytes, 0, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return readPng(view);
	if (starts(bytes, 0, [0xff, 0xd8, 0xff])) return readJpeg(view);
	if (ascii(bytes, 0, 4) === 'RIFF' && ascii(bytes, 8, 4) === 'WEBP') return readWebp(view, bytes);
	const stranger = strangerKind(bytes);
	if (stranger !== undefined) return refuse('image-kind-known-not-read', { kind: stranger });
	return readSvg(bytes) ?? refuse('image-kind-unknown');
}

/** @source PNG specification, W3C, 11.2.1 IHDR (from memory) */
function readPng(view: DataView): Result<ImageHeader> {
	if (view.byteLength < 24) return refuse('image-header-broken', { kind: 'PNG' });
	if (!endsAsPng(view)) return refuse('image-cut-short', { kind: 'PNG' });
	return sized('image/png', 'PNG', view.getUint32(16), view.getUint32(20));
}

/** Whether the chunks lead to the end chunk: browsers draw what is left of a cut picture. */
function endsAsPng(view: DataView): boolean {
	const END = 0x49454e44;
	let at = 8;
	while (at + 12 <= view.byteLength) {
		if (view.getUint32(at + 4) === END) return true;
		at += 12 + view.getUint32(at);
	}
	return false;
}

/**
 * Walks the segments to the first frame header (SOF0 to SOF15 without DHT, JPG and DAC).
 * @source ITU-T T.81, B.1.1.3 and B.2.2 (from memory)
 */
function readJpeg(view: DataView): Result<ImageHeader> {
	let at = 2;
	while (at + 9 <= view.byteLength && view.getUint8(at) === 0xff) {
		const marker = view.getUint8(at + 1);
		if (marker === 0xff) {
			at += 1; // Fill bytes may stand before a marker.
			continue;
		}
		const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
		if (isFrame) return sized('image/jpeg', 'JPEG', view.getUint16(at + 7), view.getUint16(at + 5));
		at += 2 + view.getUint16(at + 2);
	}
	return refuse('image-header-broken', { kind: 'JPEG' });
}

/** @source RFC 9649, 2.5 to 2.7 (from memory) */
function readWebp(view: DataView, bytes: Uint8Array): Result<ImageHeader> {
	if (view.byteLength < 30) return refuse('image-header-broken', { kind: 'WebP' });
	if (8 + view.getUint32(4, true) > view.byteLength)
		return refuse('image-cut-short', { kind: 'WebP' });
	switch (ascii(bytes, 12, 4)) {
		case 'VP8 ':
			return sized(
				'image/webp',
				'WebP',
				view.getUint16(26, true) & 0x3fff,
				view.getUint16(28, true) & 0x3fff
			);
		case 'VP8L': {
			const packed = view.getUint32(21, true);
			return sized('image/webp', 'WebP', (packed & 0x3fff) + 1, ((packed >>> 14) & 0x3fff) + 1);
		}
		case 'VP8X':
			return sized('image/webp', 'WebP', 1 + uint24(view, 24), 1 + uint24(view, 27));
		default:
			return refuse('image-header-broken', { kind: 'WebP' });
	}
}

/** The root tag's own size, as browsers have it, else the shape of its view box. */
function readSvg(bytes: Uint8Array): Result<ImageHeader> | undefined {
	const head = new TextDecoder().decode(bytes.subarray(0, DRAWING_HEAD_BYTES));
	const prolog = /^\s*(?:<\?xml[^>]*>|<!--[\s\S]*?-->|<!DOCTYPE[^[>]*(?:\[[\s\S]*?\])?\s*>|\s+)*/u;
	const tag = /^<(?:\w+:)?svg\b[^>]*>/u.exec(head.slice(prolog.exec(head)?.[0].length ?? 0))?.[0];
	if (tag === undefined) return undefined;
	const box = attribute(tag, 'viewBox')
		?.trim()
		.split(/[\s,]+/u)
		.map(Number);
	const shape = shapeOf(plain(tag, 'width'), plain(tag, 'height')) ?? shapeOf(box?.[2], box?.[3]);
	return ok({ mediaType: 'image/svg+xml', ...(shape && { size: shape }) });
}

function shapeOf(width: number | undefined, height: number | undefined) {
	if (!width || !height || !(width > 0 && height > 0 && width < Infinity && height < Infinity))
		return undefined;
	const scale = DRAWING_LONG_SIDE_PX / Math.max(width, height);
	const widthPx = Math.round(width * scale);
	const heightPx = Math.round(height * scale);
	return widthPx > 0 && heightPx > 0 ? { widthPx, heightPx } : undefined;
}

function attribute(tag: string, name: string): string | undefined {
	return new RegExp(`\\s${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`, 'u')
		.exec(tag)
		?.slice(1)
		.find((text) => text !== undefined);
}

/** A length in any absolute unit; a share of the page says nothing about the shape. */
function plain(tag: string, name: string): number | undefined {
	const text = attribute(tag, name);
	return text === undefined || text.trim().endsWith('%') ? undefined : Number.parseFloat(text);
}

/** Kinds that people do send, so that the refusal can name them and say what to do. */
function strangerKind(bytes: Uint8Array): string | undefined {
	if (ascii(bytes, 0, 5) === '%PDF-') return 'PDF';
	if (ascii(bytes, 4, 4) === 'ftyp') return 'HEIC';
	if (ascii(bytes, 0, 4) === 'GIF8') return 'GIF';
	if (ascii(bytes, 0, 4) === 'AC10') return 'DWG';
	if (starts(bytes, 0, [0x49, 0x49, 0x2a, 0]) || starts(bytes, 0, [0x4d, 0x4d, 0, 0x2a]))
		return 'TIFF';
	if (starts(bytes, 0, [0x50, 0x4b, 3, 4])) return 'ZIP';
	return undefined;
}

function sized(
	mediaType: ImageHeader['mediaType'],
	kind: string,
	widthPx: number,
	heightPx: number
): Result<ImageHeader> {
	if (widthPx === 0 || heightPx === 0) return refuse('image-header-broken', { kind });
	return ok({ mediaType, size: { widthPx, heightPx } });
}

function uint24(view: DataView, at: number): number {
	return view.getUint16(at, true) | (view.getUint8(at + 2) << 16);
}

function starts(bytes: Uint8Array, at: number, expected: readonly number[]): boolean {
	return expected.every((byte, index) => bytes[at + index] === byte);
}

function ascii(bytes: Uint8Array, at: number, length: number): string {
	return String.fromCharCode(...bytes.subarray(at, at + length));
}
