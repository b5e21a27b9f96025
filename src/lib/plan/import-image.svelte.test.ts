import { expect, test } from 'vitest';
import { importImage } from './import-image.ts';

function drawing(text: string): File {
	return new File([text], 'plan.svg', { type: 'image/svg+xml' });
}

async function painted(type: string): Promise<Uint8Array<ArrayBuffer>> {
	const canvas = new OffscreenCanvas(64, 48);
	canvas.getContext('2d')?.fillRect(8, 8, 20, 20);
	return new Uint8Array(await (await canvas.convertToBlob({ type })).arrayBuffer());
}

test('pictures that the browser can draw are taken in with their bytes as they came', async () => {
	for (const type of ['image/png', 'image/jpeg', 'image/webp']) {
		const bytes = await painted(type);
		const imported = await importImage(new File([bytes], 'anything.bin'));
		expect(imported).toMatchObject({
			ok: true,
			value: { bytes, mediaType: type, widthPx: 64, heightPx: 48 }
		});
	}
});

test('the bytes are named by their SHA-256', async () => {
	const imported = await importImage(drawing('<svg xmlns="http://www.w3.org/2000/svg"/>'));
	// sha256sum of GNU coreutils on the same bytes (verified)
	const expected = '900fbe934249ad12';
	expect(imported.ok && imported.value.sha256.slice(0, 16)).toBe(expected);
});

test('a drawing is shown as a picture only: its scripts do not run', async () => {
	const hostile =
		'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 20" onload="window.top.ran = true">' +
		'<script>window.top.ran = true</script><rect width="9" height="9"/></svg>';
	const imported = await importImage(drawing(hostile));
	expect(imported).toMatchObject({ ok: true, value: { widthPx: 3000, heightPx: 1500 } });
	expect('ran' in window).toBe(false);
});

test('what cannot be drawn is refused by name', async () => {
	const png = await painted('image/png');
	const code = async (file: File) => {
		const imported = await importImage(file);
		return imported.ok ? undefined : imported.error.code;
	};
	expect(await code(new File([png.subarray(0, 60)], 'cut.png'))).toBe('image-cut-short');
	expect(await code(drawing('<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 2"><g>'))).toBe(
		'image-not-decoded'
	);
	const huge = png.slice();
	new DataView(huge.buffer).setUint32(16, 60_000);
	new DataView(huge.buffer).setUint32(20, 60_000);
	expect(await code(new File([huge], 'huge.png'))).toBe('image-too-many-pixels');
});
