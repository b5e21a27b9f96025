import fc from 'fast-check';
import { unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { anyBody, asCommands, startCommand } from '../../../../tests/arbitrary/commands.ts';
import {
	SAVED_AT,
	drawing,
	json,
	opened as open,
	pack,
	picture,
	plain,
	repack,
	sampleLog,
	surveyOf
} from '../../../../tests/arbitrary/sample-file.ts';
import { writeSurveyJson } from './plain-survey.ts';
import { writeSurveyFile, type StoredBlob } from './write-survey-file.ts';

describe('a survey file', { timeout: 30_000 }, () => {
	test('opens to the log, the survey and the pictures that were saved', async () => {
		const opened = await open(await pack());
		expect(opened.commands).toEqual(sampleLog());
		expect(opened.survey).toEqual(surveyOf(sampleLog()));
		expect(opened.blobs.toSorted(byHash)).toEqual([picture, drawing].toSorted(byHash));
		expect(opened).toMatchObject({
			siteId: 'site-1',
			siteName: 'Tonwerk Nord',
			savedAt: SAVED_AT,
			quarantined: [],
			conflicts: [],
			missingBlobs: []
		});
	});

	test('has the same bytes for the same content, whatever order it came in', async () => {
		const bytes = await pack();
		expect(await pack(sampleLog().reverse(), [drawing, picture])).toEqual(bytes);
		const opened = await open(bytes);
		expect(await pack([...opened.commands], [...opened.blobs])).toEqual(bytes);
	});

	test('has the parts that its READ ME names', async () => {
		expect(Object.keys(unzipSync(await pack()))).toEqual([
			'READ ME.txt',
			'manifest.json',
			'survey.json',
			'log.jsonl',
			...[picture, drawing]
				.map((blob) => `blobs/${blob.sha256}.${blob === picture ? 'png' : 'svg'}`)
				.sort()
		]);
	});

	test('gives back any log that it was given', async () => {
		await fc.assert(
			fc.asyncProperty(fc.array(anyBody, { maxLength: 30 }), async (bodies) => {
				const log = [startCommand(), ...asCommands(bodies)];
				const opened = await open(await pack(log, []));
				expect(opened.commands).toEqual(log);
				expect(opened.quarantined).toEqual([]);
				expect(opened.survey).toEqual(surveyOf(log));
			}),
			{ numRuns: 50 }
		);
	});

	test('names the pictures that it should hold and does not', async () => {
		const opened = await open(await pack(sampleLog(), [drawing]));
		expect(opened.missingBlobs).toEqual([picture.sha256]);
		expect(opened.survey).toEqual(surveyOf(sampleLog()));
	});

	test('opens after an archiver has packed it anew', async () => {
		expect((await open(await repack(() => undefined))).survey).toEqual(surveyOf(sampleLog()));
	});

	test('carries what it could not read on to the next file', async () => {
		const quarantined = [{ entry: { kind: 'from elsewhere' }, reason: 'body: unknown' }];
		const commands = sampleLog();
		const bytes = await writeSurveyFile({
			commands,
			survey: surveyOf(commands),
			blobs: [],
			savedAt: SAVED_AT,
			quarantined
		});
		expect((await open(bytes)).quarantined).toEqual(quarantined);
	});
});

describe('plain JSON of a survey', () => {
	test('is what survey.json in the file is, and opens to one start of the site', async () => {
		const survey = surveyOf(sampleLog());
		const opened = await open(json(writeSurveyJson(survey)));
		expect(opened.survey).toEqual(survey);
		expect(opened.commands).toHaveLength(1);
		expect(opened.missingBlobs).toEqual([picture.sha256, drawing.sha256]);
		const again = await open(plain({ survey }));
		expect(again.commands).toEqual(opened.commands);
		expect(unzipSync(await pack())['survey.json']).toEqual(json(writeSurveyJson(survey)));
	});

	test('opens with a log, with a byte order mark and with white space in front', async () => {
		const text = `\ufeff\n\t ${new TextDecoder().decode(plain({ log: sampleLog() }))}`;
		expect((await open(json(text))).commands).toEqual(sampleLog());
	});

	test('sets one bad leak aside and offers the rest', async () => {
		const survey = surveyOf(sampleLog());
		const leak = survey.leaks['leak-1'];
		const leaks = {
			'leak-1': leak,
			'leak-2': { ...leak, id: 'leak-2', tag: 'two' },
			'leak-3': { ...leak, id: 'leak-4' },
			constructor: leak
		};
		const opened = await open(plain({ survey: { ...survey, leaks } }));
		expect(opened.survey).toEqual(survey);
		expect(opened.quarantined.map((bad) => bad.reason)).toEqual([
			expect.stringMatching(/^leaks\.leak-2\.tag: /),
			'leaks.leak-3.id: another name',
			'leaks.constructor.id: another name'
		]);
	});
});

function byHash(a: StoredBlob, b: StoredBlob): number {
	return a.sha256 < b.sha256 ? -1 : 1;
}
