import { readFile } from 'node:fs/promises';
import { afterEach, expect, it } from 'vitest';
import { leftoverEnglish } from '../../../tests/report/leftover-english.ts';
import { readPdf } from '../../../tests/report/read-pdf.ts';
import { readSurveyFile } from '../storage/file/read-survey-file.ts';
import { createFormat } from '../words/format.ts';
import { speak } from '../words/language.ts';
import { readPdfFonts } from './node-fonts.ts';
import { buildSavingsPdf } from './pdf/savings-pdf.ts';
import { savingsModel } from './savings-model.ts';

const file = new URL(
	'../../../survey-examples/ceramics-works-autumn.airtally.zip',
	import.meta.url
);

afterEach(() => speak('en'));

async function printed(locale: string) {
	const opened = await readSurveyFile(new Uint8Array(await readFile(file)));
	if (!opened.ok) throw new Error(opened.error.code);
	const { survey } = opened.value;
	const model = savingsModel(survey, 'round-spring-2026', 'round-autumn-2026', {
		format: createFormat({ locale, currency: survey.site.currency, units: survey.site.units }),
		printedAt: '2026-11-02T08:00:00Z'
	});
	if (!model.ok) throw new Error(model.error.code);
	const bytes = buildSavingsPdf(model.value, {
		fonts: readPdfFonts(),
		paper: 'a4',
		photos: new Map()
	});
	return { pdf: await readPdf(bytes), model: model.value, names: JSON.stringify(survey) };
}

it(
	'[V3] speaks German throughout to a German reader, and says the same',
	{ timeout: 30_000 },
	async () => {
		const english = await printed('en-GB');
		await speak('de', 'de-DE');
		const { pdf, model, names } = await printed('de-DE');
		const text = pdf.pages.join(' ');
		expect(leftoverEnglish(english.pdf.pages.join(' '), names).length).toBeGreaterThan(40);
		expect(leftoverEnglish(text, names)).toEqual([]);
		expect([pdf.language, english.pdf.language]).toEqual(['de', 'en-GB']);
		expect(pdf.title).toContain('Einsparbericht');
		expect(text).toContain('Durch Abseifen belegt: 16.623\u00a0€ im Jahr'.replace('\u00a0', ' '));
		expect(text).toContain('Nicht erreicht');
		const shape = (value: unknown): unknown =>
			typeof value === 'string'
				? value === ''
				: Array.isArray(value)
					? value.map(shape)
					: typeof value === 'object' && value !== null
						? Object.fromEntries(Object.entries(value).map(([key, each]) => [key, shape(each)]))
						: value;
		expect(shape(model)).toEqual(shape(english.model));
	}
);

it('counts what was not reached before it names each', async () => {
	const { model, pdf } = await printed('en-GB');
	const { counts, lines } = model.notReached;
	// Two not reached and one claim, as the examples' own test counts them.
	expect(counts).toEqual([
		expect.stringMatching(
			/^3 leaks were not looked at again: €[\d,]+ a year, counted as leaking\.$/
		)
	]);
	expect(lines).toHaveLength(3);
	expect(pdf.pages.join(' ')).toContain(counts[0]);
});
