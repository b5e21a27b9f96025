import { savingsReport } from '../../words/savings-report.ts';
import type { SavingsModel } from '../savings-model.ts';
import { drawGroup, type Photos } from './savings-evidence-pages.ts';
import { firstPage } from './savings-first-page.ts';
import { BOLD, Pages } from './savings-sheets.ts';
import { Sheet, type PaperName, type PdfFonts } from './sheet.ts';

export interface SavingsAssets {
	readonly fonts: PdfFonts;
	readonly paper: PaperName;
	readonly photos: Photos;
	/** Told how far it is, 0 to 1. */
	readonly tell?: ((done: number) => void) | undefined;
}

type Section = (pages: Pages, model: SavingsModel, assets: SavingsAssets) => void;

/** The report from front to back: the manager's page, what stands behind it, and what it rests on. */
const SECTIONS: readonly Section[] = [firstPage, evidence, notReached, rates, grounds];

/** Prints the savings report. */
export function buildSavingsPdf(
	model: SavingsModel,
	assets: SavingsAssets
): Uint8Array<ArrayBuffer> {
	const sheet = new Sheet(assets.paper, assets.fonts);
	sheet.doc.setProperties({ title: `${model.title} · ${model.site}`, creator: 'Airtally' });
	sheet.doc.setLanguage(model.language);
	sheet.doc.setCreationDate(new Date(model.printedAt));
	const pages = new Pages(sheet, model);
	for (const [index, section] of SECTIONS.entries()) {
		section(pages, model, assets);
		assets.tell?.((index + 1) / SECTIONS.length);
	}
	pages.number();
	return new Uint8Array(sheet.doc.output('arraybuffer'));
}

function evidence(pages: Pages, { groups }: SavingsModel, { photos }: SavingsAssets): void {
	pages.turn();
	pages.bookmark(savingsReport.evidenceTitle);
	for (const group of groups) drawGroup(pages, group, photos);
}

function notReached(pages: Pages, model: SavingsModel): void {
	const { counts, lines } = model.notReached;
	pages.heading(savingsReport.notReachedTitle, 20);
	for (const count of counts) pages.write(count, BOLD, 1);
	pages.list(lines, savingsReport.everyReached);
}

function rates(pages: Pages, { rates: { sentences, rows } }: SavingsModel): void {
	pages.heading(savingsReport.ratesTitle, 40);
	pages.list(sentences, '');
	if (rows.length === 0) return;
	pages.table(
		[savingsReport.joints, savingsReport.back, savingsReport.each],
		rows.map(({ what, back, perYear }) => [what, back, perYear]),
		40
	);
	pages.down += 3;
}

function grounds(pages: Pages, model: SavingsModel): void {
	pages.heading(savingsReport.adjustedTitle, 20);
	pages.list(
		model.adjustments.map(({ what, size, reason }) => savingsReport.adjusted(what, size, reason)),
		savingsReport.nothingAdjusted
	);
	pages.heading(savingsReport.restsTitle, 30);
	pages.list(model.assumptions, '');
	pages.heading(savingsReport.wouldMove, 20);
	pages.list(model.wouldChange, '');
}
