import type { PdfFonts } from './pdf/sheet.ts';

/** Loads the faces of printed reports when they are first wanted; for the browser. */
export async function loadPdfFonts(): Promise<PdfFonts> {
	const [regular, bold] = await Promise.all([
		import('dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf?url').then(bytesAt),
		import('dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf?url').then(bytesAt)
	]);
	return { regular, bold };
}

async function bytesAt({ default: address }: { default: string }): Promise<Uint8Array> {
	const answer = await fetch(address);
	if (!answer.ok) throw new Error(`no font at ${address}: ${String(answer.status)}`);
	return new Uint8Array(await answer.arrayBuffer());
}
