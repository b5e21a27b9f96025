import { describe, expect, it } from 'vitest';
import { plain, readPdf } from '../../../tests/report/read-pdf.ts';
import { sampleModel, sampleSurvey, withRoom } from '../../../tests/report/sample.ts';
import { FIX_LIST_EXPORTERS, type ExportSettings } from './exporters.ts';
import { readPdfFonts } from './node-fonts.ts';

const settings: ExportSettings = {
	paper: 'a4',
	planImages: new Map(),
	fonts: readPdfFonts,
	locale: 'en-GB'
};

/** How to read each kind back; a new exporter without an entry here does not compile. */
const readers: Record<keyof typeof FIX_LIST_EXPORTERS, (bytes: Uint8Array) => Promise<string>> = {
	pdf: async (bytes) => (await readPdf(bytes)).pages.join(' '),
	csv: (bytes) => Promise.resolve(new TextDecoder().decode(bytes))
};

const count = (text: string, part: string) => text.split(part).length - 1;

describe.each(Object.keys(FIX_LIST_EXPORTERS) as (keyof typeof FIX_LIST_EXPORTERS)[])(
	'%s export',
	(kind) => {
		it('[C1] [C2] [C29] carries every caution of every job, of the compressor room and of the site', async () => {
			const model = sampleModel(withRoom(sampleSurvey(24)));
			const bytes = await FIX_LIST_EXPORTERS[kind].build(model, settings);
			const text = plain(await readers[kind](bytes));
			const rows = model.groups.flatMap((group) => group.rows);
			for (const { text: caution } of model.cautions) expect(text).toContain(caution);
			const wanted = new Map<string, number>();
			for (const { text: caution } of rows.flatMap((row) => row.cautions))
				wanted.set(caution, (wanted.get(caution) ?? 0) + 1);
			expect(wanted.size).toBeGreaterThan(20);
			for (const [caution, times] of wanted)
				expect(count(text, caution), caution).toBeGreaterThanOrEqual(times);
		});

		it('names its file ending and kind', () => {
			const { fileEnding, mediaType } = FIX_LIST_EXPORTERS[kind];
			expect(fileEnding).toMatch(/^[a-z]+$/);
			expect(mediaType).toMatch(/^[a-z]+\/[a-z]+/);
		});
	}
);
