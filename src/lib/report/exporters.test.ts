import { unzipSync } from 'fflate';
import readWorkbook from 'read-excel-file/node';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { plain, readPdf } from '../../../tests/report/read-pdf.ts';
import { planned, sampleModel, sampleSurvey, withRoom } from '../../../tests/report/sample.ts';
import { FIX_LIST_EXPORTERS, type ExportKind, type ExportSettings } from './exporters.ts';
import type { JobRow, ReportModel } from './model.ts';
import { readPdfFonts } from './node-fonts.ts';

const settings: ExportSettings = {
	paper: 'a4',
	planImages: new Map(),
	fonts: readPdfFonts,
	locale: 'en-GB'
};

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

const count = (whole: string, part: string) => whole.split(part).length - 1;

describe.each(Object.keys(FIX_LIST_EXPORTERS) as ExportKind[])(
	'%s export',
	{ timeout: 60_000 },
	(kind) => {
		it('[C1] [C2] [C29] carries every caution of every job, of the compressor room and of the site', async () => {
			const model = sampleModel(planned(withRoom(sampleSurvey(24))));
			const built = await FIX_LIST_EXPORTERS[kind].build(model, settings);
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
	const built = await FIX_LIST_EXPORTERS.tags.build(model, settings);
	if (!built.ok) throw new Error('tags are never refused');
	const open = model.groups.flatMap((group) => group.rows).filter(({ shape }) => shape !== 'done');
	expect(count(await pdf(built.value), model.band.text)).toBe(open.length);
});
