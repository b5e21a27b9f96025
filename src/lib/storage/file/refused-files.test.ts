import { unzipSync, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { asCommands } from '../../../../tests/arbitrary/commands.ts';
import { codeOf, json, pack, plain, repack } from '../../../../tests/arbitrary/sample-file.ts';
import { MAX_TEXT_BYTES } from './limits.ts';
import { readSurveyFile } from './read-survey-file.ts';

describe('a file that is not right is refused by name', { timeout: 30_000 }, () => {
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
