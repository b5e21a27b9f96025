import { describe, expect, it } from 'vitest';
import { sampleModel, sampleSurvey, withRoom } from '../../../tests/report/sample.ts';
import { plain, readPdf } from '../../../tests/report/read-pdf.ts';
import { fixListCsv } from './csv.ts';
import { readPdfFonts } from './node-fonts.ts';
import { buildFixListPdf } from './pdf/fix-list-pdf.ts';

describe('the compressor room on the fix list', () => {
	const model = sampleModel(withRoom(sampleSurvey(3)));
	const group = model.groups.at(-1);

	it('is a group of its own, rust ahead of the rest', () => {
		expect(group?.heading).toBe('Compressor room');
		expect(group?.jobCount).toBe('8 of 8 to do');
		expect(group?.rows[0]).toMatchObject({
			tag: 'R1',
			flag: 'Do this first',
			part: 'Condensate drain: rust in the water',
			action: 'Out of service until examined inside'
		});
	});

	it('[C5] sends a rotary screw machine to its service engineer', () => {
		const row = group?.rows.find(({ place }) => place === 'Screw machine');
		expect(row?.action).toBe('Call the service engineer');
		expect(row?.cautions.map(({ id }) => id)).toContain('C5');
	});

	it('[C29] [C35] is printed with every caution of every finding, and what was walked', async () => {
		const bytes = buildFixListPdf(model, {
			fonts: readPdfFonts(),
			paper: 'a4',
			planImages: new Map()
		});
		const { pages } = await readPdf(bytes);
		for (const row of group?.rows ?? []) {
			const page = pages.find((text) => text.includes(plain(`${row.place} ${row.part}`))) ?? '';
			for (const { id, text } of row.cautions) expect(page).toContain(plain(`${id} ${text}`));
		}
		expect(pages[0]).toContain('What was walked');
		for (const text of model.walked) expect(pages[0]).toContain(plain(text));
	});

	it('is the whole list where nothing leaks, and is printed with all its cautions', async () => {
		const alone = sampleModel(withRoom(sampleSurvey(0)));
		expect(alone.groups.map(({ heading }) => heading)).toEqual(['Compressor room']);
		const rows = alone.groups[0]?.rows ?? [];
		expect(rows).toHaveLength(group?.rows.length ?? -1);
		const bytes = buildFixListPdf(alone, {
			fonts: readPdfFonts(),
			paper: 'a4',
			planImages: new Map()
		});
		const { pages } = await readPdf(bytes);
		for (const { place, part, cautions } of rows) {
			const page = pages.find((text) => text.includes(plain(`${place} ${part}`))) ?? '';
			for (const { id, text } of cautions) expect(page).toContain(plain(`${id} ${text}`));
		}
		expect(fixListCsv(alone, { locale: 'en-GB' })).toContain('"R1"');
	});

	it('has its rows in the table, by their own tags', () => {
		const table = fixListCsv(model, { locale: 'en-GB' });
		expect(table).toContain('"R1"');
		expect(table).toContain('Condensate drain: rust in the water');
	});

	it('is not there when nothing was found, and the list says that nobody looked', () => {
		const without = sampleModel(sampleSurvey(3));
		expect(without.groups.map(({ heading }) => heading)).not.toContain('Compressor room');
		expect(without.walked).toContain('Compressor room: no check recorded in this round.');
	});
});

describe('what was walked', () => {
	it('says of each plan how much was marked, and that the rest was not', () => {
		const survey = sampleSurvey(3);
		expect(sampleModel(survey).walked[0]).toBe(
			'Ground floor: no part marked as walked and tight; 3 leaks pinned.'
		);
		const corners = [
			{ x: 0, y: 0 },
			{ x: 0.5, y: 0 },
			{ x: 0.5, y: 0.5 },
			{ x: 0, y: 0.5 }
		];
		const { walked } = sampleModel({
			...survey,
			areas: {
				'area-1': {
					id: 'area-1',
					planId: 'plan-1',
					name: 'Aisle 3',
					outline: corners,
					use: { kind: 'walked-tight', roundId: 'round-1', walkedAt: '2026-03-02T09:00:00Z' }
				}
			}
		});
		expect(walked.slice(0, 2)).toEqual([
			'Ground floor: about 25% marked as walked and tight (Aisle 3); 3 leaks pinned.',
			'Elsewhere nobody has said that it was walked.'
		]);
	});
});
