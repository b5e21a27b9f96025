import qrcode from 'qrcode-generator';
import { fixList as words } from '../../words/fix-list.ts';
import type { JobRow, ReportModel } from '../model.ts';
import { Sheet, type Box, type PaperName, type PdfFonts, type TextStyle } from './sheet.ts';

/** Labels of 70 × 37 mm on A4, as label sheets are sold; the same grid on other paper. */
const ACROSS = 3;
const DOWN = 8;
const PAD_X = 4.5;
const PAD_Y = 3.5;
/** Printers leave the edge of a sheet white. */
const EDGE = 5;

const NUMBER: TextStyle = { size: 30, bold: true };
const PLACE: TextStyle = { size: 8.5, bold: true };
/** For a place that two lines of the larger letters do not hold. */
const LONG_PLACE: TextStyle = { size: 7, bold: true };
const SECTION: TextStyle = { size: 7.5 };
const LEAVE: TextStyle = { size: 7, bold: true };
const CAUTION: TextStyle = { size: 5.6 };
const QR_SIDE = 19;
/** Light cells that a reader wants round the code. */
const QUIET = 2;

export interface TagsPdfAssets {
	readonly fonts: PdfFonts;
	readonly paper: PaperName;
	readonly tell?: ((done: number) => void) | undefined;
}

/**
 * A tag for each leak that is still to be mended, to hang on the joint: its number large, where it belongs, and a
 * code that holds the leak's own name and nothing else. The depressurise-first caution is on each, whole.
 */
export function buildTagsPdf(
	model: ReportModel,
	{ fonts, paper, tell }: TagsPdfAssets
): Uint8Array<ArrayBuffer> {
	const sheet = new Sheet(paper, fonts);
	sheet.doc.setProperties({
		title: [words.tags, model.site, model.round].filter(Boolean).join(' · '),
		subject: model.band.text,
		creator: 'Airtally'
	});
	sheet.doc.setLanguage(model.language);
	sheet.doc.setCreationDate(new Date(model.printedAt));
	const tags = tagsOf(model);
	const perPage = ACROSS * DOWN;
	if (tags.length === 0) sheet.write(words.noTags, EDGE + PAD_X, EDGE + PAD_Y, PLACE);
	tags.forEach((tag, index) => {
		const place = index % perPage;
		if (index > 0 && place === 0) sheet.addPage('portrait');
		if (place === 0) {
			drawCutMarks(sheet);
			tell?.(index / tags.length);
		}
		const [width, height] = [sheet.width / ACROSS, sheet.height / DOWN];
		const box = {
			x: (place % ACROSS) * width,
			y: Math.floor(place / ACROSS) * height,
			width,
			height
		};
		drawTag(sheet, tag, model.band.text, inside(box, sheet));
	});
	return new Uint8Array(sheet.doc.output('arraybuffer'));
}

interface Tag {
	readonly leakId: string;
	readonly row: JobRow;
	readonly section: string;
}

function tagsOf(model: ReportModel): Tag[] {
	return model.groups
		.flatMap((group) =>
			group.rows.flatMap((row) =>
				row.leakId === undefined || row.shape === 'done'
					? []
					: [{ leakId: row.leakId, row, section: group.heading }]
			)
		)
		.sort((a, b) => Number(a.row.tag) - Number(b.row.tag));
}

/** A label without its padding, and clear of the edge of the sheet. */
function inside({ x, y, width, height }: Box, sheet: Sheet): Box {
	const left = Math.max(x + PAD_X, EDGE);
	const top = Math.max(y + PAD_Y, EDGE);
	const right = Math.min(x + width - PAD_X, sheet.width - EDGE);
	const bottom = Math.min(y + height - PAD_Y, sheet.height - EDGE);
	return { x: left, y: top, width: right - left, height: bottom - top };
}

function drawTag(sheet: Sheet, { leakId, row, section }: Tag, caution: string, box: Box): void {
	const side = Math.min(QR_SIDE, box.height);
	sheet.cells(
		codeCells(leakId, { ...box, x: box.x + box.width - side, width: side, height: side })
	);
	const room = box.width - side - 2;
	const warning = sheet.lines(caution, CAUTION, box.width);
	const foot = box.y + box.height - warning.length * sheet.lineHeight(CAUTION);
	const leave = foot - sheet.lineHeight(LEAVE);
	const { lines, style } = placeLines(sheet, row.place === '' ? row.part : row.place, room);
	const below = lines.length * sheet.lineHeight(style) + sheet.lineHeight(SECTION);
	const high = leave - box.y + 2 - below;
	const fitting = Math.min(
		1,
		room / sheet.textWidth(row.tag, NUMBER),
		high / sheet.lineHeight(NUMBER)
	);
	const number = { ...NUMBER, size: NUMBER.size * fitting };
	let down = box.y - 1;
	down += sheet.write(row.tag, box.x, down, number) - 1;
	down += sheet.write(lines, box.x, down, style);
	sheet.write(sheet.lines(section, SECTION, room, 1), box.x, down, SECTION);
	sheet.write(warning, box.x, foot, CAUTION);
	sheet.write(words.leaveOn, box.x, leave, LEAVE);
}

/** The whole place where it can be had, for the number alone does not say where to hang the tag. */
function placeLines(
	sheet: Sheet,
	place: string,
	room: number
): { readonly lines: readonly string[]; readonly style: TextStyle } {
	const lines = sheet.lines(place, PLACE, room);
	if (lines.length <= 2) return { lines, style: PLACE };
	return { lines: sheet.lines(place, LONG_PLACE, room, 3), style: LONG_PLACE };
}

/** The dark cells of a code, each run along a row as one box. */
function codeCells(text: string, { x, y, width }: Box): Box[] {
	const code = qrcode(0, 'M');
	code.addData(text);
	code.make();
	const count = code.getModuleCount();
	const cell = width / (count + 2 * QUIET);
	const boxes: Box[] = [];
	for (let row = 0; row < count; row++)
		for (let from = 0; from < count; from++) {
			if (!code.isDark(row, from)) continue;
			let to = from;
			while (to < count && code.isDark(row, to)) to++;
			boxes.push({
				x: x + (QUIET + from) * cell,
				y: y + (QUIET + row) * cell,
				width: (to - from) * cell,
				height: cell
			});
			from = to;
		}
	return boxes;
}

/** Small crosses where four labels meet, for whoever cuts plain paper. */
function drawCutMarks(sheet: Sheet): void {
	const half = 1.5;
	for (let across = 1; across < ACROSS; across++)
		for (let down = 1; down < DOWN; down++) {
			const [x, y] = [(across * sheet.width) / ACROSS, (down * sheet.height) / DOWN];
			sheet.rule(x - half, y, x + half, y, 0.1);
			sheet.rule(x, y - half, x, y + half, 0.1);
		}
}
