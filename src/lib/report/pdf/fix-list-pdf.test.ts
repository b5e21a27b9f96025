import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { plain, readPdf } from '../../../../tests/report/read-pdf.ts';
import { PLAN_SHA, sampleModel, sampleSurvey } from '../../../../tests/report/sample.ts';
import { depressuriseFirst, localRulesFirst } from '../../core/mend/cautions.ts';
import { ACTIONS, HAZARDS } from '../../core/survey/parts.ts';
import type { Survey } from '../../core/survey/schema.ts';
import { cautionText } from '../../words/cautions.ts';
import { fixList } from '../../words/fix-list.ts';
import { speak } from '../../words/language.ts';
import { boxesOnPaper, type JobRow, type ReportModel } from '../model.ts';
import { readPdfFonts } from '../node-fonts.ts';
import { buildFixListPdf } from './fix-list-pdf.ts';
import { PAPERS, type PaperName } from './sheet.ts';

const fonts = readPdfFonts();
const papers = Object.keys(PAPERS) as PaperName[];
const print = (model: ReportModel, paper: PaperName) =>
	readPdf(buildFixListPdf(model, { fonts, paper, planImages: new Map() }));
const rowsOf = (model: ReportModel) => model.groups.flatMap((group) => group.rows);

/**
 * Where a job's card begins and ends in the text of a page: it opens with its tag and place, and
 * closes with the room for initials, which no other job's text comes between.
 */
function cardOf(pages: readonly string[], row: JobRow): string {
	const opening = plain(`${row.tag} ${row.flag?.toUpperCase() ?? ''} ${row.place} ${row.part}`);
	const page = pages.find((text) => text.includes(opening)) ?? '';
	const from = page.indexOf(opening);
	const to = page.indexOf(fixList.initials, from);
	return from < 0 || to < 0 ? '' : page.slice(from, to);
}

const everyCount = Array.from({ length: 60 }, (_, index) => index + 1);

/** Every count in the form for a night; else so many that each way a page can end is met. */
function countsOn(paper: PaperName): readonly number[] {
	if (process.env['AIRTALLY_LONG']) return everyCount;
	const step = paper === 'a4' ? 4 : 8;
	return everyCount.filter((count) => count < step || count % step === 0);
}

const cases = papers.flatMap((paper) => [
	{
		paper,
		language: 'en',
		locale: 'en-GB',
		counts: countsOn(paper)
	} as const,
	{ paper, language: 'de', locale: 'de-DE', counts: [1, 9, 24, 60] } as const
]);

describe.each(cases)('fix list on $paper paper in $language', (given) => {
	const { paper, language, locale, counts } = given;
	beforeAll(() => speak(language, locale));
	afterAll(() => speak('en'));

	it(
		'[C1] [C2] for counts from 1 to 60 jobs: whole cautions on every page and job, no job split',
		{ timeout: 120_000 },
		async () => {
			for (const count of counts) {
				const model = sampleModel(sampleSurvey(count), locale);
				const { pages } = await print(model, paper);
				for (const text of pages) {
					expect(text).toContain(cautionText(depressuriseFirst()));
					expect(text).toContain(cautionText(localRulesFirst()));
				}
				for (const { id, text } of model.cautions)
					expect(pages[0]).toContain(plain(`${id} ${text}`));
				expect(rowsOf(model)).toHaveLength(count);
				for (const row of rowsOf(model)) {
					const card = cardOf(pages, row);
					for (const { id, text } of row.cautions)
						expect(card, `job ${row.tag} of ${String(count)}`).toContain(plain(`${id} ${text}`));
					for (const { label } of row.ticks) expect(card).toContain(label);
				}
			}
		}
	);

	it('prints the longest job that a survey can hold whole, on one page', async () => {
		const survey = longest();
		const model = sampleModel(survey, locale);
		const { pages } = await print(model, paper);
		for (const row of rowsOf(model)) {
			const card = cardOf(pages, {
				...row,
				place: '',
				flag: '',
				part: fixList.first.toUpperCase()
			});
			for (const { text } of row.cautions) expect(card).toContain(plain(text));
		}
	});

	it('numbers its pages and has the size that was asked for', async () => {
		const { pages, sizes } = await print(sampleModel(sampleSurvey(9), locale), paper);
		const { widthMm, heightMm } = PAPERS[paper];
		pages.forEach((text, index) => {
			expect(text).toContain(fixList.page(String(index + 1), String(pages.length)));
			const asked = [widthMm, heightMm];
			const got = [...(sizes[index] ?? [])].sort((a, b) => a - b);
			expect(got[0]).toBeCloseTo(Math.min(...asked), 1);
			expect(got[1]).toBeCloseTo(Math.max(...asked), 1);
		});
	});
});

