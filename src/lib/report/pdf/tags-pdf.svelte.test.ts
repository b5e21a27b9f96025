import jsQR from 'jsqr';
import * as pdfjs from 'pdfjs-dist';
import workerAddress from 'pdfjs-dist/build/pdf.worker.min.mjs?url';
import { beforeAll, describe, expect, it } from 'vitest';
import { sampleModel, sampleSurvey } from '../../../../tests/report/sample.ts';
import { leakOfTag } from '../../core/survey/leak-of-tag.ts';
import type { Survey } from '../../core/survey/schema.ts';
import { loadPdfFonts } from '../load-assets.ts';
import { buildTagsPdf } from './tags-pdf.ts';

pdfjs.GlobalWorkerOptions.workerSrc = workerAddress;

/** Labels across and down a sheet. */
const ACROSS = 3;
const DOWN = 8;
const DOTS_PER_INCH = 220;
const POINTS_PER_INCH = 72;
const MM_PER_INCH = 25.4;
/** Light cells that a reader wants round a code. */
const QUIET = 4;

/** Leaks whose own names are as long as those that a device gives. */
function survey(leakCount: number): Survey {
	const short = sampleSurvey(leakCount);
	const leaks = Object.values(short.leaks).map((leak) => ({
		...leak,
		id: `leak-01a2b3c4-d5e6-4f70-8a9b-${String(leak.tag).padStart(12, '0')}`,
		mendings: {}
	}));
	return { ...short, leaks: Object.fromEntries(leaks.map((leak) => [leak.id, leak])) };
}

async function sheets(of: Survey): Promise<HTMLCanvasElement[]> {
	const bytes = buildTagsPdf(sampleModel(of), { fonts: await loadPdfFonts(), paper: 'a4' });
	const task = pdfjs.getDocument({ data: bytes, verbosity: 0 });
	const pdf = await task.promise;
	const drawn: HTMLCanvasElement[] = [];
	for (let number = 1; number <= pdf.numPages; number++) {
		const page = await pdf.getPage(number);
		const viewport = page.getViewport({ scale: DOTS_PER_INCH / POINTS_PER_INCH });
		const canvas = document.createElement('canvas');
		canvas.width = Math.round(viewport.width);
		canvas.height = Math.round(viewport.height);
		await page.render({ canvas, viewport }).promise;
		drawn.push(canvas);
	}
	await task.destroy();
	return drawn;
}

/** One label as a camera has it: turned a little and not quite sharp, or straight. */
function look(sheet: HTMLCanvasElement, place: number, turned: number, blurPx: number) {
	const width = sheet.width / ACROSS;
	const height = sheet.height / DOWN;
	const canvas = new OffscreenCanvas(Math.round(width * 1.2), Math.round(width * 1.2));
	const paper = canvas.getContext('2d');
	if (!paper) throw new Error('no canvas here');
	paper.fillStyle = '#fff';
	paper.fillRect(0, 0, canvas.width, canvas.height);
	paper.filter = `blur(${String(blurPx)}px)`;
	paper.translate(canvas.width / 2, canvas.height / 2);
	paper.rotate((turned * Math.PI) / 180);
	const [x, y] = [(place % ACROSS) * width, Math.floor(place / ACROSS) * height];
	paper.drawImage(sheet, x, y, width, height, -width / 2, -height / 2, width, height);
	const { data } = paper.getImageData(0, 0, canvas.width, canvas.height);
	return { code: jsQR(data, canvas.width, canvas.height), paper };
}

function codeOn(...of: Parameters<typeof look>) {
	return look(...of).code;
}

describe('tags, printed and looked at', () => {
	const site = survey(30);
	let printed: HTMLCanvasElement[];
	beforeAll(async () => {
		printed = await sheets(site);
	}, 60_000);

	it('each code of each sheet leads another library’s reader to its leak', () => {
		expect(printed).toHaveLength(2);
		const tags = Object.values(site.leaks).map(({ tag }) => tag);
		const read = tags.map((_, index) => {
			const sheet = printed[Math.floor(index / (ACROSS * DOWN))];
			const code = sheet && codeOn(sheet, index % (ACROSS * DOWN), 0, 0);
			return leakOfTag(site, code?.data ?? '')?.tag;
		});
		expect(read).toEqual(tags);
	});

	it.each([
		[0, 12, 0.8],
		[11, -20, 0.8],
		[23, 90, 0.8]
	])('label %i is read turned by %i° and out of focus', (place, turned, blur) => {
		const [sheet] = printed;
		const code = sheet && codeOn(sheet, place, turned, blur);
		expect(leakOfTag(site, code?.data ?? '')?.tag).toBe(place + 1);
	});

	// A cell of 0.4 mm or more is what phones read at arm’s length: common practice.
	// Four light cells round the code: ISO/IEC 18004, from memory.
	it('cells are large enough for a phone, with room round the code', () => {
		const [sheet] = printed;
		const seen = sheet && look(sheet, 4, 0, 0);
		if (!seen?.code) throw new Error('not read');
		const { code, paper } = seen;
		const { topLeftCorner: left, topRightCorner: right } = code.location;
		const cells = 17 + 4 * code.version;
		const cellPx = Math.hypot(right.x - left.x, right.y - left.y) / cells;
		expect((cellPx / DOTS_PER_INCH) * MM_PER_INCH).toBeGreaterThan(0.4);
		const rings = [
			[-QUIET, -QUIET, cells + 2 * QUIET, QUIET],
			[-QUIET, cells, cells + 2 * QUIET, QUIET],
			[-QUIET, 0, QUIET, cells],
			[cells, 0, QUIET, cells]
		] as const;
		for (const [x, y, width, height] of rings) {
			const inset = cellPx * 0.15;
			const { data } = paper.getImageData(
				left.x + x * cellPx + inset,
				left.y + y * cellPx + inset,
				width * cellPx - 2 * inset,
				height * cellPx - 2 * inset
			);
			expect(Math.min(...data.filter((_, index) => index % 4 === 0))).toBeGreaterThan(128);
		}
		expect(code.data).not.toMatch(/https?:|\s/);
	});
});
