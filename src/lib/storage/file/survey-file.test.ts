import fc from 'fast-check';
import { unzipSync, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { fold } from '#lib/core/survey/log.ts';
import type { Command } from '#lib/core/survey/command.ts';
import { anyBody, asCommands, startCommand } from '../../../../tests/arbitrary/commands.ts';
import { MAX_TEXT_BYTES } from './limits.ts';
import { writeSurveyJson } from './plain-survey.ts';
import { readSurveyFile, type OpenedFile } from './read-survey-file.ts';
import { sha256Hex } from './sha256.ts';
import { writeSurveyFile, type StoredBlob } from './write-survey-file.ts';

const SAVED_AT = '2026-03-02T16:00:00+01:00';
const [picture, drawing] = [
	await blobOf(new Uint8Array([137, 80, 78, 71, 13, 10, 26, 10, 0, 1]), 'image/png'),
	await blobOf(
		new TextEncoder().encode('<svg xmlns="http://www.w3.org/2000/svg"/>'),
		'image/svg+xml'
	)
];

async function blobOf(bytes: Uint8Array, mediaType: string): Promise<StoredBlob> {
	return { sha256: await sha256Hex(bytes), mediaType, bytes };
}

function sampleLog(): Command[] {
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

function surveyOf(commands: readonly Command[]) {
	const folded = fold(commands);
	if (!folded.ok) throw new Error(folded.error.code);
	return folded.value.survey;
}

function pack(commands = sampleLog(), blobs: StoredBlob[] = [picture, drawing]) {
	return writeSurveyFile({ commands, survey: surveyOf(commands), blobs, savedAt: SAVED_AT });
}

async function open(bytes: Uint8Array): Promise<OpenedFile> {
	const opened = await readSurveyFile(bytes);
	if (!opened.ok) throw new Error(JSON.stringify(opened.error));
	return opened.value;
}

async function codeOf(bytes: Uint8Array): Promise<string> {
	const opened = await readSurveyFile(bytes);
	return opened.ok ? 'opened' : opened.error.code;
}

/** The file with parts exchanged; the manifest is made to agree unless it is exchanged itself. */
async function repack(change: (parts: Record<string, Uint8Array>) => void) {
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

function json(value: unknown): Uint8Array<ArrayBuffer> {
	return new TextEncoder().encode(typeof value === 'string' ? value : JSON.stringify(value));
}

const plain = (members: object) =>
	json({ format: 'airtally-survey', formatVersion: 1, ...members });

describe('a survey file', () => {
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

describe('a file that is not right is refused by name', () => {
	test.each<[string, Uint8Array]>([
		['file-empty', new Uint8Array()],
		['file-not-survey', json('hello')],
		['file-not-survey', json('{}')],
		['file-not-survey', json('{"format":"other","formatVersion":1}')],
		['file-not-survey', plain({})],
		['file-not-survey', zipSync({ 'photo.png': new Uint8Array(9) })],
		['file-newer', plain({ formatVersion: 2, survey: {} })],
		['file-newer', plain({ survey: { schemaVersion: 2 } })],
		['file-newer', plain({ schemaVersion: 2, log: [] })],
		['log-without-start', plain({ log: [] })],
		['log-without-start', plain({ log: asCommands([{ kind: 'remove-leak', leakId: 'leak-1' }]) })],
		['survey-invalid', plain({ survey: { schemaVersion: 1 } })],
		['survey-invalid', plain({ survey: [] })],
		['json-unreadable', json('{"format":"airtally-survey",}')],
		['json-unreadable', new Uint8Array([0x7b, 0xff, 0xfe])],
		['file-truncated', json('{"format":"airtally-survey","survey":{"si')],
		['json-too-deep', json(`{"format":${'['.repeat(10_000)}${']'.repeat(10_000)}}`)]
	])('%s (case %#)', async (code, bytes) => {
		expect(await codeOf(bytes)).toBe(code);
	});

	test('a newer file says its version', async () => {
		const bytes = await repack((parts) => {
			const manifest = JSON.parse(new TextDecoder().decode(parts['manifest.json'])) as object;
			parts['manifest.json'] = json({ ...manifest, schemaVersion: 7 });
		});
		expect(await readSurveyFile(bytes)).toEqual({
			ok: false,
			error: { code: 'file-newer', detail: { version: 7, newest: 1 } }
		});
	});

	test('a part that was changed is named', async () => {
		const parts = unzipSync(await pack());
		parts['survey.json'] = json('{"changed":true}');
		expect(await readSurveyFile(zipSync(parts))).toEqual({
			ok: false,
			error: { code: 'file-checksum', detail: { entry: 'survey.json' } }
		});
	});

	test('a picture under the hash of another is refused', async () => {
		const path = `blobs/${picture.sha256}.png`;
		const bytes = await repack((parts) => (parts[path] = json('<script>')));
		expect(await codeOf(bytes)).toBe('file-checksum');
	});

	test('a log that the manifest lists and the archive lacks', async () => {
		const { 'log.jsonl': _, ...parts } = unzipSync(await pack());
		expect(await codeOf(zipSync(parts))).toBe('file-entry-missing');
	});

	test.each(['../evil', '/etc/passwd', 'C:\\evil', 'a/./b', 'a//b', 'a\u0000b'])(
		'the path %j',
		async (path) => {
			const bytes = zipSync({ ...unzipSync(await pack()), [path]: json('x') });
			expect(await codeOf(bytes)).toBe('file-entry-path');
		}
	);

	test('two entries of one name', async () => {
		const bytes = zipSync({ ...unzipSync(await pack()), 'log.jsonX': json('x') });
		expect(await codeOf(replaced(bytes, 'log.jsonX', 'log.jsonl'))).toBe('file-entry-path');
	});

	test('an entry with one name in the directory and another in its place', async () => {
		const bytes = await pack();
		const at = new TextDecoder('latin1').decode(bytes).indexOf('log.jsonl');
		bytes[at] = 'L'.charCodeAt(0);
		expect(await codeOf(bytes)).toBe('file-entry-path');
	});

	test('a bomb, although the archive states a small size', async () => {
		const bomb = zipSync({ 'manifest.json': new Uint8Array(20 * 1024 ** 2) }, { level: 9 });
		expect(bomb.length).toBeLessThan(100_000);
		forgeSizes(bomb, 100);
		expect(await codeOf(bomb)).toBe('file-bomb');
	});

	test('text that is larger than a survey can be', async () => {
		const noise = new Uint8Array(MAX_TEXT_BYTES + 1);
		for (let at = 0; at < noise.length; at += 100) noise[at] = at % 251;
		const bytes = zipSync({ 'manifest.json': noise }, { level: 1 });
		forgeSizes(bytes, 100);
		expect(await codeOf(bytes)).toBe('file-too-large');
	});

	test('a zip that is locked', async () => {
		const bytes = await pack();
		const directory = new TextDecoder('latin1').decode(bytes).indexOf('PK\u0001\u0002');
		bytes[directory + 8] = 1;
		expect(await codeOf(bytes)).toBe('file-encrypted');
	});
});

/** Writes a small "uncompressed size" into every directory record, as a forger would. */
function forgeSizes(bytes: Uint8Array, size: number): void {
	const text = new TextDecoder('latin1').decode(bytes);
	const view = new DataView(bytes.buffer, bytes.byteOffset);
	for (
		let at = text.indexOf('PK\u0001\u0002');
		at >= 0;
		at = text.indexOf('PK\u0001\u0002', at + 1)
	) {
		view.setUint32(at + 24, size, true);
	}
}

function replaced(bytes: Uint8Array, from: string, to: string): Uint8Array {
	const text = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
	return Uint8Array.from(text.replaceAll(from, to), (letter) => letter.charCodeAt(0));
}

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

describe('a damaged file is refused or opens to the same survey, and never throws', () => {
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
			{ numRuns: 1500 }
		);
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
			{ numRuns: 500 }
		);
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
			{ numRuns: 500 }
		);
	});
});

function byHash(a: StoredBlob, b: StoredBlob): number {
	return a.sha256 < b.sha256 ? -1 : 1;
}
