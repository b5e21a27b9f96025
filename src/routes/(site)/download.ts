import type { OpenSurvey } from '#lib/session/open-survey.svelte.ts';

/** Hands the whole survey out as one file, made from what is in memory. @returns the file's name */
export async function downloadSurvey(open: OpenSurvey): Promise<string> {
	return handOutSurvey({ name: open.survey.site.name, bytes: await open.toFile() });
}

/** Offers a survey file under the name of its site. */
export function handOutSurvey({ name, bytes }: { name: string; bytes: Uint8Array }): string {
	const file = new Blob([bytes as Uint8Array<ArrayBuffer>], { type: 'application/zip' });
	const fileName = `${fileStem(name)}.airtally.zip`;
	handOut(file, fileName);
	return fileName;
}

/** Offers a file for saving under a name. */
export function handOut(file: Blob, name: string): void {
	const url = URL.createObjectURL(file);
	const link = document.createElement('a');
	link.href = url;
	link.download = name;
	link.click();
	// The download has to have begun before its address goes.
	setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/** A site's name as the stem of a file name that every system takes. */
export function fileStem(name: string): string {
	const stem = name
		.trim()
		.replace(/[^\p{L}\p{N}]+/gu, '-')
		.replace(/^-+|-+$/g, '');
	return stem.slice(0, 60) || 'survey';
}
