import { fixList as words } from '../../words/fix-list.ts';
import type { Figure, JobGroup, ReportModel } from '../model.ts';
import { drawCautions } from './marks.ts';
import { MARGIN, type Sheet, type TextStyle } from './sheet.ts';

const SITE: TextStyle = { size: 24, bold: true };
const TITLE: TextStyle = { size: 14 };
const LABEL: TextStyle = { size: 9.5 };
const FIGURE: TextStyle = { size: 19, bold: true };
const NOTE: TextStyle = { size: 8.5 };
const TEXT: TextStyle = { size: 9.5 };
const WALKED: TextStyle = { size: 9.5, bold: true };
const HEADING: TextStyle = { size: 13, bold: true };
const CELL: TextStyle = { size: 10.5 };
const CELL_BOLD: TextStyle = { size: 10.5, bold: true };

/** Site, round, figures, and every headline caution. Returns where it ends. */
export function drawCover(sheet: Sheet, model: ReportModel, y: number): number {
	const width = sheet.contentWidth;
	let down = y + 1;
	down += sheet.write(sheet.lines(model.site, SITE, width, 3), MARGIN, down, SITE);
	const under = [model.title, model.round, words.printed(model.printedOn)].filter(Boolean);
	down += sheet.write(sheet.lines(under.join('  ·  '), TITLE, width), MARGIN, down, TITLE) + 3;
	down += drawFigures(sheet, model.figures, down) + 3;
	for (const text of [model.method, ...model.notes])
		down += sheet.write(sheet.lines(text, TEXT, width), MARGIN, down, TEXT) + 0.6;
	down += 2;
	down += sheet.write(words.walkedTitle, MARGIN, down, WALKED) + 0.4;
	for (const text of model.walked)
		down += sheet.write(sheet.lines(text, TEXT, width), MARGIN, down, TEXT) + 0.6;
	down += 4;
	down += sheet.write(words.beforeAnyJob, MARGIN, down, HEADING) + 1.5;
	return down + drawCautions(sheet, model.cautions, MARGIN, down, width) + 4;
}

function drawFigures(sheet: Sheet, figures: readonly Figure[], y: number): number {
	const each = sheet.contentWidth / figures.length;
	const inner = each - 6;
	const laid = figures.map(({ label, value, note = '' }) => {
		const fitted = Math.min(1, inner / sheet.textWidth(value, FIGURE));
		return {
			label: sheet.lines(label, LABEL, inner),
			value,
			style: { ...FIGURE, size: Math.max(9, FIGURE.size * fitted) },
			note: sheet.lines(note, NOTE, inner)
		};
	});
	const notes = Math.max(...laid.map(({ note }) => note.length)) * sheet.lineHeight(NOTE);
	const labels = Math.max(...laid.map(({ label }) => label.length)) * sheet.lineHeight(LABEL);
	const height = 6 + labels + sheet.lineHeight(FIGURE) + notes;
	laid.forEach(({ label, value, style, note }, index) => {
		const x = MARGIN + index * each;
		sheet.rect({ x, y, width: each, height }, { mode: 'S', thickness: 0.5 });
		const baseline = y + 3 + labels;
		sheet.write(label, x + 3, y + 3, LABEL);
		sheet.write(value, x + 3, baseline + sheet.lineHeight(FIGURE) - sheet.lineHeight(style), style);
		sheet.write(note, x + 3, baseline + sheet.lineHeight(FIGURE), NOTE);
	});
	return height;
}

export const INDEX_HEAD_HEIGHT = 14;

/** Heading of the list of sections, in the order to work through them. */
export function drawIndexHead(sheet: Sheet, y: number): number {
	const right = sheet.width - MARGIN;
	const down = y + sheet.write(words.sectionsTitle, MARGIN, y, HEADING) + 1;
	sheet.write(words.columns.jobs, columns(sheet).jobs, down, NOTE);
	sheet.write(words.columns.section, MARGIN, down, NOTE);
	sheet.write(words.columns.valve, columns(sheet).valve, down, NOTE);
	sheet.write(words.cost, right, down, { ...NOTE, align: 'right' });
	sheet.rule(MARGIN, down + 4.2, right, down + 4.2, 0.4);
	return INDEX_HEAD_HEIGHT;
}

export function indexRowHeight(sheet: Sheet, group: JobGroup): number {
	const { name, when, valve, jobs } = cells(sheet, group);
	const named = name.length * sheet.lineHeight(CELL_BOLD) + when.length * sheet.lineHeight(NOTE);
	return Math.max(named, Math.max(valve.length, jobs.length) * sheet.lineHeight(CELL)) + 2;
}

export function drawIndexRow(sheet: Sheet, group: JobGroup, y: number): number {
	const { name, when, valve, jobs } = cells(sheet, group);
	const { valve: valveX, jobs: jobsX } = columns(sheet);
	const right = sheet.width - MARGIN;
	const under = y + sheet.write(name, MARGIN, y, CELL_BOLD);
	sheet.write(when, MARGIN, under, NOTE);
	sheet.write(valve, valveX, y, CELL);
	sheet.write(jobs, jobsX, y, CELL);
	sheet.write(group.costPerYear || '—', right, y, { ...CELL_BOLD, align: 'right' });
	const height = indexRowHeight(sheet, group);
	sheet.rule(MARGIN, y + height - 1, right, y + height - 1, 0.15);
	return height;
}

function columns(sheet: Sheet) {
	const width = sheet.contentWidth;
	return { valve: MARGIN + width * 0.3, jobs: MARGIN + width * 0.64 };
}

function cells(sheet: Sheet, group: JobGroup) {
	const width = sheet.contentWidth;
	return {
		name: sheet.lines(group.heading, CELL_BOLD, width * 0.28, 3),
		when: group.window === undefined ? [] : sheet.lines(group.window, NOTE, width * 0.28, 2),
		valve: sheet.lines(group.valve, CELL, width * 0.32, 3),
		jobs: sheet.lines(group.jobCount, CELL, width * 0.17, 3)
	};
}
