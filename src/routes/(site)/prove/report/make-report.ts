import { ok, type Result } from '#lib/core/units/result.ts';
import type { SavingsModel } from '#lib/report/savings-model.ts';
import { printBeside } from '#lib/session/printing.ts';
import type { OpenSurvey } from '#lib/session/open-survey.svelte.ts';
import { savingsReport } from '#lib/words/savings-report.ts';
import { fileStem } from '../../download.ts';
import type { Picture } from '../../mend/cut-plans.ts';
import { pictureOf } from '../../mend/make-fix-list.ts';

/** The report as a file, and what it could not show. */
export interface MadeReport {
	readonly file: File;
	readonly missingGlyphs: readonly string[];
	/** Tags of the leaks whose pictures could not be drawn. */
	readonly missingPhotos: readonly string[];
}

/** How long the longer side of a picture is: 56 mm at some 220 dots to the inch. */
const PHOTO_PX = 480;

/**
 * Makes the savings report as a PDF, beside the page. What prints is loaded when it is first wanted.
 * @param tell what is being done, and how far it is, 0 to 1
 * @param stop ends it at once
 * @returns nothing when it was stopped
 */
export async function makeReport(
	open: OpenSurvey,
	model: SavingsModel,
	tell: (doing: string, done: number) => void,
	stop: AbortSignal
): Promise<Result<MadeReport> | undefined> {
	const words = savingsReport.doing;
	tell(words.gathering, 0);
	const [{ SAVINGS_EXPORTERS: exporters }, { loadPdfFonts }] = await Promise.all([
		import('#lib/report/savings-exporters.ts'),
		import('#lib/report/load-assets.ts')
	]);
	const photos = new Map<string, Picture>();
	const missingPhotos = new Set<string>();
	const shown = model.groups.flatMap(({ lines }) =>
		lines.flatMap(({ tag, photos: sides }) => sides.map((photo) => ({ tag, photo })))
	);
	for (const [index, { tag, photo }] of shown.entries()) {
		if (photos.has(photo.sha256)) continue;
		if (stop.aborted) return undefined;
		tell(words.drawing, (0.5 * index) / shown.length);
		const picture = await pictureOf(open, photo, PHOTO_PX);
		if (picture) photos.set(photo.sha256, picture);
		else missingPhotos.add(tag);
	}
	tell(words.fetching, 0.5);
	const fonts = await loadPdfFonts();
	tell(words.laying, 0.6);
	const printed = await printBeside(
		{ what: 'savings', model, settings: { paper: 'a4', photos }, fonts },
		(done) => tell(words.laying, 0.6 + 0.4 * done),
		stop
	);
	if (!printed?.ok) return printed;
	const { bytes, missingGlyphs } = printed.value;
	const { fileName, fileEnding, mediaType } = exporters.pdf;
	const name = `${fileStem(open.survey.site.name)}-${fileName}.${fileEnding}`;
	return ok({
		file: new File([bytes], name, { type: mediaType }),
		missingGlyphs,
		missingPhotos: [...missingPhotos]
	});
}
