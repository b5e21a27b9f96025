import { readFileSync } from 'node:fs';
import { strFromU8, unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { MIGRATIONS } from './migrations/list.ts';
import { migrate } from './migrations/migrate.ts';
import { SCHEMA_VERSION } from '#lib/core/survey/schema.ts';
import { readSurveyFile } from './read-survey-file.ts';

// One file for each released schema version. They are never edited: what people have saved must open.
test.each(Array.from({ length: SCHEMA_VERSION }, (_, index) => index + 1))(
	'a file saved with schema version %i opens whole',
	async (version) => {
		const file = new URL(
			`../../../../tests/fixtures/survey-v${version}.airtally.zip`,
			import.meta.url
		);
		const bytes = new Uint8Array(readFileSync(file));
		const opened = await readSurveyFile(bytes);
		if (!opened.ok) throw new Error(JSON.stringify(opened.error));
		const { survey, quarantined, conflicts, missingBlobs, commands } = opened.value;
		expect({ quarantined, conflicts, missingBlobs }).toEqual({
			quarantined: [],
			conflicts: [],
			missingBlobs: []
		});
		expect(commands).toHaveLength(19);
		const saved = JSON.parse(strFromU8(unzipSync(bytes)['survey.json'] ?? new Uint8Array())) as {
			survey: unknown;
		};
		const [brought] = migrate('survey', [saved.survey], version);
		expect(survey).toEqual(brought);
		expect(survey.leaks['leak-two']?.note).toBe('Σ, 日本, "quotes"');
		expect(survey.leaks['leak-three']?.removed).toBe(true);
	}
);

test('the migrations lead, one version at a time, to the version of today', () => {
	expect(MIGRATIONS.map((migration) => migration.to)).toEqual(
		Array.from({ length: SCHEMA_VERSION - 1 }, (_, index) => index + 2)
	);
});

test('a record goes through each later migration once, in order', () => {
	const step = (to: number) => ({
		to,
		name: `to-${to}`,
		survey: (record: unknown) => `${String(record)} s${to}`,
		command: (record: unknown) => `${String(record)} c${to}`
	});
	const steps = [step(2), step(3), step(4)];
	expect(migrate('survey', ['a', 'b'], 2, steps)).toEqual(['a s3 s4', 'b s3 s4']);
	expect(migrate('command', ['a'], 1, steps)).toEqual(['a c2 c3 c4']);
	expect(migrate('command', ['a'], 4, steps)).toEqual(['a']);
});
