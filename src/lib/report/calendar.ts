import ical from 'ical-generator';
import { fixList as words } from '../words/fix-list.ts';
import type { ReportModel, ReportWindow } from './model.ts';
import { cautionText } from './safety-text.ts';

/** Sequence numbers count the seconds from here: a later export is always the newer one. */
const SEQUENCE_FROM = Date.UTC(2026, 0, 1);

/**
 * The windows as calendar entries, with what is to be mended in each and every caution of those jobs.
 * Each entry keeps its name for good, so that taking a newer file in moves it and makes no second one.
 */
export function windowsCalendar(model: ReportModel): string {
	const printed = new Date(model.printedAt);
	const calendar = ical({
		name: words.calendar(model.site),
		prodId: {
			company: 'Airtally',
			product: 'Airtally',
			language: model.language.slice(0, 2).toUpperCase()
		}
	});
	for (const window of model.windows) {
		const start = new Date(window.startsAt);
		calendar.createEvent({
			id: `${window.id}@airtally`,
			sequence: Math.max(0, Math.floor((printed.getTime() - SEQUENCE_FROM) / 1000)),
			stamp: printed,
			start,
			end: new Date(start.getTime() + window.minutes * 60_000),
			summary: words.airOff(nameOf(window), model.site),
			location: model.site,
			description: describe(window, model)
		});
	}
	return calendar.toString();
}

function nameOf({ name }: ReportWindow): string {
	return name.trim() === '' ? words.unnamedWindow : name;
}

/** Cautions first, then each section with its valve and jobs, each job with its own cautions. */
function describe(window: ReportWindow, model: ReportModel): string {
	// What closes a print is said at the head already, where it is one of the site's own.
	const site = [...model.cautions, model.closing].map((caution) => cautionText([caution]));
	const lines = [...new Set(site)];
	lines.push('', words.windowSize(String(window.minutes), String(window.people)));
	if (window.overnightOff) lines.push(words.overnight);
	let planned = 0;
	for (const group of model.groups) {
		const rows = group.rows.filter(({ windowId }) => windowId === window.id);
		if (rows.length === 0) continue;
		planned += rows.length;
		lines.push('', group.heading, words.closeValve(group.valve), cautionText(group.cautions, '\n'));
		for (const row of rows) {
			lines.push(
				`[${row.shape === 'done' ? 'x' : ' '}] ${words.job(row.tag, row.action, row.part, row.place)}`,
				...row.cautions.map((caution) => `    ${cautionText([caution])}`)
			);
		}
	}
	if (planned === 0) lines.push('', words.noneInWindow);
	return lines.join('\n');
}
