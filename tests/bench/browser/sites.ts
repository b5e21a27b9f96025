import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { deflateSync, crc32 } from 'node:zlib';
import type { Command } from '#lib/core/survey/command.ts';
import { fold } from '#lib/core/survey/log.ts';
import type { Leak, Survey } from '#lib/core/survey/schema.ts';
import { writeSurveyFile, type StoredBlob } from '#lib/storage/file/write-survey-file.ts';
import { syntheticLeak } from '../synthetic.ts';

/** Files that the browser is fed with; all of them go when the bench ends. */
export class BenchFiles {
	readonly folder = mkdtempSync(join(tmpdir(), 'airtally-bench-'));

	put(name: string, content: Uint8Array | string): string {
		const path = join(this.folder, name);
		writeFileSync(path, content);
		return path;
	}

	/** A survey file of a log. */
	async site(
		name: string,
		commands: readonly Command[],
		blobs: readonly StoredBlob[] = []
	): Promise<string> {
		const folded = fold(commands);
		if (!folded.ok) throw new Error(folded.error.code);
		const { survey } = folded.value;
		const savedAt = '2026-01-05T08:00:00Z';
		return this.put(
			`${name}.airtally.zip`,
			await writeSurveyFile({ commands, survey, blobs, savedAt })
		);
	}

	remove(): void {
		rmSync(this.folder, { recursive: true, force: true });
	}
}

/** Adds leaks to a log, spread over a plan. */
export function withPins(
	commands: readonly Command[],
	{ plans }: Survey,
	count: number
): Command[] {
	const plan = Object.values(plans)[0];
	if (!plan) throw new Error('the site has no plan');
	const last = Math.max(...commands.map(({ time }) => time));
	const columns = Math.ceil(Math.sqrt(count));
	const pinned = (index: number): Leak => ({
		...syntheticLeak(index + 1),
		planId: plan.id,
		at: {
			x: 0.02 + (0.96 * (index % columns)) / columns,
			y: 0.02 + (0.96 * Math.floor(index / columns)) / columns
		}
	});
	return [
		...commands,
		...Array.from({ length: count }, (_, index): Command => ({
			id: `cmd-pin-${index}`,
			device: 'device-bench',
			time: last + 1 + index,
			at: '2026-01-05T08:00:00Z',
			body: { kind: 'add-leak', leak: pinned(index) }
		}))
	];
}

/** A drawing of lines, as a PNG by hand (from memory of the specification): 8-bit grey, no filter. */
export function planPng(widthPx: number, heightPx: number): Uint8Array {
	const rows = Buffer.alloc((widthPx + 1) * heightPx, 255);
	for (let y = 0; y < heightPx; y++) {
		const start = y * (widthPx + 1);
		rows[start] = 0;
		for (let x = 0; x < widthPx; x += y % 400 < 4 ? 1 : 250)
			rows[start + 1 + x] = (x * 7 + y) & 127;
	}
	const head = Buffer.alloc(13);
	head.writeUInt32BE(widthPx, 0);
	head.writeUInt32BE(heightPx, 4);
	head.set([8, 0, 0, 0, 0], 8);
	return Buffer.concat([
		Buffer.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10]),
		chunk('IHDR', head),
		chunk('IDAT', deflateSync(rows, { level: 1 })),
		chunk('IEND', Buffer.alloc(0))
	]);
}

function chunk(kind: string, data: Uint8Array): Buffer {
	const body = Buffer.concat([Buffer.from(kind), data]);
	const size = Buffer.alloc(4);
	size.writeUInt32BE(data.length);
	const check = Buffer.alloc(4);
	check.writeUInt32BE(crc32(body));
	return Buffer.concat([size, body, check]);
}
