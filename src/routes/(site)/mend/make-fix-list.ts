import type { Assessment } from '#lib/core/weigh/assessment.ts';
import { ok, type Result } from '#lib/core/units/result.ts';
import { smallPhoto } from '#lib/plan/small-photo.ts';
import type { Exporter } from '#lib/report/exporters.ts';
import type { JobPhoto } from '#lib/report/model.ts';
import type { OpenSurvey } from '#lib/session/open-survey.svelte.ts';
import { howSure } from '#lib/session/how-sure.ts';
import { now } from '#lib/session/identity.ts';
import { printBeside } from '#lib/session/printing.ts';
import type { Paper, Printable, TableKind } from '#lib/ui/mend/making.ts';
import { fixList } from '#lib/words/fix-list.ts';
import type { Format } from '#lib/words/format.ts';
import { fileStem } from '../download.ts';
import { cutPlans, type Picture } from './cut-plans.ts';

/** What was printed, and what the reader must know of it before saving it. */
export interface MadePrint {
	readonly file: File;
	readonly missingGlyphs: readonly string[];
	readonly missingPlans: readonly string[];
	/** Tags of the leaks whose picture could not be drawn. */
	readonly missingPhotos: readonly string[];
}

interface Source {
	readonly open: OpenSurvey;
	readonly assessment: Assessment;
	readonly format: Format;
}

type Image = Pick<JobPhoto, 'sha256' | 'widthPx' | 'heightPx'>;

/** How long the longer side of a picture beside a job is: 22 mm at some 300 dots to the inch. */
export const PHOTO_PX = 260;

/**
 * Makes the fix list or its tags as a PDF, beside the page. What prints is loaded when it is first wanted.
 * @param tell what is being done, and how far it is, 0 to 1
 * @param stop ends it at once
 * @returns nothing when it was stopped
 */
export async function makePrint(
	source: Source,
	what: Printable,
	paper: Paper,
	tell: (doing: string, done: number) => void,
	stop: AbortSignal
): Promise<Result<MadePrint> | undefined> {
	const { doing: words } = fixList;
	tell(words.gathering, 0);
	const { survey, roundId } = source.open;
	const sure = what === 'pdf' ? howSure(survey, roundId, stop) : Promise.resolve(undefined);
	const { model: plain, exporters, loadPdfFonts } = await gather(source);
	const missing = { missingPlans: [] as string[], missingPhotos: [] as string[] };
	const planImages = new Map<string, Picture>();
	const photos = new Map<string, Picture>();
	if (what === 'pdf') {
		const cut = await cutPlans(source.open, plain, paper, stop, (doing, done) =>
			tell(doing, 0.35 * done)
		);
		if (stop.aborted) return undefined;
		for (const [key, picture] of cut.sheets) planImages.set(key, picture);
		for (const [key, picture] of cut.spots) photos.set(key, picture);
		missing.missingPlans.push(...cut.missing);
		const rows = plain.groups.flatMap((group) => group.rows);
		for (const [index, { photo, tag }] of rows.entries()) {
			if (!photo || photos.has(photo.sha256)) continue;
			if (stop.aborted) return undefined;
			tell(words.drawing, 0.35 + (0.25 * index) / rows.length);
			const picture = await pictureOf(source.open, photo, PHOTO_PX);
			if (picture) photos.set(photo.sha256, picture);
			else missing.missingPhotos.push(tag);
		}
	}
	tell(words.fetching, 0.6);
	const [fonts, totals] = await Promise.all([loadPdfFonts(), sure]);
	const { withIntervals } = await import('#lib/report/headline.ts');
	const model = totals ? withIntervals(plain, totals, source.format) : plain;
	tell(words.laying, 0.65);
	const printed = await printBeside(
		{ what, model, settings: { paper, planImages, photos }, fonts },
		(done) => tell(words.laying, 0.65 + 0.35 * done),
		stop
	);
	if (!printed?.ok) return printed;
	const { bytes, missingGlyphs } = printed.value;
	return ok({ file: namedFile(source.open, bytes, exporters[what]), missingGlyphs, ...missing });
}

/** Makes one of the tables or the calendar, with the cautions in it. */
export async function makeTable(source: Source, what: TableKind): Promise<Result<File>> {
	const { model, exporters, loadPdfFonts } = await gather(source);
	const { workOrderColumns: columns, workOrderPriorities: priorities } =
		source.open.survey.startingValues;
	const bytes = await exporters[what].build(model, {
		locale: source.format.settings.locale,
		paper: 'a4',
		planImages: new Map(),
		fonts: loadPdfFonts,
		originals: async (sha256) => (await source.open.blob(sha256))?.bytes,
		workOrders: { columns, priorities }
	});
	return bytes.ok ? ok(namedFile(source.open, bytes.value, exporters[what])) : bytes;
}

async function gather(source: Source) {
	const [{ fixListModel }, { FIX_LIST_EXPORTERS: exporters }, { loadPdfFonts }] = await Promise.all(
		[
			import('#lib/report/fix-list-model.ts'),
			import('#lib/report/exporters.ts'),
			import('#lib/report/load-assets.ts')
		]
	);
	const model = fixListModel(source.open.survey, source.assessment, {
		format: source.format,
		printedAt: now()
	});
	return { model, exporters, loadPdfFonts };
}

/** A photo as it is drawn beside its job, with its longer side so long. */
export async function pictureOf(
	open: OpenSurvey,
	{ sha256, widthPx, heightPx }: Image,
	longestPx: number
): Promise<Picture | undefined> {
	const stored = await open.blob(sha256);
	if (!stored) return undefined;
	const share = Math.min(1, longestPx / Math.max(widthPx, heightPx));
	const photo = new Blob([stored.bytes as Uint8Array<ArrayBuffer>], { type: stored.mediaType });
	const jpeg = await smallPhoto(photo, {
		widthPx: Math.max(1, Math.round(widthPx * share)),
		heightPx: Math.max(1, Math.round(heightPx * share))
	});
	return jpeg.ok ? { bytes: jpeg.value, kind: 'JPEG' } : undefined;
}

function namedFile(
	open: OpenSurvey,
	bytes: Uint8Array<ArrayBuffer>,
	{ fileName, fileEnding, mediaType }: Exporter
): File {
	const name = `${fileStem(open.survey.site.name)}-${fileName}.${fileEnding}`;
	return new File([bytes], name, { type: mediaType });
}
