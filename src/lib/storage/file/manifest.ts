import { z } from 'zod';
import { Id } from '#lib/core/survey/ids.ts';
import { SCHEMA_VERSION } from '#lib/core/survey/schema.ts';
import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import { MAX_ENTRIES } from './limits.ts';

export const FORMAT = 'airtally-survey';
/** How the parts of the file are laid out; the shape of what is in them has the schema's version. */
export const FORMAT_VERSION = 1;

export const MANIFEST_PATH = 'manifest.json';
export const SURVEY_PATH = 'survey.json';
export const LOG_PATH = 'log.jsonl';
export const SET_ASIDE_PATH = 'set-aside.jsonl';
export const READ_ME_PATH = 'READ ME.txt';

const Manifest = z.object({
	format: z.literal(FORMAT),
	formatVersion: z.literal(FORMAT_VERSION),
	schemaVersion: z.int().min(1),
	savedAt: z.iso.datetime({ offset: true }),
	siteId: Id,
	siteName: z.string().max(200),
	entries: z
		.array(
			z.object({
				path: z.string().max(300),
				bytes: z.int().min(0),
				sha256: z.string().regex(/^[0-9a-f]{64}$/)
			})
		)
		.max(MAX_ENTRIES)
});
export type Manifest = z.infer<typeof Manifest>;

/** Refuses what is not ours (`file-not-survey`) and what is newer than this program (`file-newer`). */
export function checkFormat(json: unknown): Result<null> {
	const marked = z
		.object({
			format: z.literal(FORMAT),
			formatVersion: z.int().min(1),
			schemaVersion: z.int().min(1).optional()
		})
		.safeParse(json);
	if (!marked.success) return refuse('file-not-survey');
	const { formatVersion, schemaVersion } = marked.data;
	if (formatVersion > FORMAT_VERSION) {
		return refuse('file-newer', { version: formatVersion, newest: FORMAT_VERSION });
	}
	return checkSchemaVersion(schemaVersion ?? 1);
}

/** Refuses a survey whose shape is newer than this program knows. */
export function checkSchemaVersion(version: number): Result<null> {
	if (version <= SCHEMA_VERSION) return ok(null);
	return refuse('file-newer', { version, newest: SCHEMA_VERSION });
}

export function readManifest(json: unknown): Result<Manifest> {
	const format = checkFormat(json);
	if (!format.ok) return format;
	const parsed = Manifest.safeParse(json);
	if (parsed.success) return ok(parsed.data);
	return refuse('manifest-invalid', { field: parsed.error.issues[0]?.path.join('.') ?? '' });
}
