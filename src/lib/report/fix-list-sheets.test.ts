import { afterEach, expect, it } from 'vitest';
import { sampleModel, sampleSurvey } from '../../../tests/report/sample.ts';
import { speak, type Language } from '../words/language.ts';
import { FIX_LIST_EDGES } from './fix-list-sheets.ts';
import { readPdfFonts } from './node-fonts.ts';
import { PAPERS, type PaperName } from './paper.ts';
import { drawHead, footHeight } from './pdf/furniture.ts';
import { Sheet } from './pdf/sheet.ts';
import { PLAN_FOOT, PLAN_HEAD } from './plan-sheets.ts';

afterEach(() => speak('en'));

const papers = Object.keys(PAPERS) as PaperName[];
const languages = ['en', 'de'] as const satisfies readonly Language[];
const cases = papers.flatMap((paper) => languages.map((language) => ({ paper, language })));

it.each(cases)(
	'[C1] on $paper in $language, no plan runs under the cautions of its page',
	async ({ paper, language }) => {
		await speak(language);
		const model = sampleModel(sampleSurvey(1));
		const edges = FIX_LIST_EDGES[model.language];
		for (const orientation of ['portrait', 'landscape'] as const) {
			const sheet = new Sheet(paper, readPdfFonts());
			sheet.addPage(orientation);
			expect(drawHead(sheet, model), orientation).toBeLessThanOrEqual(
				edges[orientation].top - PLAN_HEAD
			);
			expect(footHeight(sheet, model), orientation).toBeLessThanOrEqual(
				edges[orientation].bottom - PLAN_FOOT + 2
			);
		}
	}
);
