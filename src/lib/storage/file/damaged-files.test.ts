import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Command } from '#lib/core/survey/command.ts';
import {
	SAVED_AT,
	drawing,
	json,
	opened as open,
	pack,
	picture,
	repack,
	sampleLog,
	surveyOf
} from '../../../../tests/arbitrary/sample-file.ts';
import { tally, times } from '../../../../tests/faults/long.ts';
import { readSurveyFile } from './read-survey-file.ts';

describe('one bad record in a good file', () => {
	async function withLog(change: (lines: string[]) => void) {
		return repack((parts) => {
			const lines = new TextDecoder().decode(parts['log.jsonl']).trim().split('\n');
			change(lines);
			parts['log.jsonl'] = json(lines.join('\n'));
		});
	}

	test('is set aside, and the rest is offered', async () => {
		const opened = await open(
			await withLog((lines) => lines.splice(4, 0, '{"id":"oops"}', 'oops'))
		);
		expect(opened.commands).toEqual(sampleLog());
		expect(opened.quarantined.map((bad) => bad.entry)).toEqual(['oops', { id: 'oops' }]);
	});

	test('is set aside when it is in the start of the site', async () => {
		const opened = await open(
			await withLog((lines) => {
				const start = JSON.parse(lines[0] ?? '') as { body: { survey: { sections: object } } };
				start.body.survey.sections = { 'section-1': { id: 'section-1', name: 5 } };
				lines[0] = JSON.stringify(start);
			})
		);
		expect(opened.commands).toEqual(sampleLog());
		expect(opened.quarantined).toHaveLength(1);
	});

	test('is set aside when it claims a time that nothing could follow', async () => {
		const opened = await open(
			await withLog((lines) => {
				const last = JSON.parse(lines[4] ?? '') as Command;
				lines.push(JSON.stringify({ ...last, id: 'command-late', time: Number.MAX_SAFE_INTEGER }));
			})
		);
		expect(opened.commands).toEqual(sampleLog());
		expect(opened.quarantined.map((bad) => bad.reason)).toEqual(['time: too large']);
	});

	test('is set aside when another command has its name', async () => {
		const opened = await open(
			await withLog((lines) => {
				const last = JSON.parse(lines[4] ?? '') as Command;
				lines.push(lines[4] ?? '', JSON.stringify({ ...last, time: 99 }));
			})
		);
		expect(opened.commands).toEqual(sampleLog());
		expect(opened.quarantined.map((bad) => bad.reason)).toEqual(['id: used twice']);
	});

	test('with the name of an inherited member does no harm', async () => {
		const opened = await open(
			await withLog((lines) => {
				for (const key of ['__proto__', 'constructor', 'prototype']) {
					const id = `command-${key.replaceAll('_', '')}`;
					const head = `{"id":"${id}","device":"device-x","time":50,"at":"${SAVED_AT}"`;
					lines.push(
						`${head},"body":{"kind":"set-leak","leakId":"leak-1","changes":{"${key}":{"tag":9}}}}`,
						`${head}, "body":{"kind":"remove-leak","leakId":"${key}"}}`
					);
				}
				lines.push(
					`{"__proto__":{"x":1},"id":"command-bands","device":"device-x","time":51,"at":"${SAVED_AT}",` +
						`"body":{"kind":"set-starting-values","changes":{"soapBands":{"__proto__":{"lowMm":1,"highMm":2}}}}}`
				);
			})
		);
		expect(opened.quarantined.length).toBeGreaterThanOrEqual(6);
		const clean = surveyOf(sampleLog());
		expect(opened.survey.leaks).toEqual(clean.leaks);
		expect(Object.keys(opened.survey.startingValues.soapBands)).toEqual([]);
		expect(Object.getPrototypeOf(opened.survey.startingValues.soapBands)).toBe(Object.prototype);
		expect(({} as Record<string, unknown>)['tag']).toBeUndefined();
		expect(({} as Record<string, unknown>)['lowMm']).toBeUndefined();
	});
});

