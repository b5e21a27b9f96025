import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { plain } from '../../../../tests/report/read-pdf.ts';
import { planned, sampleModel, sampleSurvey, withRoom } from '../../../../tests/report/sample.ts';
import { depressuriseFirst, localRulesFirst } from '../../core/mend/cautions.ts';
import { readPdfFonts } from '../node-fonts.ts';
import { buildFixListPdf } from './fix-list-pdf.ts';
import { PAPERS, type PaperName } from './sheet.ts';
import { buildTagsPdf } from './tags-pdf.ts';

const fonts = readPdfFonts();
const papers = Object.keys(PAPERS) as PaperName[];

/** The pages as poppler's pdftotext reads them, in the order in which they were written. */
function pagesOf(bytes: Uint8Array): string[] {
	const { stdout, status } = spawnSync('pdftotext', ['-raw', '-enc', 'UTF-8', '-', '-'], {
		input: bytes,
		encoding: 'utf8',
		maxBuffer: 1e8
	});
	expect(status).toBe(0);
	return stdout.split('\f').slice(0, -1).map(plain);
}

/** Poppler's tools: `npm test` installs them where Debian's packages can be had. */
const there = spawnSync('pdftotext', ['-v']).status === 0;

describe.runIf(there).each(papers)('a second reader of the print, pdftotext, on %s', (paper) => {
	it('[C1] [C2] finds the caution on every page and each job’s own beside it', () => {
		const model = sampleModel(planned(withRoom(sampleSurvey(40))));
		const pages = pagesOf(buildFixListPdf(model, { fonts, paper, planImages: new Map() }));
		expect(pages.length).toBeGreaterThan(8);
		for (const page of pages) {
			expect(page).toContain(plain(depressuriseFirst().text));
			expect(page).toContain(plain(localRulesFirst().text));
		}
		for (const row of model.groups.flatMap(({ rows }) => rows)) {
			const named = plain(`${row.place} ${row.part}`);
			const page = pages.find((text) => text.includes(named)) ?? '';
			const card = page.slice(page.indexOf(named)).split('Initials')[0] ?? '';
			for (const { id, text } of row.cautions)
				expect(card, `job ${row.tag}`).toContain(plain(`${id} ${text}`));
		}
		for (const { window, parts } of model.parts?.rows ?? [])
			expect(pages[0]).toMatch(new RegExp(`${RegExp.escape(plain(window))} \\d+ ${parts}`));
		expect(pages[0]).toContain(model.parts?.sum);
	});

	it('[C1] finds the caution on every tag, and its number', () => {
		const model = sampleModel(sampleSurvey(30));
		const text = pagesOf(buildTagsPdf(model, { fonts, paper })).join(' ');
		const open = model.groups.flatMap(({ rows }) => rows).filter(({ shape }) => shape !== 'done');
		expect(text.split(plain(model.band.text)).length - 1).toBe(open.length);
		for (const { tag } of open) expect(text).toMatch(new RegExp(`\\b${tag}\\b`));
	});

	it('says on every tag the whole place where it is to hang, of sixty letters too', () => {
		const place = 'Filter press, closing cylinder, rod seal behind third pillar';
		const { leaks, ...rest } = sampleSurvey(30);
		const placed = Object.entries(leaks).map(([id, leak]) => [id, { ...leak, place }] as const);
		const model = sampleModel({ ...rest, leaks: Object.fromEntries(placed) });
		const text = pagesOf(buildTagsPdf(model, { fonts, paper })).join(' ');
		const open = model.groups.flatMap(({ rows }) => rows).filter(({ shape }) => shape !== 'done');
		expect(text.split(place).length - 1).toBe(open.length);
	});
});

it('the names of a site read back the same in every European script', { skip: !there }, () => {
	const name = 'Łódź ő ß Ø 12 m³ € Ελλάδα Кирилл Žďár Þór İstanbul ñ';
	const survey = sampleSurvey(2);
	const model = sampleModel({ ...survey, site: { ...survey.site, name } });
	const [cover] = pagesOf(buildFixListPdf(model, { fonts, paper: 'a4', planImages: new Map() }));
	expect(cover).toContain(name);
});
