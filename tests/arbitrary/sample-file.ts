import { unzipSync, zipSync } from 'fflate';
import type { Command } from '#lib/core/survey/command.ts';
import { fold } from '#lib/core/survey/log.ts';
import { readSurveyFile, type OpenedFile } from '#lib/storage/file/read-survey-file.ts';
import { sha256Hex } from '#lib/storage/file/sha256.ts';
import { writeSurveyFile, type StoredBlob } from '#lib/storage/file/write-survey-file.ts';
import { asCommands, startCommand } from './commands.ts';

/** A small survey file with a plan photographed and one drawn, and ways to spoil it. */
export const SAVED_AT = '2026-03-02T16:00:00+01:00';
export const [picture, drawing] = [
	await blobOf(new Uint8Array([137, 80, 78, 71, 13, 10, 26, 10, 0, 1]), 'image/png'),
	await blobOf(
		new TextEncoder().encode('<svg xmlns="http://www.w3.org/2000/svg"/>'),
		'image/svg+xml'
	)
];

async function blobOf(bytes: Uint8Array, mediaType: string): Promise<StoredBlob> {
	return { sha256: await sha256Hex(bytes), mediaType, bytes };
}

export function sampleLog(): Command[] {
	const image = { widthPx: 800, heightPx: 600 };
	return [
		startCommand(),
		...asCommands([
			{
				kind: 'add-plan',
				plan: { id: 'plan-1', name: 'Ground floor', image: { ...meta(picture), ...image } }
			},
			{
				kind: 'add-plan',
				plan: { id: 'plan-2', name: 'Gallery', image: { ...meta(drawing), ...image } }
			},
			{
				kind: 'add-leak',
				leak: {
					id: 'leak-1',
					tag: 1,
					part: 'hose',
					hazards: [],
					sightings: {},
					mendings: {},
					planId: 'plan-1',
					at: { x: 0.5, y: 0.25 },
					note: 'Žlutý ventil 日本'
				}
			},
			{ kind: 'set-leak', leakId: 'leak-1', changes: { note: 'moved', part: 'valve' } }
		])
	];
}

function meta({ sha256, mediaType }: StoredBlob) {
	return { sha256, mediaType };
}

export function surveyOf(commands: readonly Command[]) {
	const folded = fold(commands);
	if (!folded.ok) throw new Error(folded.error.code);
	return folded.value.survey;
}

export function pack(commands = sampleLog(), blobs: StoredBlob[] = [picture, drawing]) {
	return writeSurveyFile({ commands, survey: surveyOf(commands), blobs, savedAt: SAVED_AT });
}

export async function opened(bytes: Uint8Array): Promise<OpenedFile> {
	const read = await readSurveyFile(bytes);
	if (!read.ok) throw new Error(JSON.stringify(read.error));
	return read.value;
}

export async function codeOf(bytes: Uint8Array): Promise<string> {
	const read = await readSurveyFile(bytes);
	return read.ok ? 'opened' : read.error.code;
}

/** The file with parts exchanged; the manifest is made to agree unless it is exchanged itself. */
export async function repack(change: (parts: Record<string, Uint8Array>) => void) {
	const parts = unzipSync(await pack());
	change(parts);
	const manifest = JSON.parse(new TextDecoder().decode(parts['manifest.json'])) as {
		entries: { path: string; bytes: number; sha256: string }[];
	};
	manifest.entries = [];
	for (const [path, bytes] of Object.entries(parts)) {
		if (path === 'manifest.json' || path === 'READ ME.txt') continue;
		manifest.entries.push({ path, bytes: bytes.length, sha256: await sha256Hex(bytes) });
	}
	return zipSync({ ...parts, 'manifest.json': json(manifest) });
}

export function json(value: unknown): Uint8Array<ArrayBuffer> {
	return new TextEncoder().encode(typeof value === 'string' ? value : JSON.stringify(value));
}

export const plain = (members: object) =>
	json({ format: 'airtally-survey', formatVersion: 1, ...members });
