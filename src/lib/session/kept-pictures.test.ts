import { expect, test } from 'vitest';
import { drawing, picture, sampleLog, surveyOf } from '../../../tests/arbitrary/sample-file.ts';
import { asCommands } from '../../../tests/arbitrary/commands.ts';
import { keptPictures } from './kept-pictures.ts';

const image = (blob: typeof picture) => ({
	sha256: blob.sha256,
	mediaType: blob.mediaType,
	widthPx: 800,
	heightPx: 600
});

test('a picture that was replaced is kept for undo, and counted apart', async () => {
	const replace = asCommands(
		[{ kind: 'set-plan', planId: 'plan-1', changes: { image: image(drawing) } }],
		'device-a',
		50
	);
	const commands = [...sampleLog(), ...replace];
	const survey = surveyOf(commands);
	const all = new Map([picture, drawing].map((blob) => [blob.sha256, blob]));
	const read = (sha256: string) => Promise.resolve(all.get(sha256));
	expect(await keptPictures(commands, survey, read)).toEqual({
		count: 2,
		bytes: picture.bytes.length + drawing.bytes.length,
		unused: [picture.sha256],
		unusedBytes: picture.bytes.length,
		missing: 0
	});
	// One that was let go is not missing; one that is shown is.
	all.delete(picture.sha256);
	expect(await keptPictures(commands, survey, read)).toMatchObject({
		count: 1,
		unused: [],
		missing: 0
	});
	all.set(picture.sha256, picture).delete(drawing.sha256);
	expect(await keptPictures(commands, survey, read)).toMatchObject({ count: 1, missing: 1 });
});
