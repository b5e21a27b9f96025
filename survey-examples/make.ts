import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { argv } from 'node:process';
import { fileURLToPath } from 'node:url';
import type { Command } from '../src/lib/core/survey/command.ts';
import { fold } from '../src/lib/core/survey/log.ts';
import { writeSurveyFile, type StoredBlob } from '../src/lib/storage/file/write-survey-file.ts';
import { autumnPictures } from './ceramics-autumn-pictures.ts';
import { AUTUMN, ceramicsAutumnLog } from './ceramics-autumn.ts';
import { GALLERY_FILE, GALLERY_PICTURE, PLAN_FILE } from './ceramics-plans.ts';
import { ceramicsWorksLog, ROUND } from './ceramics-works.ts';
import { galleryPdf } from './gallery.ts';
import { planSvg } from './plan.ts';

const FOLDER = dirname(fileURLToPath(import.meta.url));
const SURVEY_FILE = 'ceramics-works.airtally.zip';
const AUTUMN_FILE = 'ceramics-works-autumn.airtally.zip';
const AUTUMN_SAVED_AT = '2026-10-14T16:00:00+02:00';
const SAVED_AT = '2026-04-28T16:00:00+02:00';

/** The example files, by name. Made from the data and the one picture beside this file alone: same data, same bytes. */
export async function makeExamples(): Promise<ReadonlyMap<string, Uint8Array>> {
	const plan = blobOf('image/svg+xml', new TextEncoder().encode(planSvg()));
	const gallery = blobOf('image/jpeg', new Uint8Array(readFileSync(join(FOLDER, GALLERY_PICTURE))));
	const pdf = blobOf('application/pdf', galleryPdf());
	const spring = ceramicsWorksLog({
		ground: plan.sha256,
		gallery: gallery.sha256,
		galleryPdf: pdf.sha256
	});
	const autumn = ceramicsAutumnLog(spring);
	const blobs = [plan, gallery, pdf];
	const pictures = autumnPictures(ROUND.id, AUTUMN.id).map(({ blob }) => blob);
	return new Map([
		[PLAN_FILE, plan.bytes],
		[GALLERY_FILE, pdf.bytes],
		[SURVEY_FILE, await surveyFile(spring, blobs, SAVED_AT)],
		[AUTUMN_FILE, await surveyFile(autumn, [...blobs, ...pictures], AUTUMN_SAVED_AT)]
	]);
}

function blobOf(mediaType: string, bytes: Uint8Array): StoredBlob {
	return { sha256: createHash('sha256').update(bytes).digest('hex'), mediaType, bytes };
}

async function surveyFile(
	commands: readonly Command[],
	blobs: readonly StoredBlob[],
	savedAt: string
): Promise<Uint8Array> {
	const folded = fold(commands);
	if (!folded.ok) throw new Error(`the log does not fold: ${folded.error.code}`);
	const { survey, conflicts } = folded.value;
	if (conflicts.length > 0) throw new Error(`commands do not apply: ${JSON.stringify(conflicts)}`);
	return writeSurveyFile({ commands, survey, blobs, savedAt });
}

if (argv[1] === fileURLToPath(import.meta.url)) {
	for (const [name, bytes] of await makeExamples()) {
		writeFileSync(join(FOLDER, name), bytes);
		console.log(`${name}: ${bytes.length} bytes`);
	}
}
