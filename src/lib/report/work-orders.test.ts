import { unzipSync } from 'fflate';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { planned, sampleModel, sampleSurvey } from '../../../tests/report/sample.ts';
import type { Survey } from '../core/survey/schema.ts';
import { refusalSentence } from '../words/refusals.ts';
import { workOrderPack } from './work-order-pack.ts';
import { workOrderCsv, type WorkOrderStyle } from './work-orders.ts';

const column = (heading: string, field: string) => ({ heading, field });

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
			'Number,Title,Asset,Location,Type,Priority,Status,Due,Cost,Photo,Description'.split(',')
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

	it('two saved maps make two different files of the same repairs', () => {
		const one = { columns: [column('WO', 'number'), column('Details', 'description')] };
		const other = {
			columns: [
				column('Text', 'description'),
				column('Asset tag', 'asset'),
				column('No.', 'number')
			],
			priorities: { first: '1', high: '2', normal: '3', low: '4' }
		};
		const [first, second] = [read(sampleSurvey(20), one), read(sampleSurvey(20), other)];
		expect(first.fields).toEqual(['WO', 'Details']);
		expect(second.fields).toEqual(['Text', 'Asset tag', 'No.']);
		expect(second.data.map((row) => [row['No.'], row['Text']])).toEqual(
			first.data.map((row) => [row['WO'], row['Details']])
		);
	});

	it('a repair with a photo names its file, which the pack holds under that name', async () => {
		const survey = sampleSurvey(3);
		const sha256 = 'b'.repeat(64);
		const image = { sha256, mediaType: 'image/jpeg', widthPx: 800, heightPx: 600 };
		const photo = {
			id: 'p',
			image,
			roundId: 'round-1',
			of: 'leak' as const,
			takenAt: '2026-03-02T09:00:00Z'
		};
		const leak = { ...survey.leaks['leak-2'], photos: { p: photo } } as Survey['leaks'][''];
		const pictured = { ...survey, leaks: { ...survey.leaks, 'leak-2': leak } };
		const path = `blobs/${sha256}.jpg`;
		expect(
			read(pictured)
				.data.map(({ Photo }) => Photo)
				.sort()
		).toEqual(['', '', path]);

		const bytes = new Uint8Array([255, 216, 255, 217]);
		const asked: string[] = [];
		const pack = await workOrderPack(sampleModel(pictured), undefined, (name) => {
			asked.push(name);
			return Promise.resolve(bytes);
		});
		if (!pack.ok) throw new Error(pack.error.code);
		const entries = unzipSync(pack.value);
		expect(asked).toEqual([sha256]);
		expect(Object.keys(entries)).toEqual(['work-orders.csv', path]);
		expect(entries[path]).toEqual(bytes);

		const absent = await workOrderPack(sampleModel(pictured), undefined, () =>
			Promise.resolve(undefined)
		);
		expect(absent.ok && Object.keys(unzipSync(absent.value))).toEqual(['work-orders.csv']);
		const refused = await workOrderPack(
			sampleModel(pictured),
			{ columns: [column('Title', 'title')] },
			() => Promise.resolve(bytes)
		);
		expect(refused.ok ? '' : refused.error.code).toBe('work-order-without-cautions');
	});

	it.each(['1970-01-01T00:10:00Z', '2038-01-19T03:14:08Z', '2140-05-01T08:00:00+02:00'])(
		'is packed by a clock that says %s, though a ZIP knows fewer years',
		async (printedAt) => {
			const model = { ...sampleModel(sampleSurvey(1)), printedAt };
			const pack = await workOrderPack(model, undefined, () => Promise.resolve(undefined));
			expect(pack.ok && Object.keys(unzipSync(pack.value))).toEqual(['work-orders.csv']);
		}
	);

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
