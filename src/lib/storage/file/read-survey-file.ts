import type { Command } from '#lib/core/survey/command.ts';
import { fold, sortLog, type Conflict, type Quarantined } from '#lib/core/survey/log.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import { blobOfPath, knownMediaType } from '#lib/core/survey/blob-kinds.ts';
import { decodeText, parseJson } from './json-text.ts';
import { MAX_BLOB_BYTES, MAX_FILE_BYTES, MAX_TEXT_BYTES } from './limits.ts';
import {
	LOG_PATH,
	MANIFEST_PATH,
	SET_ASIDE_PATH,
	SURVEY_PATH,
	readManifest,
	type Manifest
} from './manifest.ts';
import { blobsNamedBy, shownIn } from './named-blobs.ts';
import { readLines, readPlain, readRecords, type Records } from './records.ts';
import { sha256Hex } from './sha256.ts';
import type { StoredBlob } from './write-survey-file.ts';
import { Unpacker, crc32, listZip, type ZipEntry } from './zip-entries.ts';

/** What a survey file holds, checked, and in no way stored yet. */
export interface OpenedFile {
	readonly siteId: string;
	readonly siteName: string;
	/** Absent for plain JSON, which does not say. */
	readonly savedAt?: string;
	/** In their one order. */
	readonly commands: readonly Command[];
	/** Records that could not be read: kept and shown, never dropped. */
	readonly quarantined: readonly Quarantined[];
	readonly survey: Survey;
	readonly conflicts: readonly Conflict[];
	readonly blobs: readonly StoredBlob[];
	/** Hashes of pictures that the survey names and the file does not hold, or holds damaged. */
	readonly missingBlobs: readonly string[];
}

/**
 * Opens a survey file, or the plain JSON of a survey; which of the two its first bytes tell. The
 * bytes may come from anybody: whatever is wrong with them is a refusal, and nothing is believed
 * that was not checked.
 *
 * @returns a refusal `file-empty`, `file-not-survey`, `file-newer`, `file-truncated`, `file-damaged`,
 * `file-checksum`, `file-entry-missing`, `file-entry-path`, `file-encrypted`, `file-compression`,
 * `file-too-large`, `file-bomb`, `manifest-invalid`, `json-too-deep`, `json-unreadable`,
 * `survey-invalid` or `log-without-start`
 */
export async function readSurveyFile(bytes: Uint8Array): Promise<Result<OpenedFile>> {
	if (bytes.length === 0) return refuse('file-empty');
	if (bytes.length > MAX_FILE_BYTES) {
		return refuse('file-too-large', { bytes: bytes.length, mostBytes: MAX_FILE_BYTES });
	}
	if (bytes[0] === 0x50 && bytes[1] === 0x4b) return readZip(bytes);
	if (startsAsJson(bytes)) return readJson(bytes);
	return refuse('file-not-survey');
}

function startsAsJson(bytes: Uint8Array): boolean {
	let at = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;
	while ([0x20, 0x09, 0x0a, 0x0d].includes(bytes[at] ?? -1)) at++;
	return bytes[at] === 0x7b;
}

async function readJson(bytes: Uint8Array): Promise<Result<OpenedFile>> {
	if (bytes.length > MAX_TEXT_BYTES) {
		return refuse('file-too-large', { bytes: bytes.length, mostBytes: MAX_TEXT_BYTES });
	}
	const text = decodeText(bytes, 'json');
	if (!text.ok) return text;
	const json = parseJson(text.value, 'json');
	if (!json.ok) return json;
	const records = await readPlain(json.value);
	return records.ok ? assemble(records.value, []) : records;
}

async function readZip(bytes: Uint8Array): Promise<Result<OpenedFile>> {
	const listed = listZip(bytes);
	if (!listed.ok) return listed;
	const unpacker = new Unpacker();
	const manifest = unpackManifest(listed.value, unpacker);
	if (!manifest.ok) return manifest;
	const parts = await unpackParts(manifest.value, listed.value, unpacker);
	if (!parts.ok) return parts;
	const records = await recordsOf(parts.value, manifest.value.schemaVersion);
	if (!records.ok) return records;
	const blobs: StoredBlob[] = [];
	for (const [path, content] of parts.value) {
		const named = blobOfPath(path);
		// A picture under the name of another is missing, and is not shown in its place.
		if (named && (await sha256Hex(content)) === named.sha256) {
			blobs.push({ ...named, bytes: content });
		}
	}
	return assemble(records.value, blobs, manifest.value.savedAt);
}

