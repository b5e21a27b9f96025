import { describe, expect, it } from 'vitest';
import { fixList, listOrder } from '#lib/core/mend/fix-list.ts';
import type { ShutdownWindow, Survey } from '#lib/core/survey/schema.ts';
import { assess } from '#lib/core/weigh/assess.ts';
import { fixListCsv } from '#lib/report/csv.ts';
import { sampleModel, sampleSurvey } from '../report/sample.ts';

const ROUND = 'round-1';
const windowAt = (id: string, startsAt: string): ShutdownWindow => ({
	id,
	name: id,
	startsAt,
	minutes: 240,
	people: 1,
	overnightOff: false
});

/** Forty leaks, the first twelve planned into two windows, the later one written down first. */
function planned(): Survey {
	const survey = sampleSurvey(40);
	return {
		...survey,
		windows: {
			'window-b': windowAt('window-b', '2026-05-23T06:00:00+02:00'),
			'window-a': windowAt('window-a', '2026-05-09T06:00:00+02:00')
		},
		mendPlan: {
			windows: Object.fromEntries(
				Array.from({ length: 12 }, (_, index) => [
					`leak-${index + 1}`,
					index % 2 === 0 ? 'window-a' : 'window-b'
				])
			)
		}
	};
}

describe('the fix list by window', () => {
	const survey = planned();
	const assessment = assess(survey, ROUND);
	const bySection = fixList(survey, assessment, 'section');
	const byWindow = fixList(survey, assessment, 'window');
	const jobsOf = (list: typeof byWindow) => list.groups.flatMap(({ jobs }) => jobs);

	it('[P8] holds the same jobs once each, with the same cautions', () => {
		const texts = (list: typeof byWindow) =>
			jobsOf(list)
				.map(({ tag, cautions }) => [tag, cautions.map(({ id }) => id).join(' ')] as const)
				.sort(([a], [b]) => a - b);
		expect(texts(byWindow)).toEqual(texts(bySection));
		for (const { cautions } of byWindow.groups) expect(cautions.length).toBeGreaterThan(0);
	});

	it('[P8] has the windows by their start, each section once in each; the rest after them', () => {
		const heads = byWindow.groups.map(
			({ window, section }) => `${window?.id ?? 'none'} ${section?.id ?? 'none'}`
		);
		expect(new Set(heads).size).toBe(heads.length);
		const windows = byWindow.groups.flatMap(({ window }) => window?.id ?? []);
		expect(windows).toEqual(windows.toSorted());
		expect(new Set(windows).size).toBe(2);
	});

	it('[P3] what must come first and is in no window stands ahead of the windows', () => {
		const first = byWindow.groups.findIndex(({ window, jobs }) =>
			jobs.some((job) => !window && job.pinnedFirst && !job.done)
		);
		const window = byWindow.groups.findIndex((group) => group.window);
		expect(first).toBeGreaterThanOrEqual(0);
		expect(first).toBeLessThan(window);
	});

	it('goes by window as soon as a job is planned into one that is still there', () => {
		expect(listOrder(survey)).toBe('window');
		expect(listOrder(sampleSurvey(3))).toBe('section');
		const gone = Object.fromEntries(
			Object.values(survey.windows ?? {}).map((window) => [window.id, { ...window, removed: true }])
		);
		expect(listOrder({ ...survey, windows: gone })).toBe('section');
	});

	it('is printed and written out with its windows', () => {
		const model = sampleModel(survey);
		expect(model.groups.some(({ window }) => window?.startsWith('window-a, 9 May 2026'))).toBe(
			true
		);
		expect(model.groups.at(-1)?.window).toBe('In no window');
		for (const { rows } of model.groups)
			for (const { cautions } of rows) expect(cautions.length).toBeGreaterThan(0);
		expect(fixListCsv(model, { locale: 'en-GB' })).toContain('"window-b, 23 May 2026');
	});
});
