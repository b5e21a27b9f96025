import { strFromU8, unzipSync } from 'fflate';
import readWorkbook from 'read-excel-file/node';
import { describe, expect, it } from 'vitest';
import { planned, sampleModel, sampleSurvey } from '../../../tests/report/sample.ts';
import type { Survey } from '../core/survey/schema.ts';
import { fixListXlsx } from './xlsx.ts';

async function sheets(survey: Survey) {
	const model = sampleModel(survey);
	const bytes = await fixListXlsx(model);
	const read = await readWorkbook(Buffer.from(bytes));
	const jobs = read.find(({ sheet }) => sheet === 'Jobs')?.data ?? [];
	const [header = [], ...rows] = jobs;
	const column = (name: string) => rows.map((row) => row[header.indexOf(name)]);
	return { model, bytes, read, header, rows, column };
}

const part = (bytes: Uint8Array, path: string) =>
	strFromU8(unzipSync(bytes)[path] ?? new Uint8Array());

describe('fix list as a workbook', () => {
	it('has the jobs, the sections and the cautions, each under a header that stays in sight', async () => {
		const { read, bytes, model, rows } = await sheets(sampleSurvey(30));
		expect(read.map(({ sheet }) => sheet)).toEqual(['Jobs', 'Sections', 'Cautions']);
		expect(rows).toHaveLength(30);
		expect(read[1]?.data).toHaveLength(model.groups.length + 1);
		for (const number of [1, 2, 3])
			expect(part(bytes, `xl/worksheets/sheet${String(number)}.xml`)).toMatch(
				/<pane[^>]*state="frozen"/
			);
	});

	it('numbers are numbers, with the currency in their format, and days are days', async () => {
		const { column, model, bytes } = await sheets(planned(sampleSurvey(20)));
		const rows = model.groups.flatMap((group) => group.rows);
		expect(column('Tag')).toEqual(rows.map(({ tag }) => Number(tag)));
		expect(column('Cost a year')).toEqual(rows.map(({ values }) => values.costPerYear ?? null));
		expect(part(bytes, 'xl/styles.xml')).toContain('EUR');
		const days = column('Window').filter((day) => day !== null);
		expect(days.length).toBeGreaterThan(10);
		for (const day of days) expect(day).toBeInstanceOf(Date);
		const planned_ = rows.map(({ windowId }) =>
			windowId === undefined ? null : windowId === 'window-1' ? '2026-03-14' : '2026-03-28'
		);
		expect(
			column('Window').map((day) => (day instanceof Date ? day.toISOString().slice(0, 10) : null))
		).toEqual(planned_);
	});

	it('[C1] each job stands beside its cautions', async () => {
		const { column, model } = await sheets(sampleSurvey(20));
		const rows = model.groups.flatMap((group) => group.rows);
		rows.forEach(({ cautions }, index) => {
			for (const { text } of cautions) expect(column('Cautions')[index]).toContain(text);
		});
	});

	it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '＝1', '=HYPERLINK("http://example.invalid")'])(
		'%j stays a text and never becomes a formula',
		async (hostile) => {
			const survey = sampleSurvey(1);
			const [leak] = Object.values(survey.leaks);
			if (!leak) throw new Error('the sample has no leak');
			const { column, bytes } = await sheets({
				...survey,
				leaks: { [leak.id]: { ...leak, place: hostile, note: hostile } }
			});
			expect(String(column('Place')[0]).trim()).toBe(hostile.trim());
			expect(part(bytes, 'xl/worksheets/sheet1.xml')).not.toContain('<f>');
		}
	);

	it('names in any script come back the same, and what XML cannot hold is left out', async () => {
		const survey = sampleSurvey(1);
		const [leak] = Object.values(survey.leaks);
		if (!leak) throw new Error('the sample has no leak');
		const { column } = await sheets({
			...survey,
			leaks: {
				[leak.id]: { ...leak, place: 'Łódź <b>&amp;</b> Ελ 日本 €', note: 'a\u0000b\ufffec\ud800d' }
			}
		});
		expect(column('Place')).toEqual(['Łódź <b>&amp;</b> Ελ 日本 €']);
		expect(column('Note')).toEqual(['abcd']);
	});
});