describe('one bad picture in a good file is missing, and the rest is offered', () => {
	const path = `blobs/${picture.sha256}.png`;

	test.each<[string, () => Promise<Uint8Array>]>([
		['other bytes under its hash', () => repack((parts) => (parts[path] = json('<script>')))],
		['bytes that were changed', () => withPictureBytes((bytes) => bytes.fill(0, 4, 8))],
		['bytes that end early', () => repack((parts) => (parts[path] = new Uint8Array(3)))]
	])('%s', async (_, make) => {
		const opened = await open(await make());
		expect(opened.survey).toEqual(surveyOf(sampleLog()));
		expect(opened.missingBlobs).toEqual([picture.sha256]);
		expect(opened.blobs.map(({ sha256 }) => sha256)).toEqual([drawing.sha256]);
	});

	/** The packed bytes of the picture, which lie in the file as they are, changed in place. */
	async function withPictureBytes(change: (bytes: Uint8Array) => void): Promise<Uint8Array> {
		const bytes = await pack();
		const start = bytes.findIndex((_, at) => picture.bytes.every((b, i) => bytes[at + i] === b));
		change(bytes.subarray(start, start + picture.bytes.length));
		return bytes;
	}
});

describe(
	'a damaged file is refused or opens to the same survey, and never throws',
	{ timeout: times(60_000, 3_600_000) },
	() => {
		const flips = times(800, 10_000);
		const expected = surveyOf(sampleLog());

		async function check(bytes: Uint8Array): Promise<boolean> {
			const opened = await readSurveyFile(bytes);
			if (!opened.ok) expect(opened.error.code).toMatch(/^[a-z]+(-[a-z]+)+$/);
			else expect(opened.value.survey).toEqual(expected);
			return opened.ok;
		}

		test('cut off at every 1 %', async () => {
			const bytes = await pack();
			for (let percent = 0; percent < 100; percent++) {
				const cut = bytes.slice(0, Math.floor((bytes.length * percent) / 100));
				expect(await check(cut), `${percent} %`).toBe(false);
			}
			tally('Survey file cut off at every 1 %', 100, 0);
		});

		test('with any one bit turned over', async () => {
			const bytes = await pack();
			await fc.assert(
				fc.asyncProperty(
					fc
						.nat({ max: bytes.length * 8 - 1 })
						.map((bit) => ({ at: bit >> 3, mask: 1 << (bit & 7) })),
					async ({ at, mask }) => {
						const flipped = bytes.slice();
						flipped[at] = (flipped[at] ?? 0) ^ mask;
						await check(flipped);
					}
				),
				{ numRuns: flips }
			);
			tally('Survey file with one bit turned over', flips, 0);
		});

		test('with a run of bytes overwritten', async () => {
			const bytes = await pack();
			await fc.assert(
				fc.asyncProperty(
					fc.nat({ max: bytes.length - 1 }),
					fc.uint8Array({ minLength: 1, maxLength: 40 }),
					async (at, patch) => {
						const broken = bytes.slice();
						broken.set(patch.subarray(0, broken.length - at), at);
						await check(broken);
					}
				),
				{ numRuns: times(300, 3_000) }
			);
			tally('Survey file with a run of bytes overwritten', times(300, 3_000), 0);
		});

		test('made of any bytes after a zip or JSON start', async () => {
			await fc.assert(
				fc.asyncProperty(
					fc.constantFrom('PK\u0003\u0004', '{', '{"format":"airtally-survey","formatVersion":1,'),
					fc.uint8Array({ maxLength: 400 }),
					async (head, rest) => {
						const bytes = new Uint8Array([...json(head), ...rest]);
						expect((await readSurveyFile(bytes)).ok).toBe(false);
					}
				),
				{ numRuns: 300 }
			);
		});
	}
);
