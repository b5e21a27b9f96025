import { Zip, ZipPassThrough } from 'fflate';
import { ok, type Result } from '../core/units/result.ts';
import type { ReportModel } from './model.ts';
import { workOrderCsv, type WorkOrderStyle } from './work-orders.ts';

/**
 * The work orders with the photos they name, in one ZIP: the table at its top, each photo under the path
 * that its row has, which is its path in the survey file too. A photo whose bytes are not on this device is left out.
 * @param photo the bytes of a photo, by its SHA-256
 */
export async function workOrderPack(
	model: ReportModel,
	style: WorkOrderStyle | undefined,
	photo: (sha256: string) => Promise<Uint8Array | undefined>
): Promise<Result<Uint8Array<ArrayBuffer>>> {
	const table = workOrderCsv(model, style);
	if (!table.ok) return table;
	const parts: Uint8Array[] = [];
	const zip = new Zip((fault, part) => {
		if (fault) throw fault;
		parts.push(part);
	});
	const packedAt = packable(model.printedAt);
	const put = (name: string, bytes: Uint8Array) => {
		// Photos are packed as they are: a JPEG does not get smaller.
		const entry = new ZipPassThrough(name);
		entry.mtime = packedAt;
		zip.add(entry);
		entry.push(bytes, true);
	};
	put('work-orders.csv', new TextEncoder().encode(table.value));
	const open = model.groups.flatMap(({ rows }) => rows).filter(({ shape }) => shape !== 'done');
	const photos = new Map(open.flatMap((row) => (row.photo ? [[row.photo.path, row.photo]] : [])));
	for (const [path, { sha256 }] of photos) {
		const bytes = await photo(sha256);
		if (bytes) put(path, bytes);
	}
	zip.end();
	return ok(joined(parts));
}

/** A ZIP knows the years 1980 to 2099 and no others, whatever a clock may say. */
function packable(instant: string): Date {
	const date = new Date(instant);
	const year = Math.min(2098, Math.max(1981, date.getFullYear()));
	if (year !== date.getFullYear()) date.setFullYear(year);
	return date;
}

function joined(parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
	const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
	let at = 0;
	for (const part of parts) {
		whole.set(part, at);
		at += part.length;
	}
	return whole;
}
