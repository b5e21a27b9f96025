import { unzipSync } from 'fflate';
import readWorkbook from 'read-excel-file/node';
import ICAL from 'ical.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { leftoverEnglish } from '../../../tests/report/leftover-english.ts';
import { plain, readPdf } from '../../../tests/report/read-pdf.ts';
import { planned, sampleModel, sampleSurvey, withRoom } from '../../../tests/report/sample.ts';
import { CAUTION_RULES } from '../core/mend/caution-rules.ts';
import { speak, type Language } from '../words/language.ts';
import { FIX_LIST_EXPORTERS, type ExportKind, type ExportSettings } from './exporters.ts';
import type { JobRow, ReportModel } from './model.ts';
import { readPdfFonts } from './node-fonts.ts';

const LOCALES: Readonly<Record<Language, string>> = { en: 'en-GB', de: 'de-DE' };
const settingsIn = (locale: string): ExportSettings => ({
	paper: 'a4',
	planImages: new Map(),
	fonts: readPdfFonts,
	locale
});

interface Reader {
	readonly read: (bytes: Uint8Array<ArrayBuffer>) => Promise<string>;
	/** The jobs that this kind hands over; all when absent. */
	readonly takes?: (row: JobRow) => boolean;
	/** What stands for the cautions where it hands over no jobs; checked below. */
	readonly cautions?: (model: ReportModel) => readonly string[];
}

const text = (bytes: Uint8Array) => Promise.resolve(new TextDecoder().decode(bytes));
const pdf = async (bytes: Uint8Array) => (await readPdf(bytes)).pages.join(' ');

/** How to read each kind back; a new exporter without an entry here does not compile. */
const readers: Record<ExportKind, Reader> = {
	pdf: { read: pdf },
	csv: { read: text },
	xlsx: {
		read: async (bytes) =>
			(await readWorkbook(Buffer.from(bytes)))
				.flatMap(({ data }) => data.flat())
				.map((cell) => (typeof cell === 'string' ? cell : ''))
				.join(' ')
	},
	workOrders: { read: text, takes: ({ shape }) => shape !== 'done' },
	workOrderPack: {
		read: (bytes) => text(unzipSync(bytes)['work-orders.csv'] ?? new Uint8Array()),
		takes: ({ shape }) => shape !== 'done'
	},
	calendar: {
		read: async (bytes) =>
			new ICAL.Component(ICAL.parse(await text(bytes)) as unknown[])
				.getAllSubcomponents('vevent')
				.map((event) => String(event.getFirstPropertyValue('description')))
				.join(' '),
		takes: ({ windowId }) => windowId !== undefined
	},
	// A tag is no job: it hangs on the joint, and says what comes before it is touched.
	tags: { read: pdf, takes: () => false, cautions: (model) => [model.band.text] }
};

/** All but the CSV, whose columns keep their names whoever reads it. */
const speaksToReader = (kind: ExportKind) => kind !== 'csv';

const handed = (kind: ExportKind) => readers[kind].takes ?? (() => true);
const count = (whole: string, part: string) => whole.split(part).length - 1;

const KINDS = Object.keys(FIX_LIST_EXPORTERS) as ExportKind[];
const CASES = KINDS.flatMap((kind) =>
	(Object.keys(LOCALES) as Language[]).map((language) => ({ kind, language }))
);

describe.each(CASES)(
	'$kind export for a reader of $language',
	{ timeout: 60_000 },
	({ kind, language }) => {
		const locale = LOCALES[language];
		beforeAll(() => speak(language, locale));
		afterAll(() => speak('en'));

		it('[C1] [C2] [C29] carries every caution of every job, of the compressor room and of the site', async () => {
			const survey = planned(withRoom(sampleSurvey(24)));
			const model = sampleModel(survey, locale);
			const built = await FIX_LIST_EXPORTERS[kind].build(model, settingsIn(locale));
			if (!built.ok) throw new Error(built.error.code);
			const { read, takes = () => true, cautions } = readers[kind];
			const found = plain(await read(built.value));
			const site = cautions?.(model) ?? model.cautions.map((caution) => caution.text);
			for (const caution of site) expect(found).toContain(caution);
			const rows = model.groups.flatMap((group) => group.rows).filter(takes);
			const wanted = new Map<string, number>();
			for (const { text: caution } of rows.flatMap((row) => row.cautions))
				wanted.set(caution, (wanted.get(caution) ?? 0) + 1);
			if (cautions === undefined) expect(wanted.size).toBeGreaterThan(12);
			for (const [caution, times] of wanted)
				expect(count(found, plain(caution)), caution).toBeGreaterThanOrEqual(times);
			const inEnglish = CAUTION_RULES.filter(({ text: english }) => found.includes(english));
			expect(inEnglish.length > 0).toBe(language === 'en');
			if (language !== 'en' && speaksToReader(kind))
				expect(leftoverEnglish(found, JSON.stringify(survey))).toEqual([]);
		});

		it('[C1] [C29] of a site with findings in the compressor room and no leak carries theirs', async () => {
			const model = sampleModel(withRoom(sampleSurvey(0)), locale);
			const rows = model.groups.flatMap((group) => group.rows).filter(handed(kind));
			const built = await FIX_LIST_EXPORTERS[kind].build(model, settingsIn(locale));
			if (!built.ok) throw new Error(built.error.code);
			const found = plain(await readers[kind].read(built.value));
			expect(model.groups).toHaveLength(1);
			for (const { place, action, cautions } of rows) {
				expect(found).toContain(plain(place));
				expect(found).toContain(plain(action));
				for (const { text: caution } of cautions) expect(found).toContain(plain(caution));
			}
			if (!['tags', 'calendar'].includes(kind)) expect(rows).toHaveLength(8);
		});

		it('names its file, its ending and kind', () => {
			const { fileName, fileEnding, mediaType } = FIX_LIST_EXPORTERS[kind];
			expect(fileName).toMatch(/^[a-z]+(-[a-z]+)*$/);
			expect(fileEnding).toMatch(/^[a-z]+$/);
			expect(mediaType).toMatch(/^[a-z]+\/[a-z]+/);
		});
	}
);

it('[C1] every tag carries the depressurise-first caution', { timeout: 60_000 }, async () => {
	const model = sampleModel(sampleSurvey(60));
	const built = await FIX_LIST_EXPORTERS.tags.build(model, settingsIn('en-GB'));
	if (!built.ok) throw new Error('tags are never refused');
	const open = model.groups.flatMap((group) => group.rows).filter(({ shape }) => shape !== 'done');
	expect(count(await pdf(built.value), model.band.text)).toBe(open.length);
});
