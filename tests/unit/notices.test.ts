import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { notices } from '../../src/setup/notices.mjs';

test('the notices in the app name every package of the lock file that is built in', () => {
	// Out of date? `npm run notices`.
	expect(readFileSync('static/third-party-notices.txt', 'utf8')).toBe(notices());
});

test('each package brings the text of its licence, or is known to bring none', () => {
	const silent = notices()
		.split('='.repeat(100))
		.slice(1, -1)
		.filter((part) => part.trim().split('\n\n').length < 3)
		.map((part) => part.trim().split('\n')[0]?.split(' ')[0]);
	expect(silent).toEqual(['qrcode-generator']);
});
