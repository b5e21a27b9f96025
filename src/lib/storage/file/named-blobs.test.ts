import { expect, test } from 'vitest';
import type { CommandBody } from '#lib/core/survey/command.ts';
import { asCommands, startCommand, startedSurvey } from '../../../../tests/arbitrary/commands.ts';
import { blobsNamedBy } from './named-blobs.ts';

const [a, b, c, d] = ['a', 'b', 'c', 'd'].map((digit) => digit.repeat(64)) as [
	string,
	string,
	string,
	string
];
const image = (sha256: string) => ({ sha256, mediaType: 'image/png', widthPx: 8, heightPx: 6 });

test('every picture that a log names is found once: of plans, photos, replaced ones, and the start', () => {
	const plan = { id: 'plan-1', name: 'Ground floor', image: image(a) };
	const original = { sha256: d, mediaType: 'application/pdf' };
	const bodies: CommandBody[] = [
		{ kind: 'add-plan', plan: { ...plan, id: 'plan-2', image: image(b), original } },
		{ kind: 'set-plan', planId: 'plan-2', changes: { image: image(a) } },
		{
			kind: 'add-photo',
			leakId: 'leak-1',
			photo: {
				id: 'photo-1',
				image: image(c),
				roundId: 'round-1',
				of: 'leak',
				takenAt: '2026-03-02T08:15:00Z'
			}
		},
		{ kind: 'set-site', changes: { note: a } }
	];
	const start = startCommand({ ...startedSurvey(), plans: { 'plan-1': plan } });
	expect(blobsNamedBy([start, ...asCommands(bodies)])).toEqual([
		{ sha256: a, mediaType: 'image/png' },
		{ sha256: b, mediaType: 'image/png' },
		{ sha256: d, mediaType: 'application/pdf' },
		{ sha256: c, mediaType: 'image/png' }
	]);
});
