import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sampleModel, sampleSurvey } from '../../../tests/report/sample.ts';
import { csvCell, fixListCsv } from './csv.ts';

/** A reader of its own, after the grammar of RFC 4180 (from memory). */
function readCsv(text: string, delimiter: string): string[][] {
	const rows: string[][] = [];
	let row: string[] = [];
	let cell = '';
	let quoted = false;
	for (let at = 0; at < text.length; at++) {
		const character = text[at] ?? '';
		if (quoted && character === '"' && text[at + 1] === '"') {
			cell += '"';
			at++;
		} else if (character === '"') quoted = !quoted;
		else if (!quoted && character === delimiter) {
			row.push(cell);
			cell = '';
		} else if (!quoted && character === '\r' && text[at + 1] === '\n') {
			rows.push([...row, cell]);
			[row, cell] = [[], ''];
			at++;
		} else cell += character;
	}
	return rows;
}

const tableOf = (locale: string, delimiter: string) => {
	const model = sampleModel(sampleSurvey(20));
	const [header = [], ...rows] = readCsv(fixListCsv(model, { locale }).slice(1), delimiter);
	return { model, header, rows, at: (name: string) => header.indexOf(name) };
};

describe('fix list as a table', () => {
	it('begins with the mark of UTF-8, so that a spreadsheet reads Ø, ³ and € right', () => {
		const bytes = new TextEncoder().encode(fixListCsv(sampleModel(sampleSurvey(1))));
		expect([...bytes.slice(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
	});

	it.each([
		['en-GB', ',', '.'],
		['de-DE', ';', ','],
		['fr-FR', ';', ',']
	])('%s: delimiter %s and decimal mark %s, every row complete', (locale, delimiter, decimal) => {
		const { rows, header, at, model } = tableOf(locale, delimiter);
		expect(rows).toHaveLength(20);
		for (const row of rows) expect(row).toHaveLength(header.length);
		const waiting = rows.map((row) => row[at('cost_of_waiting_per_day')] ?? '');
		const shown = waiting.filter((text) => text !== '');
		expect(shown.length).toBeGreaterThan(5);
		for (const text of shown) expect(text).toMatch(new RegExp(`^\\d+(\\${decimal}\\d+)?$`));
		const first = model.groups[0]?.rows[0]?.values.costPerYear;
		expect(Number((rows[0]?.[at('cost_per_year')] ?? '').replace(decimal, '.'))).toBe(first);
	});

	it('dates are ISO days', () => {
		const { rows, at } = tableOf('en-GB', ',');
		const dates = rows.map((row) => row[at('mended_on')]).filter((text) => text !== '');
		expect(dates).toEqual(dates.map(() => '2026-03-09'));
		expect(dates.length).toBeGreaterThan(0);
	});

	it('keeps the header as released (pinned)', () => {
		expect(tableOf('en-GB', ',').header.slice(0, 8)).toEqual([
			'tag',
			'section',
			'valve_to_close',
			'place',
			'plan',
			'part',
			'action',
			'cautions'
		]);
	});
});

describe('formulas in a cell', () => {
	it.each([
		'=1+1',
		'+1',
		'-1',
		'@SUM(A1)',
		'\t=1',
		'\r=1',
		'\n=1',
		'  =1',
		'\u00a0=1',
		'\u200b=1',
		'\ufeff=1',
		'＝1+1',
		'＋1',
		'－1',
		'＠x',
		'−1',
		'=HYPERLINK("http://example.invalid","x")'
	])('%j is made inert', (text) => {
		expect(csvCell(text, '.')).toMatch(/^"'/);
	});

	it.each(['Hose - worn', 'a=b', 'Ø 12', '3 m', 'x@y', '“=”'])('%j stays as it is', (text) => {
		expect(csvCell(text, '.')).toBe(`"${text}"`);
	});

	it('numbers stay numbers, below zero too', () => {
		expect(csvCell(-3.5, ',')).toBe('-3,5');
		expect(csvCell(22.5, '.')).toBe('22.5');
		expect(csvCell(NaN, '.')).toBe('');
	});

	it('no text can leave its cell, nor start one that a spreadsheet would run', () => {
		fc.assert(
			fc.property(fc.string({ unit: 'binary' }), fc.constantFrom(',', ';'), (text, delimiter) => {
				const rows = readCsv(`${csvCell(text, '.')}${delimiter}1\r\n`, delimiter);
				expect(rows).toHaveLength(1);
				expect(rows[0]).toHaveLength(2);
				expect(rows[0]?.[0]).not.toMatch(/^\s*[=+\-@]/);
			})
		);
	});
});
