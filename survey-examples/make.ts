import { createHash } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { argv } from 'node:process';
import { fileURLToPath } from 'node:url';
import { fold } from '../src/lib/core/survey/log.ts';
import { writeSurveyFile } from '../src/lib/storage/file/write-survey-file.ts';
import { ceramicsWorksLog, PLAN_FILE } from './ceramics-works.ts';
import { planSvg } from './plan.ts';

const SURVEY_FILE = 'ceramics-works.airtally.zip';
const SAVED_AT = '2026-04-28T16:00:00+02:00';

/** The example files, by name. Made from the data beside this file alone: same data, same bytes. */
export async function makeExamples(): Promise<ReadonlyMap<string, Uint8Array>> {
	const plan = new TextEncoder().encode(planSvg());
	const sha256 = createHash('sha256').update(plan).digest('hex');
	const commands = ceramicsWorksLog(sha256);
	const folded = fold(commands);
	if (!folded.ok) throw new Error(`the log does not fold: ${folded.error.code}`);
	const { survey, conflicts } = folded.value;
	if (conflicts.length > 0) throw new Error(`commands do not apply: ${JSON.stringify(conflicts)}`);
	const file = await writeSurveyFile({
		commands,
		survey,
		blobs: [{ sha256, mediaType: 'image/svg+xml', bytes: plan }],
		savedAt: SAVED_AT
	});
	return new Map([
		[PLAN_FILE, plan],
		[SURVEY_FILE, file]
	]);
}

if (argv[1] === fileURLToPath(import.meta.url)) {
	const folder = dirname(fileURLToPath(import.meta.url));
	for (const [name, bytes] of await makeExamples()) {
		writeFileSync(join(folder, name), bytes);
		console.log(`${name}: ${bytes.length} bytes`);
	}
}
