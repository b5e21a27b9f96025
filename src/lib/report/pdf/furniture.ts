import { fixList as words } from '../../words/fix-list.ts';
import type { ReportModel } from '../model.ts';
import { drawWarningSign } from './marks.ts';
import { MARGIN, type Sheet, type TextStyle } from './sheet.ts';

const RUNNING: TextStyle = { size: 8.5 };
const BAND_HEAD: TextStyle = { size: 9, bold: true };
const BAND_TEXT: TextStyle = { size: 12, bold: true };
const FOOT: TextStyle = { size: 8.5 };
const SIGN_WIDTH = 17;
const PAD = 2.6;

/** The running head and the depressurise-first band. Returns where the page's own matter starts. */
export function drawHead(sheet: Sheet, model: ReportModel): number {
	const right = sheet.width - MARGIN;
	const running = [model.title, model.site, model.round].filter(Boolean).join('  ·  ');
	sheet.write(sheet.lines(running, RUNNING, sheet.contentWidth - 40, 1), MARGIN, 7, RUNNING);
	const top = 12;
	const lines = sheet.lines(model.band.text, BAND_TEXT, sheet.contentWidth - SIGN_WIDTH - 2 * PAD);
	const height =
		2 * PAD + sheet.lineHeight(BAND_HEAD) + lines.length * sheet.lineHeight(BAND_TEXT) - 0.6;
	sheet.rect({ x: MARGIN, y: top, width: SIGN_WIDTH, height }, { mode: 'F' });
	drawWarningSign(sheet, MARGIN + SIGN_WIDTH / 2, top + height / 2, Math.min(11, height - 4));
	sheet.rect({ x: MARGIN, y: top, width: right - MARGIN, height }, { mode: 'S', thickness: 0.8 });
	const x = MARGIN + SIGN_WIDTH + PAD;
	const down = top + PAD - 0.6;
	sheet.write(words.band, x, down, BAND_HEAD);
	sheet.write(lines, x, down + sheet.lineHeight(BAND_HEAD), BAND_TEXT);
	return top + height + 5;
}

/** What the foot takes of the page, margin included. */
export function footHeight(sheet: Sheet, model: ReportModel): number {
	const lines = sheet.lines(model.closing.text, FOOT, sheet.contentWidth);
	return 8 + (lines.length + 0.4) * sheet.lineHeight(FOOT);
}

/** What everything here defers to, and when it was printed. */
export function drawFoot(sheet: Sheet, model: ReportModel): void {
	const top = sheet.height - footHeight(sheet, model);
	sheet.rule(MARGIN, top, sheet.width - MARGIN, top, 0.25);
	const lines = sheet.lines(model.closing.text, FOOT, sheet.contentWidth);
	sheet.write(lines, MARGIN, top + 1.2, FOOT);
}

/** Page n of m, upper right; drawn last, when the pages have been counted. */
export function drawPageNumber(sheet: Sheet, text: string, width: number): void {
	sheet.write(text, width - MARGIN, 7, { ...RUNNING, bold: true, align: 'right' });
}
