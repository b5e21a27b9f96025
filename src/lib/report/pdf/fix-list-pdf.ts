import { fixList as words } from '../../words/fix-list.ts';
import type { JobGroup, ReportModel } from '../model.ts';
import {
	drawCover,
	drawIndexHead,
	drawIndexRow,
	INDEX_HEAD_HEIGHT,
	indexRowHeight
} from './cover.ts';
import { drawFoot, drawHead, drawPageNumber, footHeight } from './furniture.ts';
import { drawJobCard, jobCardHeight } from './job-card.ts';
import { FIX_LIST_EDGES, withSheets } from '../fix-list-sheets.ts';
import { planSheets } from '../plan-sheets.ts';
import { drawPlanParts } from './plan-parts.ts';
import { drawPlanPages, type PlanImage } from './plan-page.ts';
import { drawSectionAgain, drawSectionHead, sectionHeadHeight } from './section-head.ts';
import { Sheet, type PaperName, type PdfFonts } from './sheet.ts';

export interface FixListPdfAssets {
	readonly fonts: PdfFonts;
	readonly paper: PaperName;
	/** Pictures of plans by the keys of their sheets. */
	readonly planImages: ReadonlyMap<string, PlanImage>;
	/** Small pictures of jobs: photographs by SHA-256, cuts of plans by the key of the spot. */
	readonly photos?: ReadonlyMap<string, PlanImage>;
	/** Told how far it is, 0 to 1, after each section. */
	readonly tell?: ((done: number) => void) | undefined;
}

const GAP = 3.5;

/**
 * Prints the fix list. Each page carries the depressurise-first caution whole, each job carries its
 * own, and no job is split between two pages.
 */
export function buildFixListPdf(
	plain: ReportModel,
	{ fonts, paper, planImages, photos = new Map(), tell }: FixListPdfAssets
): Uint8Array<ArrayBuffer> {
	const plans = plain.plans.map((plan) => ({
		plan,
		layout: planSheets(plan, paper, FIX_LIST_EDGES[plain.language])
	}));
	const model = withSheets(plain, plans);
	const sheet = new Sheet(paper, fonts);
	describe(sheet, model);
	const widths = [sheet.width];
	const startPage = (orientation: 'portrait' | 'landscape' = 'portrait'): number => {
		sheet.addPage(orientation);
		widths.push(sheet.width);
		return furnish(sheet, model);
	};
	const bottom = () => sheet.height - footHeight(sheet, model) - 3;

	const coverEnd = drawCover(sheet, model, furnish(sheet, model));
	const indexStart = model.parts
		? drawPlanParts(sheet, model.parts, coverEnd, bottom(), startPage)
		: coverEnd;
	drawIndex(sheet, model.groups, indexStart, bottom(), startPage);
	let down = Infinity;
	const jobCount = model.groups.reduce((sum, { rows }) => sum + rows.length, 0);
	let drawn = 0;
	for (const group of model.groups) {
		down = drawGroup(sheet, group, photos, down, bottom(), startPage);
		drawn += group.rows.length;
		tell?.(drawn / Math.max(1, jobCount));
	}
	for (const pages of plans)
		drawPlanPages(sheet, {
			...pages,
			images: planImages,
			key: [
				['open', words.key.open],
				['first', words.key.first],
				['done', words.key.done]
			],
			startPage(orientation, title) {
				const top = startPage(orientation);
				bookmark(sheet, title);
				return top;
			}
		});
	widths.forEach((width, index) => {
		sheet.doc.setPage(index + 1);
		drawPageNumber(sheet, words.page(String(index + 1), String(widths.length)), width);
	});
	return new Uint8Array(sheet.doc.output('arraybuffer'));
}

function describe({ doc }: Sheet, model: ReportModel): void {
	doc.setProperties({
		title: [model.title, model.site, model.round].filter(Boolean).join(' · '),
		subject: model.band.text,
		creator: 'Airtally'
	});
	doc.setLanguage(model.language);
	doc.setCreationDate(new Date(model.printedAt));
	bookmark({ doc }, model.title);
}

function bookmark({ doc }: Pick<Sheet, 'doc'>, title: string): void {
	doc.outline.add(null, title, { pageNumber: doc.getNumberOfPages() });
}

function furnish(sheet: Sheet, model: ReportModel): number {
	const top = drawHead(sheet, model);
	drawFoot(sheet, model);
	return top;
}

function drawIndex(
	sheet: Sheet,
	groups: readonly JobGroup[],
	y: number,
	bottom: number,
	startPage: () => number
): void {
	const first = groups[0];
	if (first === undefined) return;
	const fits = y + INDEX_HEAD_HEIGHT + indexRowHeight(sheet, first) <= bottom;
	let down = fits ? y : startPage();
	down += drawIndexHead(sheet, down);
	for (const group of groups) {
		if (down + indexRowHeight(sheet, group) > bottom) {
			down = startPage();
			down += drawIndexHead(sheet, down);
		}
		down += drawIndexRow(sheet, group, down);
	}
}

/** A section starts where it has room for its first job too, else on a new page. */
function drawGroup(
	sheet: Sheet,
	group: JobGroup,
	photos: ReadonlyMap<string, PlanImage>,
	y: number,
	bottom: number,
	startPage: () => number
): number {
	const first = group.rows[0];
	const opening = sectionHeadHeight(sheet, group) + (first ? jobCardHeight(sheet, first) : 0);
	let down = y + opening > bottom ? startPage() : y;
	bookmark(sheet, group.heading);
	down += drawSectionHead(sheet, group, down);
	for (const row of group.rows) {
		const height = jobCardHeight(sheet, row);
		if (down + height > bottom) {
			down = startPage();
			down += drawSectionAgain(sheet, group, down);
		}
		drawJobCard(sheet, row, photos, down);
		down += height + GAP;
	}
	return down + GAP;
}