function unpackManifest(
	entries: ReadonlyMap<string, ZipEntry>,
	unpacker: Unpacker
): Result<Manifest> {
	const entry = entries.get(MANIFEST_PATH);
	if (!entry) return refuse('file-not-survey');
	const bytes = unpacker.unpack(entry, MAX_TEXT_BYTES);
	if (!bytes.ok) return bytes;
	if (crc32(bytes.value) !== entry.crc32) return refuse('file-checksum', { entry: MANIFEST_PATH });
	const text = decodeText(bytes.value, MANIFEST_PATH);
	if (!text.ok) return text;
	const json = parseJson(text.value, MANIFEST_PATH);
	return json.ok ? readManifest(json.value) : json;
}

/**
 * Unpacks what the manifest lists, each part against its check sum; what it does not list is left. A
 * picture that is damaged is left too: it is missing then, and the survey is offered without it.
 */
async function unpackParts(
	manifest: Manifest,
	entries: ReadonlyMap<string, ZipEntry>,
	unpacker: Unpacker
): Promise<Result<ReadonlyMap<string, Uint8Array>>> {
	const parts = new Map<string, Uint8Array>();
	for (const { path, bytes: length, sha256 } of manifest.entries) {
		if (parts.has(path)) return refuse('file-entry-path', { entry: path, reason: 'twice' });
		const entry = entries.get(path);
		const isBlob = blobOfPath(path) !== undefined;
		if (!entry) {
			if (isBlob) continue;
			return refuse('file-entry-missing', { entry: path });
		}
		const bytes = unpacker.unpack(entry, isBlob ? MAX_BLOB_BYTES : MAX_TEXT_BYTES);
		if (!bytes.ok) {
			if (isBlob && bytes.error.code === 'file-damaged') continue;
			return bytes;
		}
		if (bytes.value.length !== length || (await sha256Hex(bytes.value)) !== sha256) {
			if (isBlob) continue;
			return refuse('file-checksum', { entry: path });
		}
		parts.set(path, bytes.value);
	}
	return ok(parts);
}

/** The log is the truth; without one, the survey is taken as it stands. */
async function recordsOf(
	parts: ReadonlyMap<string, Uint8Array>,
	schemaVersion: number
): Promise<Result<Records>> {
	const log = parts.get(LOG_PATH);
	if (!log) {
		const survey = parts.get(SURVEY_PATH);
		if (!survey) return refuse('file-entry-missing', { entry: LOG_PATH });
		const text = decodeText(survey, SURVEY_PATH);
		if (!text.ok) return text;
		const json = parseJson(text.value, SURVEY_PATH);
		return json.ok ? readPlain(json.value, schemaVersion) : json;
	}
	const text = decodeText(log, LOG_PATH);
	if (!text.ok) return text;
	const lines = readLines(text.value, LOG_PATH);
	const records = readRecords(lines.entries, schemaVersion);
	const aside = decodeText(parts.get(SET_ASIDE_PATH) ?? new Uint8Array(), SET_ASIDE_PATH);
	const setAside = readLines(aside.ok ? aside.value : '', SET_ASIDE_PATH);
	return ok({
		commands: records.commands,
		quarantined: [
			...lines.quarantined,
			...records.quarantined,
			...setAside.entries.map(asQuarantined),
			...setAside.quarantined
		]
	});
}

function asQuarantined(record: unknown): Quarantined {
	const { entry, reason } = (record ?? {}) as { entry?: unknown; reason?: unknown };
	return { entry: entry ?? record, reason: typeof reason === 'string' ? reason : '' };
}

function assemble(
	records: Records,
	blobs: readonly StoredBlob[],
	savedAt?: string
): Result<OpenedFile> {
	const commands = sortLog(records.commands);
	const folded = fold(commands);
	if (!folded.ok) return folded;
	const { survey, conflicts } = folded.value;
	const named = blobsNamedBy(commands);
	const mediaTypes = new Map(named.map((blob) => [blob.sha256, knownMediaType(blob.mediaType)]));
	const held = new Set(blobs.map((blob) => blob.sha256));
	return ok({
		siteId: survey.site.id,
		siteName: survey.site.name,
		...(savedAt === undefined ? {} : { savedAt }),
		commands,
		quarantined: records.quarantined,
		survey,
		conflicts,
		blobs: blobs.map((blob) => ({
			...blob,
			mediaType: mediaTypes.get(blob.sha256) ?? blob.mediaType
		})),
		missingBlobs: shownIn(survey)
			.map((blob) => blob.sha256)
			.filter((sha256) => !held.has(sha256))
	});
}
