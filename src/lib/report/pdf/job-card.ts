import { STATE_WORDS } from '../../words/actions.ts';
import { fixList as words } from '../../words/fix-list.ts';
import { boxesOnPaper, type JobRow } from '../model.ts';
import type { PlanImage } from './plan-page.ts';
import { cautionsHeight, drawCautions, drawPin, drawRing } from './marks.ts';
import { MARGIN, type Sheet, type TextStyle } from './sheet.ts';
import { drawTicks, ticksHeight, type TickStyle } from './ticks.ts';

const PLACE: TextStyle = { size: 13, bold: true };
const WORK: TextStyle = { size: 11.5 };
const FLAG: TextStyle = { size: 10, bold: true };
const SMALL: TextStyle = { size: 9 };
const MONEY: TextStyle = { size: 13, bold: true, align: 'right' };
const MONEY_SMALL: TextStyle = { size: 9, align: 'right' };
const PAD = 3;
const PIN_COLUMN = 19;
const MONEY_COLUMN = 42;
const TICK_SIDE = 6.5;
/** Room for a picture beside the pin. */
const PHOTO_SIDE = 22;
/** What more than this takes is written across the card. */
const LINES_BESIDE = 2;
/** A note of some six hundred letters stands whole; of a longer one the rest stays in the survey. Cautions are never cut. */
const NOTE_LINES = 6;
/** What head, foot and the section's name take of a page at most, mm. */
const NOT_FOR_CARDS = 75;

interface Line {
	readonly text: readonly string[];
	readonly style: TextStyle;
}

/** How high the job's card is; it is drawn on a page that has that much room, never on two. */
export function jobCardHeight(sheet: Sheet, row: JobRow): number {
	return heightWithoutNotes(sheet, row) + heightOf(sheet, across(sheet, row));
}

function heightWithoutNotes(sheet: Sheet, row: JobRow): number {
	return (
		PAD +
		topHeight(sheet, row) +
		4 +
		cautionsHeight(sheet, row.cautions, sheet.contentWidth - 2 * PAD) +
		2 +
		ticksHeight(sheet, row.ticks, boxes(sheet)) +
		PAD
	);
}

function boxes(sheet: Sheet): TickStyle {
	return { width: sheet.contentWidth - 2 * PAD, side: TICK_SIDE, gap: 4.2 };
}

/** With room for its picture, whether or not this print has it: the pages stay the same. */
function topHeight(sheet: Sheet, row: JobRow): number {
	const texts = Math.max(heightOf(sheet, middle(sheet, row)), heightOf(sheet, money(sheet, row)));
	return Math.max(picturesOf(row) > 0 ? PHOTO_SIDE : 15, texts);
}

/** One job: what and where, what waiting costs, its cautions, boxes and room for initials. */
export function drawJobCard(
	sheet: Sheet,
	row: JobRow,
	photos: ReadonlyMap<string, PlanImage>,
	y: number
): void {
	const height = jobCardHeight(sheet, row);
	const right = sheet.width - MARGIN;
	const thickness = row.shape === 'first' ? 1.2 : 0.4;
	sheet.rect({ x: MARGIN, y, width: right - MARGIN, height }, { mode: 'S', thickness });
	drawPin(sheet, row.tag, row.shape, MARGIN + PAD + 7, y + PAD + 7, 7);
	const texts = middle(sheet, row);
	const sums = money(sheet, row);
	writeAll(sheet, texts, MARGIN + leftColumn(row), y + PAD);
	drawPhoto(sheet, row, photos, y + PAD);
	drawSpot(sheet, row, photos, y + PAD);
	writeAll(sheet, sums, right - PAD, y + PAD);
	const notes = across(sheet, row);
	writeAll(sheet, notes, MARGIN + PAD, y + PAD + topHeight(sheet, row) + 1);
	let down = y + PAD + topHeight(sheet, row) + heightOf(sheet, notes) + 1.6;
	sheet.rule(MARGIN + PAD, down, right - PAD, down, 0.2);
	down += 2.4;
	down += drawCautions(sheet, row.cautions, MARGIN + PAD, down, sheet.contentWidth - 2 * PAD) + 2;
	drawTicks(sheet, boxesOnPaper(row), MARGIN + PAD, down, boxes(sheet));
}

/** The pin, and beside it the pictures that there are. */
function leftColumn(row: JobRow): number {
	return PIN_COLUMN + picturesOf(row) * (PHOTO_SIDE + PAD);
}

function picturesOf({ photo, spot }: JobRow): number {
	return (photo ? 1 : 0) + (spot ? 1 : 0);
}

