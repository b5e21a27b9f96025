import { jsPDF } from 'jspdf';
import type { Survey } from '#lib/core/survey/schema.ts';
import { assess } from '#lib/core/weigh/assess.ts';
import { fixListModel } from '#lib/report/fix-list-model.ts';
import type { ReportModel } from '#lib/report/model.ts';
import { readPdfFonts } from '#lib/report/node-fonts.ts';
import { buildFixListPdf } from '#lib/report/pdf/fix-list-pdf.ts';
import type { PlanImage } from '#lib/report/pdf/plan-page.ts';
import { buildTagsPdf } from '#lib/report/pdf/tags-pdf.ts';
import { fixListXlsx } from '#lib/report/xlsx.ts';
import { createFormat } from '#lib/words/format.ts';
import { median, type Row } from './measure.ts';
import { BENCH_ROUND, syntheticSurvey } from './synthetic.ts';

const fonts = readPdfFonts();
const PHOTO = { widthPx: 260, heightPx: 195 };

/** What leaves the app: the same rows by bare calls of the page maker stand beside. */
export async function handingOver(): Promise<Row[]> {
	const long = modelOf(syntheticSurvey(2000));
	const bare = { what: 'the same text by bare calls', ms: await median(3, () => bareRows(long)) };
	const print = { fonts, paper: 'a4', planImages: new Map() } as const;
	const ms = await median(3, () => buildFixListPdf(long, print));
	const { model, photos } = withPhotos(syntheticSurvey(500));
	const photographed = await median(3, () => buildFixListPdf(model, { ...print, photos }));
	return [
		{ what: 'print 2,000 jobs', ms, against: bare, target: '≤ 3 s' },
		{ what: 'print 500 jobs with 500 pictures', ms: photographed, target: '≤ 20 s' },
		{ what: 'print 500 tags', ms: await median(3, () => buildTagsPdf(model, print)) },
		{ what: 'write 2,000 jobs as a workbook', ms: await median(3, () => fixListXlsx(long)) }
	];
}

function modelOf(survey: Survey): ReportModel {
	return fixListModel(survey, assess(survey, BENCH_ROUND), {
		format: createFormat({ locale: 'en-GB', currency: 'EUR', units: survey.site.units }),
		printedAt: '2026-01-05T08:00:00Z'
	});
}

function bareRows(model: ReportModel): ArrayBuffer {
	const doc = new jsPDF({ unit: 'mm', format: 'a4', compress: true });
	for (const [index, job] of model.groups.flatMap((group) => group.rows).entries()) {
		if (index > 0 && index % 6 === 0) doc.addPage();
		const text = [job.place, job.part, job.action, ...job.cautions.map((caution) => caution.text)];
		doc.text(text.join(' '), 14, 20 + (index % 6) * 40, { maxWidth: 180 });
	}
	return doc.output('arraybuffer');
}

/** Each leak with a picture of its own: a JPEG's header and the bytes of a small one, all different. */
function withPhotos(survey: Survey): { model: ReportModel; photos: Map<string, PlanImage> } {
	const photos = new Map<string, PlanImage>();
	const leaks = Object.values(survey.leaks).map((leak) => {
		const sha256 = leak.tag.toString(16).padStart(64, '0');
		photos.set(sha256, { bytes: jpegOf(leak.tag), kind: 'JPEG' });
		const image = { sha256, mediaType: 'image/jpeg', ...PHOTO };
		const photo = { id: 'photo-1', image, roundId: BENCH_ROUND, of: 'leak' as const };
		const photographed = { ...photo, takenAt: '2026-01-05T08:00:00Z' };
		return [leak.id, { ...leak, photos: { 'photo-1': photographed } }] as const;
	});
	return { model: modelOf({ ...survey, leaks: Object.fromEntries(leaks) }), photos };
}

const JPEG_BYTES = 20_000;

function jpegOf(seed: number): Uint8Array {
	const bytes = new Uint8Array(JPEG_BYTES);
	for (let at = 0; at < bytes.length; at++) bytes[at] = ((at * 31 + seed * 7919) >>> 3) & 0x7f;
	const { widthPx, heightPx } = PHOTO;
	const size = [heightPx >> 8, heightPx & 255, widthPx >> 8, widthPx & 255];
	const channels = [3, 1, 0x11, 0, 2, 0x11, 0, 3, 0x11, 0];
	bytes.set([0xff, 0xd8, 0xff, 0xc0, 0, 17, 8, ...size, ...channels]);
	bytes.set([0xff, 0xd9], bytes.length - 2);
	return bytes;
}
