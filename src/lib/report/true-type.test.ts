import { describe, expect, it } from 'vitest';
import { sampleModel, sampleSurvey } from '../../../tests/report/sample.ts';
import { missingInReport } from './missing-in-report.ts';
import { readPdfFonts } from './node-fonts.ts';
import { charactersOf, missingGlyphs } from './true-type.ts';

const fonts = readPdfFonts();

describe.each(['regular', 'bold'] as const)('characters of the %s face', (face) => {
	const font = fonts[face];

	it('has what European names, units and our own words need', () => {
		expect(missingGlyphs('Łő ß Ø ³ € Ελ Кир Žđ İı Þð ſ – — “ ” ’ … · □ − ½ ₂', font)).toEqual([]);
	});

	it('has every letter of the Latin, Greek and Cyrillic blocks that jobs are named in', () => {
		const known = charactersOf(font);
		const blocks = [
			[0x20, 0x7e],
			[0xa1, 0x17f],
			[0x391, 0x3a1],
			[0x3a3, 0x3ce],
			[0x400, 0x45f]
		] as const;
		for (const [first, last] of blocks)
			for (let code = first; code <= last; code++)
				expect(known.has(code), code.toString(16)).toBe(true);
	});

	it('names what is missing, once each', () => {
		expect(missingGlyphs('日本 日', font)).toEqual(['日 U+65E5', '本 U+672C']);
		expect(missingGlyphs('🔧', font)).toEqual(['🔧 U+1F527']);
	});

	it('takes a letter and its accent as the letter they make, and spaces as they are', () => {
		expect(missingGlyphs('e\u0301 \u202f\u00a0\u200b\n', font)).toEqual([]);
	});
});

describe('missing characters of a report', () => {
	it('are found wherever they stand', () => {
		const survey = sampleSurvey(3);
		expect(missingInReport(sampleModel(survey), fonts)).toEqual([]);
		const [leak] = Object.values(survey.leaks);
		if (!leak) throw new Error('the sample has no leak');
		const leaks = { ...survey.leaks, [leak.id]: { ...leak, note: 'near 門' } };
		expect(missingInReport(sampleModel({ ...survey, leaks }), fonts)).toEqual(['門 U+9580']);
	});
});