/** Where the leak is on its plan: a cut of it with a ring round the place. */
function drawSpot(
	sheet: Sheet,
	{ photo, spot }: JobRow,
	photos: ReadonlyMap<string, PlanImage>,
	y: number
): void {
	const picture = spot && photos.get(spot.key);
	if (!picture) return;
	const x = MARGIN + PIN_COLUMN + (photo ? PHOTO_SIDE + PAD : 0);
	const box = { x, y, width: PHOTO_SIDE, height: PHOTO_SIDE };
	sheet.image(picture.bytes, picture.kind, box, spot.key);
	sheet.clipped(box, () => drawRing(sheet, x + spot.at.x * PHOTO_SIDE, y + spot.at.y * PHOTO_SIDE));
	sheet.rect(box, { mode: 'S', thickness: 0.25 });
}

function drawPhoto(
	sheet: Sheet,
	{ photo }: JobRow,
	photos: ReadonlyMap<string, PlanImage>,
	y: number
): void {
	const picture = photo && photos.get(photo.sha256);
	if (!picture) return;
	const scale = PHOTO_SIDE / Math.max(photo.widthPx, photo.heightPx);
	const [width, height] = [photo.widthPx * scale, photo.heightPx * scale];
	const x = MARGIN + PIN_COLUMN + (PHOTO_SIDE - width) / 2;
	// Named by its bytes: a picture that several jobs share is in the file once.
	sheet.image(picture.bytes, picture.kind, { x, y, width, height }, photo.sha256);
}

/** What was said of the job: beside its pictures where it is short. */
function quoted(sheet: Sheet, row: JobRow): { readonly text: string; readonly short: boolean }[] {
	return [row.couldNot && words.couldNot(row.couldNot), row.note && words.note(row.note)].flatMap(
		(text) =>
			text
				? [
						{
							text,
							short: sheet.lines(text, SMALL, middleWidth(sheet, row)).length <= LINES_BESIDE
						}
					]
				: []
	);
}

/** The longer notes, as wide as the card. */
function across(sheet: Sheet, row: JobRow): Line[] {
	const width = sheet.contentWidth - 2 * PAD;
	const long = quoted(sheet, row).filter(({ short }) => !short);
	if (long.length === 0) return [];
	const room = sheet.height - NOT_FOR_CARDS - heightWithoutNotes(sheet, row);
	const fitting = Math.floor(room / sheet.lineHeight(SMALL) / long.length);
	const most = Math.min(NOTE_LINES, Math.max(1, fitting));
	return long.map(({ text }) => ({ text: sheet.lines(text, SMALL, width, most), style: SMALL }));
}

function middleWidth(sheet: Sheet, row: JobRow): number {
	// Two lines that fill their columns to the last letter would read as one.
	return sheet.contentWidth - leftColumn(row) - MONEY_COLUMN - 2 * PAD;
}

function middle(sheet: Sheet, row: JobRow): Line[] {
	const width = middleWidth(sheet, row);
	const line = (text: string, style: TextStyle): Line[] =>
		text === '' ? [] : [{ text: sheet.lines(text, style, width), style }];
	const state = row.state === STATE_WORDS.leaking ? '' : row.state;
	const risks = row.hazards.join(' · ');
	return [
		...(row.flag ? line(row.flag.toUpperCase(), FLAG) : []),
		...line(row.place === '' ? words.noPlace : row.place, PLACE),
		...line(`${row.part} — ${row.action}`, WORK),
		...line(row.takes, WORK),
		...line(row.again ?? '', FLAG),
		...line(risks === '' ? '' : words.mind(risks), FLAG),
		...line(
			[state, row.plan === '' ? words.notOnPlan : row.plan].filter(Boolean).join(' · '),
			SMALL
		),
		...quoted(sheet, row).flatMap(({ text, short }) => (short ? line(text, SMALL) : []))
	];
}

function money(sheet: Sheet, row: JobRow): Line[] {
	if (row.costPerYear === '') {
		const text = row.why ? words.notWeighed(row.why) : words.noCost;
		return [{ text: sheet.lines(text, MONEY_SMALL, MONEY_COLUMN), style: MONEY_SMALL }];
	}
	return [
		{ text: sheet.lines(row.costPerYear, MONEY, MONEY_COLUMN), style: MONEY },
		{ text: [words.perYear], style: MONEY_SMALL },
		{
			text: sheet.lines(words.waiting(row.costOfWaiting), MONEY_SMALL, MONEY_COLUMN),
			style: MONEY_SMALL
		}
	];
}

function heightOf(sheet: Sheet, lines: readonly Line[]): number {
	return lines.reduce((sum, { text, style }) => sum + text.length * sheet.lineHeight(style), 0);
}

function writeAll(sheet: Sheet, lines: readonly Line[], x: number, y: number): void {
	let down = y;
	for (const { text, style } of lines) down += sheet.write(text, x, down, style);
}
