import { fixList as words } from '../../words/fix-list.ts';
import type { JobGroup } from '../model.ts';
import { cautionsHeight, drawCautions } from './marks.ts';
import { MARGIN, type Sheet, type TextStyle } from './sheet.ts';
import { drawTicks, ticksHeight, type TickStyle } from './ticks.ts';

const NAME: TextStyle = { size: 18, bold: true };
const SUM: TextStyle = { size: 11, bold: true, align: 'right' };
const VALVE: TextStyle = { size: 13, bold: true };
const FACTS: TextStyle = { size: 10 };
const WITHOUT_AIR: TextStyle = { size: 10, bold: true };
const WINDOW: TextStyle = { size: 11, bold: true };
const AGAIN: TextStyle = { size: 10.5, bold: true };
const SUM_COLUMN = 48;
const STEP_SIDE = 7;
/** Room for a note of some five hundred letters after what is measured. */
const FACT_LINES = 7;
/** A window's day and length stand behind its name, however long that is. */
const WINDOW_LINES = 2;

function parts(sheet: Sheet, group: JobGroup) {
	const width = sheet.contentWidth;
	return {
		window:
			group.window === undefined ? [] : sheet.lines(group.window, WINDOW, width, WINDOW_LINES),
		name: sheet.lines(group.heading, NAME, width - SUM_COLUMN),
		valve: sheet.lines(
			group.valveKnown ? words.valve(group.valve) : words.flag(group.valve),
			VALVE,
			width - 6
		),
		withoutAir:
			group.withoutAirToo === undefined
				? []
				: sheet.lines(group.withoutAirToo, WITHOUT_AIR, width - 6),
		facts: sheet.lines(group.facts.join('  ·  '), FACTS, width - 6, FACT_LINES)
	};
}

function boxHeight(sheet: Sheet, group: JobGroup): number {
	const { valve, withoutAir, facts } = parts(sheet, group);
	return (
		3 +
		valve.length * sheet.lineHeight(VALVE) +
		withoutAir.length * sheet.lineHeight(WITHOUT_AIR) +
		facts.length * sheet.lineHeight(FACTS) +
		2 +
		ticksHeight(sheet, group.steps, boxes(sheet)) +
		3
	);
}

function boxes(sheet: Sheet): TickStyle {
	return { width: sheet.contentWidth - 6, side: STEP_SIDE, gap: 6 };
}

function nameHeight(sheet: Sheet, group: JobGroup): number {
	const lines = parts(sheet, group).name.length;
	return Math.max(lines * sheet.lineHeight(NAME), 2 * sheet.lineHeight(SUM)) + 1.5;
}

function windowHeight(sheet: Sheet, group: JobGroup): number {
	return parts(sheet, group).window.length * (sheet.lineHeight(WINDOW) + 1);
}

export function sectionHeadHeight(sheet: Sheet, group: JobGroup): number {
	return (
		3 +
		windowHeight(sheet, group) +
		nameHeight(sheet, group) +
		boxHeight(sheet, group) +
		2.5 +
		cautionsHeight(sheet, group.cautions, sheet.contentWidth) +
		2
	);
}

/** A section: what it costs, the valve to close, and the order of the work with its boxes. */
export function drawSectionHead(sheet: Sheet, group: JobGroup, y: number): number {
	const right = sheet.width - MARGIN;
	const { window, name, valve, withoutAir, facts } = parts(sheet, group);
	sheet.rule(MARGIN, y, right, y, 1.1);
	let down = y + 3;
	sheet.write(window, MARGIN, down, WINDOW);
	down += windowHeight(sheet, group);
	sheet.write(name, MARGIN, down, NAME);
	const sum = group.costPerYear === '' ? words.noSum : words.aYear(group.costPerYear);
	sheet.write([group.jobCount, sum], right, down + 0.6, SUM);
	down += nameHeight(sheet, group);
	const box = { x: MARGIN, y: down, width: right - MARGIN, height: boxHeight(sheet, group) };
	sheet.rect(box, { mode: 'S', thickness: 0.8 });
	let inside = down + 3;
	inside += sheet.write(valve, MARGIN + 3, inside, VALVE);
	inside += sheet.write(withoutAir, MARGIN + 3, inside, WITHOUT_AIR);
	inside += sheet.write(facts, MARGIN + 3, inside, FACTS) + 2;
	drawTicks(sheet, group.steps, MARGIN + 3, inside, boxes(sheet));
	down += box.height + 2.5;
	down += drawCautions(sheet, group.cautions, MARGIN, down, sheet.contentWidth) + 2;
	return down - y;
}

/** The section's name and valve again, on each further page that it fills. */
export function drawSectionAgain(sheet: Sheet, group: JobGroup, y: number): number {
	const width = sheet.contentWidth;
	const valve = group.valveKnown ? words.valve(group.valve) : group.valve;
	const name = sheet.lines(words.continued(group.heading), AGAIN, width * 0.4, 2);
	// Where the valve is must be read here too: the first page of the section may hang elsewhere.
	const right = sheet.lines(valve, AGAIN, width * 0.57, 2);
	const height = Math.max(name.length, right.length) * sheet.lineHeight(AGAIN);
	sheet.write(name, MARGIN, y, AGAIN);
	sheet.write(right, sheet.width - MARGIN, y, { ...AGAIN, align: 'right' });
	const below = y + height + 0.8;
	sheet.rule(MARGIN, below, sheet.width - MARGIN, below, 0.8);
	return height + 3.5;
}
