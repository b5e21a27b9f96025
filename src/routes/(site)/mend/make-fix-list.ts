import type { Assessment } from '#lib/core/weigh/assessment.ts';
import { planAsJpeg } from '#lib/plan/plan-jpeg.ts';
import type { OpenSurvey } from '#lib/session/open-survey.svelte.ts';
import { now } from '#lib/session/identity.ts';
import type { Paper } from '#lib/ui/mend/making.ts';
import type { Format } from '#lib/words/format.ts';
import { fileStem } from '../download.ts';

/** The printed list, and what the reader must know of it before saving it. */
export interface MadeFixList {
	readonly file: File;
	readonly missingGlyphs: readonly string[];
	readonly missingPlans: readonly string[];
}

interface Source {
	readonly open: OpenSurvey;
	readonly assessment: Assessment;
	readonly format: Format;
}

/**
 * Makes the fix list as a PDF. What prints is loaded when it is first wanted.
 * @param tell what is being done, and how far it is, 0 to 1
 */
export async function makeFixListPdf(
	source: Source,
	paper: Paper,
	tell: (doing: string, done: number) => void
): Promise<MadeFixList> {
	tell('Gathering the jobs', 0);
	const { fixListModel, exporters, loadPdfFonts, missingInReport } = await loadReport();
	const model = fixListModel(source.open.survey, source.assessment, {
		format: source.format,
		printedAt: now()
	});

	const planImages = new Map<string, { bytes: Uint8Array; kind: 'JPEG' }>();
	const missingPlans: string[] = [];
	for (const [index, plan] of model.plans.entries()) {
		tell(`Drawing the plan ${plan.name}`, 0.1 + (0.5 * index) / model.plans.length);
		const address = await source.open.blobUrl(plan.sha256);
		const jpeg = address === undefined ? undefined : await planAsJpeg(address, plan);
		if (jpeg?.ok) planImages.set(plan.sha256, { bytes: jpeg.value, kind: 'JPEG' });
		else missingPlans.push(plan.name);
	}

	tell('Fetching the letters', 0.6);
	const fonts = await loadPdfFonts();
	tell('Laying out the pages', 0.75);
	await aFrame();
	const bytes = await exporters.pdf.build(model, { paper, planImages, fonts: () => fonts });
	return {
		file: fixListFile(source.open, bytes, exporters.pdf),
		missingGlyphs: missingInReport(model, fonts),
		missingPlans
	};
}

/** Makes the fix list as a table, with the cautions in it. */
export async function makeFixListTable(source: Source): Promise<File> {
	const { fixListModel, exporters, loadPdfFonts } = await loadReport();
	const model = fixListModel(source.open.survey, source.assessment, {
		format: source.format,
		printedAt: now()
	});
	const bytes = await exporters.csv.build(model, {
		locale: source.format.settings.locale,
		paper: 'a4',
		planImages: new Map(),
		fonts: loadPdfFonts
	});
	return fixListFile(source.open, bytes, exporters.csv);
}

async function loadReport() {
	const [{ fixListModel }, { FIX_LIST_EXPORTERS: exporters }, { loadPdfFonts }, glyphs] =
		await Promise.all([
			import('#lib/report/fix-list-model.ts'),
			import('#lib/report/exporters.ts'),
			import('#lib/report/load-assets.ts'),
			import('#lib/report/missing-in-report.ts')
		]);
	return { fixListModel, exporters, loadPdfFonts, missingInReport: glyphs.missingInReport };
}

function fixListFile(
	open: OpenSurvey,
	bytes: Uint8Array<ArrayBuffer>,
	{ fileEnding, mediaType }: { fileEnding: string; mediaType: string }
): File {
	const name = `${fileStem(open.survey.site.name)}-fix-list.${fileEnding}`;
	return new File([bytes], name, { type: mediaType });
}

/** Lets the page show what was told before the work that holds it up. */
function aFrame(): Promise<void> {
	return new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
}
