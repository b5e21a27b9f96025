import { readFile } from 'node:fs/promises';
import { latestTime } from '#lib/core/survey/log.ts';
import { readSurveyFile } from '#lib/storage/file/read-survey-file.ts';
import { writeSurveyFile } from '#lib/storage/file/write-survey-file.ts';

/** The demo site as another device has it, with a note of its own on the site. */
export async function clashingFile(note: string): Promise<Buffer> {
	const bytes = await readFile('survey-examples/ceramics-works.airtally.zip');
	const demo = await readSurveyFile(new Uint8Array(bytes));
	if (!demo.ok) throw new Error(demo.error.code);
	const { commands, survey, blobs } = demo.value;
	const command = {
		id: 'command-elsewhere',
		device: 'device-elsewhere',
		time: latestTime(commands) + 1,
		at: '2026-11-02T08:00:00Z',
		body: { kind: 'set-site' as const, changes: { note } }
	};
	const savedAt = command.at;
	const file = { commands: [...commands, command], survey, blobs, savedAt, quarantined: [] };
	return Buffer.from(await writeSurveyFile(file));
}
