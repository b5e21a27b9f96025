import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { planned, sampleModel, sampleSurvey } from '../../../tests/report/sample.ts';
import type { Survey } from '../core/survey/schema.ts';
import { refusalSentence } from '../words/refusals.ts';
import { workOrderCsv, type WorkOrderStyle } from './work-orders.ts';

function read(survey: Survey, style?: WorkOrderStyle) {
	const model = sampleModel(survey);
	const text = workOrderCsv(model, style);
	if (!text.ok) throw new Error(text.error.code);
	const { data, errors, meta } = Papa.parse<Record<string, string>>(text.value, {
		header: true,
		skipEmptyLines: true
	});
	expect(errors).toEqual([]);
	const open = model.groups
		.flatMap((group) => group.rows.map((row) => ({ row, group })))
		.filter(({ row }) => row.shape !== 'done');
	return { model, data, fields: meta.fields, open };
}

describe('work orders', () => {
	it('one row per open repair under a header that never changes (pinned)', () => {
		const { data, fields, open } = read(planned(sampleSurvey(40)));
		expect(fields).toEqual(
			'Number,Title,Asset,Location,Type,Priority,Status,Due,Cost,Description'.split(',')
		);
		expect(data).toHaveLength(open.length);
		expect(data.map(({ Asset }) => Asset)).toEqual(open.map(({ group }) => group.heading));
	});

	it('numbers are unique and the same in the next export; titles keep to 100 characters', () => {
		const survey = sampleSurvey(40);
		const long = {
			...survey.leaks['leak-1'],
			tag: 7,
			place: 'Ł'.repeat(200)
		} as Survey['leaks'][''];
		const twice = { ...survey, leaks: { ...survey.leaks, 'leak-1': long } };
		const numbers = read(twice).data.map(({ Number: number }) => number);
		expect(new Set(numbers).size).toBe(numbers.length);
		expect(read(twice).data.map(({ Number: number }) => number)).toEqual(numbers);
		const titles = read(twice).data.map(({ Title = '' }) => [...Title].length);
		expect(Math.max(...titles)).toBe(100);
	});

	it('due on the day of its window as yyyy-mm-dd, else empty; costs are plain numbers', () => {
		const { data, open } = read(planned(sampleSurvey(40)));
		const due = { 'window-1': '2026-03-14', 'window-2': '2026-03-28' } as Record<string, string>;
		expect(data.map(({ Due }) => Due)).toEqual(
			open.map(({ row }) => due[row.windowId ?? ''] ?? '')
		);
		for (const [index, { Cost }] of data.entries())
			expect(Number(Cost)).toBe(open[index]?.row.values.partsCost);
	});

	it('[C1] the description holds the cautions of the job, its section and the site, and the valve', () => {
		const { data, open, model } = read(sampleSurvey(24));
		open.forEach(({ row, group }, index) => {
			const text = data[index]?.['Description'] ?? '';
			for (const caution of [...row.cautions, ...group.cautions, ...model.cautions])
				expect(text).toContain(caution.text);
			expect(text).toContain(group.valve);
		});
	});

	it('[P9] priorities are written in the words of the site’s list', () => {
		const words = { first: '1 - Urgent', high: '2', normal: '3', low: '4' };
		const { data, open } = read(sampleSurvey(30), { priorities: words });
		expect(data.map(({ Priority }) => Priority)).toEqual(
			open.map(({ row }) => words[row.priority])
		);
		expect(new Set(data.map(({ Priority }) => Priority)).size).toBeGreaterThan(2);
	});

	it('takes the columns that the site names, in its order', () => {
		const columns = [
			{ heading: 'WO Purpose', field: 'title' },
			{ heading: 'Safety', field: 'description' },
			{ heading: 'Target Date', field: 'due' }
		];
		expect(read(sampleSurvey(3), { columns }).fields).toEqual([
			'WO Purpose',
			'Safety',
			'Target Date'
		]);
	});

	it('texts stay texts in a spreadsheet', () => {
		const survey = sampleSurvey(1);
		const leak = { ...survey.leaks['leak-1'], place: '=1+1' } as Survey['leaks'][''];
		const section = { id: 'section-1', name: '=cmd|x' };
		const hostile = { ...survey, leaks: { 'leak-1': leak }, sections: { 'section-1': section } };
		expect(read(hostile).data[0]?.['Asset']).toBe("'=cmd|x");
	});

	it.each<[string, WorkOrderStyle]>([
		['work-order-priority-without-word', { priorities: { first: 'A', high: 'B', low: 'D' } }],
		['work-order-without-cautions', { columns: [{ heading: 'Title', field: 'title' }] }],
		['work-order-field-unknown', { columns: [{ heading: 'Title', field: 'constructor' }] }],
		['work-order-heading-missing', { columns: [{ heading: ' ', field: 'title' }] }],
		[
			'work-order-heading-twice',
			{
				columns: [
					{ heading: 'A', field: 'title' },
					{ heading: 'A', field: 'description' }
				]
			}
		]
	])('refuses with %s, in a sentence', (code, style) => {
		const refused = workOrderCsv(sampleModel(sampleSurvey(30)), style);
		expect(refused.ok ? '' : refused.error.code).toBe(code);
		if (!refused.ok) expect(refusalSentence(refused.error)).toMatch(/^[A-Z“].*\.$/);
	});
});
