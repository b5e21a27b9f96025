import { zipSync, type Zippable } from 'fflate';
import type { Command } from '#lib/core/survey/command.ts';
import { sortLog, type Quarantined } from '#lib/core/survey/log.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { blobPath } from '#lib/core/survey/blob-kinds.ts';
import { orderedJson } from './json-text.ts';
import {
	FORMAT,
	FORMAT_VERSION,
	LOG_PATH,
	MANIFEST_PATH,
	READ_ME_PATH,
	SET_ASIDE_PATH,
	SURVEY_PATH,
	type Manifest
} from './manifest.ts';
import { writeSurveyJson } from './plain-survey.ts';
import { sha256Hex } from './sha256.ts';

/** A picture: its bytes and what kind they are, under the hash of the bytes. */
export interface StoredBlob {
	readonly sha256: string;
	readonly mediaType: string;
	readonly bytes: Uint8Array;
}

export interface SurveyFileContent {
	readonly commands: readonly Command[];
	readonly survey: Survey;
	readonly blobs: readonly StoredBlob[];
	/** When the file was made, ISO 8601. */
	readonly savedAt: string;
	/** What could not be read when it came in: it goes out again as it was. */
	readonly quarantined?: readonly Quarantined[];
}

/** What the manifest says of the site. */
type About = Pick<Manifest, 'schemaVersion' | 'savedAt' | 'siteId' | 'siteName'>;

const READ_ME = `This is a compressed-air leak survey; the program that made it opens it as it is, with no need to unpack.
survey.json is the survey as it stood when the file was saved, for people to read, and blobs holds its pictures.
log.jsonl is every change ever made, one a line, from which the survey is built again; manifest.json lists the parts with their check sums.
`;

/** The oldest moment that a zip can state: the file does not depend on the clock. */
const FIXED_TIME = new Date(1980, 0, 1);

/** Packs a survey into one file. The same content gives the same bytes. */
export async function writeSurveyFile(content: SurveyFileContent): Promise<Uint8Array> {
	const { survey, savedAt } = content;
	const entries = new Map<string, Uint8Array>();
	entries.set(SURVEY_PATH, encode(writeSurveyJson(survey)));
	entries.set(LOG_PATH, encode(lines(sortLog(content.commands))));
	if (content.quarantined?.length) {
		entries.set(SET_ASIDE_PATH, encode(lines(content.quarantined)));
	}
	const blobs = addBlobs(entries, content.blobs);
	const { id: siteId, name: siteName } = survey.site;
	return pack({ schemaVersion: survey.schemaVersion, savedAt, siteId, siteName }, entries, blobs);
}

/** Packs records of which nothing is known but where they came from: each goes out as it is. */
export async function writeUnreadFile(content: {
	readonly about: About;
	readonly records: readonly unknown[];
	readonly quarantined: readonly unknown[];
	readonly blobs: readonly StoredBlob[];
}): Promise<Uint8Array> {
	const entries = new Map([[LOG_PATH, encode(lines(content.records))]]);
	if (content.quarantined.length > 0) {
		entries.set(SET_ASIDE_PATH, encode(lines(content.quarantined)));
	}
	const blobs = addBlobs(entries, content.blobs);
	return pack(content.about, entries, blobs);
}

function addBlobs(
	entries: Map<string, Uint8Array>,
	kept: readonly StoredBlob[]
): ReadonlySet<string> {
	const blobs = new Map(kept.map((blob) => [blobPath(blob), blob.bytes]));
	for (const path of [...blobs.keys()].sort()) entries.set(path, blobs.get(path) ?? encode(''));
	return new Set(blobs.keys());
}

async function pack(
	about: About,
	entries: ReadonlyMap<string, Uint8Array>,
	blobs: ReadonlySet<string>
): Promise<Uint8Array> {
	const manifest: Manifest = {
		format: FORMAT,
		formatVersion: FORMAT_VERSION,
		...about,
		entries: await Promise.all(
			[...entries].map(async ([path, bytes]) => ({
				path,
				bytes: bytes.length,
				sha256: await sha256Hex(bytes)
			}))
		)
	};
	const packed: Zippable = {
		[READ_ME_PATH]: encode(READ_ME),
		[MANIFEST_PATH]: encode(`${JSON.stringify(manifest, undefined, '\t')}\n`)
	};
	for (const [path, bytes] of entries) {
		// Pictures are packed already.
		packed[path] = blobs.has(path) && !path.endsWith('.svg') ? [bytes, { level: 0 }] : bytes;
	}
	return zipSync(packed, { level: 6, mtime: FIXED_TIME });
}

function lines(records: readonly unknown[]): string {
	return records.map((record) => `${orderedJson(record)}\n`).join('');
}

function encode(text: string): Uint8Array {
	return new TextEncoder().encode(text);
}
