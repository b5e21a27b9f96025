import { Inflate } from 'fflate';
import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import { MAX_ENTRIES, MAX_RATIO, MAX_TOTAL_BYTES, RATIO_FREE_BYTES } from './limits.ts';

/** One file inside a zip archive, still packed. */
export interface ZipEntry {
	readonly path: string;
	readonly packed: Uint8Array;
	readonly deflated: boolean;
	readonly crc32: number;
}

const END = 0x06054b50;
const CENTRAL = 0x02014b50;
const LOCAL = 0x04034b50;
const END_BYTES = 22;
const LONGEST_COMMENT = 0xffff;
const CHUNK_BYTES = 16 * 1024;

/**
 * The entries of a zip archive by path, from its directory; nothing is unpacked.
 *
 * @returns a refusal `file-truncated` (no directory at the end, or one that points outside),
 * `file-damaged`, `file-encrypted`, `file-compression`, `file-entry-path` or `file-too-large`
 */
export function listZip(bytes: Uint8Array): Result<ReadonlyMap<string, ZipEntry>> {
	const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
	const end = findEnd(view);
	if (end === undefined) return refuse('file-truncated', { bytes: bytes.length });
	const count = view.getUint16(end + 10, true);
	if (count > MAX_ENTRIES) return refuse('file-too-large', { entries: count, most: MAX_ENTRIES });
	const entries = new Map<string, ZipEntry>();
	let at = view.getUint32(end + 16, true);
	for (let index = 0; index < count; index++) {
		if (at + 46 > end) return refuse('file-truncated', { bytes: bytes.length });
		if (view.getUint32(at, true) !== CENTRAL) return refuse('file-damaged', { entry: index });
		const read = readEntry(bytes, view, at);
		if (!read.ok) return read;
		const { path } = read.value;
		if (entries.has(path)) return refuse('file-entry-path', { entry: path, reason: 'twice' });
		if (!path.endsWith('/')) entries.set(path, read.value);
		const name = view.getUint16(at + 28, true);
		const extra = view.getUint16(at + 30, true);
		const comment = view.getUint16(at + 32, true);
		at += 46 + name + extra + comment;
	}
	return ok(entries);
}

function findEnd(view: DataView): number | undefined {
	const first = Math.max(0, view.byteLength - END_BYTES - LONGEST_COMMENT);
	for (let at = view.byteLength - END_BYTES; at >= first; at--) {
		if (view.getUint32(at, true) !== END) continue;
		if (at + END_BYTES + view.getUint16(at + 20, true) === view.byteLength) return at;
	}
	return undefined;
}

function readEntry(bytes: Uint8Array, view: DataView, central: number): Result<ZipEntry> {
	const nameBytes = bytes.subarray(central + 46, central + 46 + view.getUint16(central + 28, true));
	const path = decodePath(nameBytes);
	if (path === undefined || !isPlainPath(path)) {
		return refuse('file-entry-path', { entry: path ?? '?', reason: 'not-plain' });
	}
	if (view.getUint16(central + 8, true) & 1) return refuse('file-encrypted', { entry: path });
	const method = view.getUint16(central + 10, true);
	if (method !== 0 && method !== 8) return refuse('file-compression', { entry: path, method });

	const local = view.getUint32(central + 42, true);
	if (local + 30 > bytes.length) return refuse('file-truncated', { entry: path });
	if (view.getUint32(local, true) !== LOCAL) return refuse('file-damaged', { entry: path });
	const localName = view.getUint16(local + 26, true);
	if (decodePath(bytes.subarray(local + 30, local + 30 + localName)) !== path) {
		return refuse('file-entry-path', { entry: path, reason: 'two-names' });
	}
	const start = local + 30 + localName + view.getUint16(local + 28, true);
	const stop = start + view.getUint32(central + 20, true);
	if (stop > bytes.length) return refuse('file-truncated', { entry: path });
	return ok({
		path,
		packed: bytes.subarray(start, stop),
		deflated: method === 8,
		crc32: view.getUint32(central + 16, true)
	});
}

function decodePath(bytes: Uint8Array): string | undefined {
	try {
		return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
	} catch {
		return undefined;
	}
}

/** A path that stays inside the archive on every system. */
function isPlainPath(path: string): boolean {
	if (path === '' || path.length > 300 || /[\\:\p{Cc}]/u.test(path)) return false;
	return path
		.replace(/\/$/, '')
		.split('/')
		.every((part) => part !== '' && part !== '.' && part !== '..');
}

/** Unpacks entries and counts, over all of them, the bytes that really come out. */
export class Unpacker {
	#total = 0;

	/**
	 * @param mostBytes for this entry
	 * @returns a refusal `file-too-large`, `file-bomb` or `file-damaged`
	 */
	unpack(entry: ZipEntry, mostBytes: number): Result<Uint8Array> {
		const room = Math.min(mostBytes, MAX_TOTAL_BYTES - this.#total);
		const tooLarge = refuse('file-too-large', { entry: entry.path, mostBytes });
		if (!entry.deflated) {
			if (entry.packed.length > room) return tooLarge;
			this.#total += entry.packed.length;
			return ok(entry.packed);
		}
		const parts: Uint8Array[] = [];
		let length = 0;
		const inflate = new Inflate((part) => {
			parts.push(part);
			length += part.length;
		});
		const mostByRatio = Math.max(RATIO_FREE_BYTES, entry.packed.length * MAX_RATIO);
		for (let from = 0; from < entry.packed.length; from += CHUNK_BYTES) {
			const last = from + CHUNK_BYTES >= entry.packed.length;
			try {
				inflate.push(entry.packed.subarray(from, from + CHUNK_BYTES), last);
			} catch {
				return refuse('file-damaged', { entry: entry.path });
			}
			if (length > mostByRatio) return refuse('file-bomb', { entry: entry.path });
			if (length > room) return tooLarge;
		}
		this.#total += length;
		return ok(joined(parts, length));
	}
}

function joined(parts: readonly Uint8Array[], length: number): Uint8Array {
	const [only] = parts;
	if (only && parts.length === 1) return only;
	const whole = new Uint8Array(length);
	let at = 0;
	for (const part of parts) {
		whole.set(part, at);
		at += part.length;
	}
	return whole;
}

const CRC_TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
	let crc = byte;
	for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? 0xedb88320 ^ (crc >>> 1) : crc >>> 1;
	return crc;
});

/** The check sum of the zip format (CRC-32, polynomial EDB88320 reversed). */
export function crc32(bytes: Uint8Array): number {
	let crc = 0xffffffff;
	for (const byte of bytes) crc = (CRC_TABLE[(crc ^ byte) & 0xff] ?? 0) ^ (crc >>> 8);
	return (crc ^ 0xffffffff) >>> 0;
}
