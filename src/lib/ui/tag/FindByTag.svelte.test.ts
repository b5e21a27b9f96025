import jsQR from 'jsqr';
import makeQr from 'qrcode-generator';
import { afterEach, expect, it, vi } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import FindByTag from './FindByTag.svelte';

const LEAK = 'leak-01a2b3c4-d5e6-4f70-8a9b-000000000012';

afterEach(() => vi.unstubAllGlobals());

/** A code as it is on a tag, before a camera: a moving picture of it. */
function cameraOn(text: string): MediaStream {
	const code = makeQr(0, 'M');
	code.addData(text);
	code.make();
	const canvas = document.createElement('canvas');
	canvas.width = canvas.height = 480;
	const paper = canvas.getContext('2d');
	if (!paper) throw new Error('no canvas here');
	const cell = Math.floor(360 / code.getModuleCount());
	const draw = () => {
		paper.fillStyle = '#fff';
		paper.fillRect(0, 0, 480, 480);
		paper.fillStyle = '#000';
		for (let row = 0; row < code.getModuleCount(); row++)
			for (let column = 0; column < code.getModuleCount(); column++)
				if (code.isDark(row, column))
					paper.fillRect(60 + column * cell, 60 + row * cell, cell, cell);
	};
	draw();
	// A picture that never changes sends no frames to who looks later.
	const again = setInterval(draw, 50);
	const stream = canvas.captureStream(20);
	stream.getTracks()[0]?.addEventListener('ended', () => clearInterval(again));
	return stream;
}

/** Reads codes as a phone's browser does, by another library than the one that draws them. */
class Reader {
	static getSupportedFormats = () => Promise.resolve(['qr_code']);

	detect(video: HTMLVideoElement): Promise<{ rawValue: string }[]> {
		const canvas = new OffscreenCanvas(video.videoWidth || 1, video.videoHeight || 1);
		const paper = canvas.getContext('2d');
		if (!paper) throw new Error('no canvas here');
		paper.drawImage(video, 0, 0);
		const { data, width, height } = paper.getImageData(0, 0, canvas.width, canvas.height);
		const code = jsQR(data, width, height);
		return Promise.resolve(code ? [{ rawValue: code.data }] : []);
	}
}

async function shown(find: (text: string) => string | undefined) {
	const opened: string[] = [];
	const screen = await render(FindByTag, {
		opens: 'leak',
		find,
		onopen: (leakId: string) => opened.push(leakId)
	});
	return { opened, screen };
}

it('a code held before the camera opens its leak, and the camera is let go', async () => {
	vi.stubGlobal('BarcodeDetector', Reader);
	const stream = cameraOn(LEAK);
	vi.spyOn(navigator.mediaDevices, 'getUserMedia').mockResolvedValue(stream);
	const { opened } = await shown((text) => (text === LEAK ? LEAK : undefined));
	await page.getByRole('button', { name: 'Scan a tag' }).click();
	await expect.poll(() => opened, { timeout: 10_000 }).toEqual([LEAK]);
	await expect
		.poll(() => stream.getTracks().map(({ readyState }) => readyState))
		.toEqual(['ended']);
	await expect
		.element(page.getByRole('button', { name: 'Stop the camera' }))
		.not.toBeInTheDocument();
});

it('where the camera is refused, or reads no codes, the number is typed', async () => {
	vi.stubGlobal('BarcodeDetector', Reader);
	vi.spyOn(navigator.mediaDevices, 'getUserMedia').mockRejectedValue(new Error('not allowed'));
	const { opened, screen } = await shown((text) => (text === '12' ? LEAK : undefined));
	await page.getByRole('button', { name: 'Scan a tag' }).click();
	await expect.element(page.getByText(/The camera cannot be used here/)).toBeVisible();
	await page.getByLabelText('Number on the tag').fill('12');
	await page.getByRole('button', { name: 'Open the leak' }).click();
	expect(opened).toEqual([LEAK]);
	await screen.unmount();
	vi.unstubAllGlobals();
	await shown(() => undefined);
	await page.getByLabelText('Number on the tag').fill('7');
	await page.getByRole('button', { name: 'Open the leak' }).click();
	await expect.element(page.getByText(/No leak of this site has that tag/)).toBeVisible();
	expect(page.getByRole('button', { name: 'Scan a tag' }).query()).toBeNull();
});