/** Every hazard, the longest names that the survey accepts, and no valve. */
function longest(): Survey {
	const survey = sampleSurvey(1);
	const [leak] = Object.values(survey.leaks);
	if (!leak) throw new Error('the sample has no leak');
	const words = (count: number) => 'Wide words WWWW '.repeat(400).slice(0, count);
	return {
		...survey,
		sections: {
			'section-1': { id: 'section-1', name: words(200), note: words(4000), valve: words(200) }
		},
		leaks: Object.fromEntries(
			ACTIONS.map((action, index) => {
				const id = `leak-${String(index + 1)}`;
				return [
					id,
					{
						...leak,
						id,
						tag: 900_000 + index,
						part: 'pressure-vessel' as const,
						action,
						hazards: [...HAZARDS],
						place: words(200),
						note: words(4000)
					}
				];
			})
		)
	};
}

describe('what the fix list says', () => {
	const names = 'Łódź ő ß Ø 12 m³ € Ελλάδα Кирилл Žďár Þór İstanbul ñ';

	it('prints names in European scripts so that they read back the same', async () => {
		const survey = sampleSurvey(2);
		const model = sampleModel({ ...survey, site: { ...survey.site, name: names } });
		const { pages, title, outline } = await print(model, 'a4');
		expect(pages[0]).toContain(names);
		expect(title).toContain(names);
		expect(outline).toContain('Section A');
	});

	it.each(papers)(
		'prints notes of five hundred letters whole, and a long window with its day, on %s',
		async (paper) => {
			const note = 'Ask the foreman for the key, the gate is shut at night. '
				.repeat(9)
				.slice(0, 500)
				.trim();
			const { sections, leaks, ...rest } = sampleSurvey(1);
			const noted = <T extends object>(things: Readonly<Record<string, T>>) =>
				Object.fromEntries(Object.entries(things).map(([id, thing]) => [id, { ...thing, note }]));
			const sample = sampleModel({ ...rest, sections: noted(sections), leaks: noted(leaks) });
			const window =
				'Whitsun stop, agreed with production and the kiln foreman, 23 May 2026, 06:00, 360 min';
			const groups = sample.groups.map((group) => ({ ...group, window }));
			const text = (await print({ ...sample, groups }, paper)).pages.join(' ');
			expect(text.split(note)).toHaveLength(3);
			expect(text).toContain(window);
		}
	);

	it('prints a box where the face lacks a character, and the rest of the text', async () => {
		const survey = sampleSurvey(1);
		const model = sampleModel({ ...survey, site: { ...survey.site, name: 'Works 日本 two' } });
		expect((await print(model, 'a4')).pages[0]).toContain('Works □□ two');
	});

	it('says where the figures come from and puts the numbers on the plan', async () => {
		const model = sampleModel(sampleSurvey(12));
		const { pages, sizes } = await print(model, 'a4');
		expect(pages[0]).toContain('ISO 1217');
		expect(pages[0]).toContain('quick method');
		const plan = pages.findIndex((text) => text.includes('tag on the joint'));
		for (const { tag } of model.plans[0]?.pins ?? []) expect(pages[plan]).toContain(` ${tag} `);
		expect(model.plans[0]?.sha256).toBe(PLAN_SHA);
		const [width = 0, height = 0] = sizes[plan] ?? [];
		expect(width).toBeGreaterThan(height);
	});

	it('says under a plan without a scale what the numbers are, and no sentence runs into the other', async () => {
		const { plans, ...survey } = sampleSurvey(3);
		const bare = Object.fromEntries(
			Object.entries(plans).map(([id, { scale: _, ...plan }]) => [id, plan])
		);
		const { pages } = await print(sampleModel({ ...survey, plans: bare }), 'a4');
		expect(pages.join(' ')).toContain(
			'No scale is set for this plan. The number is the tag on the joint.'
		);
	});

	it('[C8] an open job begins with empty boxes, whatever was ticked another day', async () => {
		const survey = sampleSurvey(3);
		const [leak] = Object.values(survey.leaks);
		if (!leak) throw new Error('the sample has no leak');
		const tried = { isolated: true, vented: true, zeroProved: true } as const;
		const mending = {
			...tried,
			mendedAt: '2026-03-09T10:00:00Z',
			reSoaped: 'still-leaking'
		} as const;
		const model = sampleModel({
			...survey,
			leaks: { ...survey.leaks, [leak.id]: { ...leak, mendings: { 'round-1': mending } } }
		});
		const row = rowsOf(model).find(({ tag }) => tag === '1');
		if (!row) throw new Error('tag 1 is not on the list');
		expect(row.ticks.filter(({ ticked }) => ticked)).toHaveLength(4);
		expect(boxesOnPaper(row).some(({ ticked }) => ticked)).toBe(false);
		const card = cardOf((await print(model, 'a4')).pages, row);
		expect(card).toContain('Mended 9 Mar 2026, and it still leaks');
		expect(card).toContain(`${String(row.values.plannedMinutes)} min`);
	});

	it('ticks what was done, and leaves the rest to the pen', () => {
		const rows = rowsOf(sampleModel(sampleSurvey(6)));
		const ticked = (tag: string) =>
			rows.find((row) => row.tag === tag)?.ticks.flatMap((t) => (t.ticked ? t.label : []));
		expect(ticked('6')).toEqual(['Isolated', 'Vented', 'Mended']);
		expect(ticked('1')).toEqual([]);
	});
});
