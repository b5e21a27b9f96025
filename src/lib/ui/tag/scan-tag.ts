/** What reads codes in a picture, where the browser has it. */
interface CodeReader {
	detect(source: HTMLVideoElement): Promise<readonly { readonly rawValue: string }[]>;
}
interface CodeReaderMaker {
	new (options: { readonly formats: readonly string[] }): CodeReader;
	getSupportedFormats(): Promise<readonly string[]>;
}

export type Scan = { readonly kind: 'read'; readonly text: string } | { readonly kind: 'failed' };

const LOOK_EVERY_MS = 150;

function maker(): CodeReaderMaker | undefined {
	return (globalThis as { BarcodeDetector?: CodeReaderMaker }).BarcodeDetector;
}

/** Whether this browser can read the codes on tags; else the number is typed. */
export async function canScan(): Promise<boolean> {
	const Reader = maker();
	if (!Reader || !('mediaDevices' in navigator)) return false;
	const formats: readonly string[] = await Reader.getSupportedFormats().catch(() => []);
	return formats.includes('qr_code');
}

/**
 * Looks through the camera until a code is read. The pictures stay in memory and are dropped at once.
 * @param where the element that shows what the camera sees, once it is on the page
 */
export async function scanTag(
	where: () => HTMLVideoElement | undefined,
	stop: AbortSignal
): Promise<Scan> {
	const Reader = maker();
	if (!Reader) return { kind: 'failed' };
	let stream: MediaStream | undefined;
	try {
		const reader = new Reader({ formats: ['qr_code'] });
		stream = await navigator.mediaDevices.getUserMedia({
			video: { facingMode: 'environment' }
		});
		const video = where();
		if (!video || stop.aborted) return { kind: 'failed' };
		video.srcObject = stream;
		await video.play();
		while (!stop.aborted) {
			const text = (await reader.detect(video))[0]?.rawValue;
			if (text !== undefined) return { kind: 'read', text };
			await new Promise((next) => setTimeout(next, LOOK_EVERY_MS));
		}
		return { kind: 'failed' };
	} catch {
		return { kind: 'failed' };
	} finally {
		stream?.getTracks().forEach((track) => track.stop());
	}
}
