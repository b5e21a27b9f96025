import type { EvidenceGroup, EvidenceLine, SidePhoto } from '../savings-evidence.ts';
import type { PlanImage } from './plan-page.ts';
import { BOLD, HEADING, RUNNING, TEXT, type Pages } from './savings-sheets.ts';
import { MARGIN, type Sheet, type TextStyle } from './sheet.ts';

const TAG: TextStyle = { size: 12, bold: true };

/** Pictures by SHA-256, as the model names them. */
export type Photos = ReadonlyMap<string, PlanImage>;

/** Leaks of one fate, with what was seen of each and its pictures before and after. */
export function drawGroup(pages: Pages, group: EvidenceGroup, photos: Photos): void {
	const { sheet } = pages;
	pages.room(26);
	pages.write(group.heading, HEADING);
	pages.write(group.sum, TEXT, group.elsewhere === undefined ? 1.5 : 0);
	if (group.elsewhere !== undefined) pages.write(group.elsewhere, TEXT, 1.5);
	for (const line of group.lines) drawEvidence(pages, line, photos);
	sheet.rule(MARGIN, pages.down, sheet.width - MARGIN, pages.down, 0.2);
	pages.down += 4;
}

const TAG_WIDTH = 14;

function drawEvidence(
	pages: Pages,
	{ tag, what, where, before, after, evidence, photos: sides }: EvidenceLine,
	photos: Photos
): void {
	const { sheet } = pages;
	const inner = sheet.contentWidth - TAG_WIDTH;
	const head = sheet.lines(`${what}${where === '' ? '' : `, ${where}`}`, BOLD, inner - 62);
	const told = sheet.lines(evidence.join(' · '), RUNNING, inner);
	const height =
		head.length * sheet.lineHeight(BOLD) + told.length * sheet.lineHeight(RUNNING) + 2.4;
	const shown = sides.filter(({ sha256 }) => photos.has(sha256));
	const pictures = shown.length > 0 ? PHOTO.height + sheet.lineHeight(RUNNING) + 3 : 0;
	pages.room(height + pictures);
	const y = pages.down + 1;
	const x = MARGIN + TAG_WIDTH;
	sheet.rule(MARGIN, pages.down, sheet.width - MARGIN, pages.down, 0.2);
	sheet.write(tag, MARGIN, y, TAG);
	const under = y + sheet.write(head, x, y, BOLD);
	sheet.write(`${before} → ${after}`, sheet.width - MARGIN, y, { ...TEXT, align: 'right' });
	sheet.write(told, x, under, RUNNING);
	for (const [index, photo] of shown.entries())
		drawPhoto(sheet, photo, photos, x + index * (PHOTO.width + 6), pages.down + height);
	pages.down += height + pictures;
}

const PHOTO = { width: 56, height: 42 };

/** A picture as large as its box lets it be, its caption under it. */
function drawPhoto(sheet: Sheet, photo: SidePhoto, photos: Photos, x: number, y: number): void {
	const picture = photos.get(photo.sha256);
	if (!picture) return;
	const scale = Math.min(PHOTO.width / photo.widthPx, PHOTO.height / photo.heightPx);
	const [width, height] = [photo.widthPx * scale, photo.heightPx * scale];
	sheet.image(picture.bytes, picture.kind, { x, y, width, height }, photo.sha256);
	sheet.rect({ x, y, width, height }, { mode: 'S', thickness: 0.2 });
	sheet.write(sheet.lines(photo.caption, RUNNING, PHOTO.width, 1), x, y + height + 0.5, RUNNING);
}
