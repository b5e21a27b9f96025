import { jsPDF } from 'jspdf';
import { INK } from './plan-ink.ts';

/** The upper floor of the demo works: the gallery over the press hall. All of it is invented. */
const WIDTH_M = 32;
/** The PDF's page, mm. */
const PAGE = { width: 420, height: 262.5 } as const;

type Shape =
	| { readonly kind: 'box'; readonly at: readonly [x: number, y: number, w: number, h: number] }
	| { readonly kind: 'line'; readonly points: readonly (readonly [x: number, y: number])[] }
	| { readonly kind: 'words'; readonly at: readonly [x: number, y: number]; readonly text: string };

/** In metres on the sheet. */
const SHAPES: readonly Shape[] = [
	{ kind: 'box', at: [3, 3, 26, 12] },
	{ kind: 'box', at: [3, 3, 8, 12] },
	{ kind: 'box', at: [11, 3, 12, 4] },
	{ kind: 'box', at: [23, 3, 6, 12] },
	{ kind: 'box', at: [4, 4.5, 2.5, 2.5] },
	{ kind: 'box', at: [7.5, 4.5, 2.5, 2.5] },
	{ kind: 'box', at: [24.5, 5, 3, 1.5] },
	{ kind: 'box', at: [24.5, 8, 3, 1.5] },
	{
		kind: 'line',
		points: [
			[3, 9],
			[11, 9],
			[11, 8],
			[29, 8]
		]
	},
	{
		kind: 'line',
		points: [
			[14, 8],
			[14, 4]
		]
	},
	{
		kind: 'line',
		points: [
			[20, 8],
			[20, 4]
		]
	},
	{ kind: 'words', at: [4, 14], text: 'Fan room' },
	{ kind: 'words', at: [12, 6.4], text: 'Pipe gallery' },
	{ kind: 'words', at: [13.5, 12], text: 'Open to the press hall' },
	{ kind: 'words', at: [24, 14], text: 'Dust filters' },
	{ kind: 'words', at: [3, 18], text: 'Brackmoor Ceramics Works, upper floor' },
	{
		kind: 'line',
		points: [
			[22, 17.8],
			[27, 17.8]
		]
	},
	{ kind: 'words', at: [23.6, 17.4], text: '5 m' }
];
const LETTERS_M = 0.7;

/** The architect's PDF; the same bytes whenever it is made. */
export function galleryPdf(): Uint8Array<ArrayBuffer> {
	const { width, height } = PAGE;
	const pdf = new jsPDF({ unit: 'mm', format: [width, height], orientation: 'landscape' });
	pdf.setCreationDate("D:20260302090000+00'00'");
	pdf.setFileId('0'.repeat(32));
	pdf.setDrawColor(INK.wall).setTextColor(INK.wall).setLineWidth(1.05);
	const mm = (metres: number): number => (metres * width) / WIDTH_M;
	pdf.setFont('helvetica').setFontSize((mm(LETTERS_M) * 72) / 25.4);
	for (const shape of SHAPES) {
		switch (shape.kind) {
			case 'box': {
				const [x, y, w, h] = shape.at;
				pdf.rect(mm(x), mm(y), mm(w), mm(h));
				break;
			}
			case 'line':
				shape.points.slice(1).forEach(([x, y], index) => {
					const [fromX = x, fromY = y] = shape.points[index] ?? [];
					pdf.line(mm(fromX), mm(fromY), mm(x), mm(y));
				});
				break;
			case 'words':
				pdf.text(shape.text, mm(shape.at[0]), mm(shape.at[1]));
		}
	}
	return new Uint8Array(pdf.output('arraybuffer'));
}
