import { AIR_LINES, DROPS, MAIN_LINE, VALVES } from './plan-air.ts';
import { box, circle, element, group, INK, label, px, stroke, text, wall } from './plan-ink.ts';
import type { Point } from './plan-ink.ts';
import { machines } from './plan-floor.ts';

/** The sheet: 25 picture points to the metre, eight columns A to H and five rows of 12 m. */
export const SHEET = { widthM: 96, heightM: 60, widthPx: 2400, heightPx: 1500 } as const;
const CELL = 12;

/** The floor plan of the demo works as an SVG picture. */
export function planSvg(): string {
	const { widthPx, heightPx } = SHEET;
	return (
		[
			`<svg xmlns="http://www.w3.org/2000/svg" width="${widthPx}" height="${heightPx}" viewBox="0 0 ${widthPx} ${heightPx}" font-family="Helvetica, Arial, sans-serif">`,
			'<title>Brackmoor Ceramics Works, ground floor with compressed air</title>',
			box(0, 0, SHEET.widthM, SHEET.heightM, { fill: INK.paper }),
			box(5, 5, 86, 47, { fill: INK.floor }),
			grid(),
			group({ fill: INK.body, stroke: INK.line, 'stroke-width': 1.7 }, machines()),
			columns(),
			docks(),
			walls(),
			air(),
			rooms(),
			titleStrip(),
			'</svg>'
		].join('\n') + '\n'
	);
}

function grid(): string {
	const lines: string[] = [];
	for (let x = CELL; x < SHEET.widthM; x += CELL) lines.push(`M${px(x)} ${px(2.4)}V${px(54)}`);
	for (let y = CELL; y < 54; y += CELL) lines.push(`M${px(2.4)} ${px(y)}H${px(93.6)}`);
	const names: string[] = [];
	[...'ABCDEFGH'].forEach((letter, index) => {
		names.push(label(letter, [index * CELL + 6, 1.5], 26));
	});
	[...'12345'].forEach((digit, index) => {
		const y = index === 4 ? 50.5 : index * CELL + 6;
		names.push(label(digit, [1.4, y], 26), label(digit, [94.6, y], 26));
	});
	return (
		element('path', { d: lines.join(''), stroke: '#e7e3d9', 'stroke-width': 1.4 }) +
		group({ fill: '#8d8a80', 'font-weight': 'bold' }, names)
	);
}

/** Steel columns of the building, every 8 m or so along the long walls. */
function columns(): string {
	const at: Point[] = [];
	for (const x of [29, 37, 53, 61, 69, 77, 84]) for (const y of [5.55, 51.45]) at.push([x, y]);
	return group(
		{ fill: INK.wall },
		at.map(([x, y]) => box(x - 0.2, y - 0.2, 0.4, 0.4))
	);
}

/** Where lorries back up to the packing hall. */
function docks(): string {
	return group(
		{ fill: INK.body, stroke: INK.line, 'stroke-width': 1.7 },
		[34.4, 39.4, 44.4].map((y) => box(91.25, y - 0.2, 1.1, 3.6))
	);
}

function walls(): string {
	const windows = (...from: number[]) =>
		from.map((at) => ({ from: at, width: 2.4, kind: 'window' as const }));
	return group({ fill: INK.wall }, [
		wall([5, 5], [91, 5], 0.5, windows(8, 14, 24, 31, 39, 48, 56, 64, 72, 80)),
		wall([91, 5], [91, 52], 0.5, [
			...windows(9, 15, 21),
			{ from: 25, width: 3.4, kind: 'shutter' },
			{ from: 34.4, width: 3.2, kind: 'shutter' },
			{ from: 39.4, width: 3.2, kind: 'shutter' },
			{ from: 44.4, width: 3.2, kind: 'shutter' },
			{ from: 49.6, width: 1.1, kind: 'door', side: 1 }
		]),
		wall([5, 52], [91, 52], 0.5, [
			...windows(7.4, 12, 24, 31, 39, 48, 56, 64, 72, 80),
			{ from: 17.6, width: 1.2, kind: 'door', side: -1 },
			{ from: 45.9, width: 1.2, kind: 'door', side: 1 }
		]),
		wall([5, 5], [5, 52], 0.5, [
			{ from: 9, width: 4, kind: 'shutter' },
			{ from: 22.4, width: 3, kind: 'window' },
			{ from: 26.6, width: 3.6, kind: 'shutter' },
			{ from: 31.4, width: 3, kind: 'window' },
			{ from: 38, width: 3, kind: 'shutter' },
			...windows(47)
		]),
		wall([21, 5], [21, 52], 0.3, [
			{ from: 15.6, width: 2.4, kind: 'way' },
			{ from: 21.8, width: 1.2, kind: 'door', side: 1 },
			{ from: 39.2, width: 1.2, kind: 'door', side: -1 },
			{ from: 45.4, width: 1.1, kind: 'door', side: -1, hinge: 'end' }
		]),
		wall([5, 21], [21, 21], 0.3, [{ from: 11.6, width: 1.2, kind: 'door', side: 1 }]),
		wall([5, 35], [21, 35], 0.3, [{ from: 9.4, width: 1.2, kind: 'door', side: 1 }]),
		wall([5, 44], [21, 44], 0.3, [{ from: 8.4, width: 1.1, kind: 'door', side: 1 }]),
		wall([45, 5], [45, 52], 0.3, [
			{ from: 15.3, width: 4, kind: 'way' },
			{ from: 38.6, width: 4, kind: 'way' }
		]),
		wall([21, 29], [45, 29], 0.3, [{ from: 36.4, width: 3.2, kind: 'way' }]),
		wall([45, 30], [91, 30], 0.3, [
			{ from: 56, width: 4.2, kind: 'way' },
			{ from: 83.6, width: 4.2, kind: 'way' }
		]),
		wall([10.4, 44], [10.4, 52], 0.2, [{ from: 48.4, width: 1, kind: 'door', side: -1 }]),
		wall([15.8, 47.6], [15.8, 52], 0.2, [{ from: 48.4, width: 1, kind: 'door', side: -1 }]),
		wall([10.4, 47.6], [15.8, 47.6], 0.2, [{ from: 11.4, width: 1, kind: 'door', side: 1 }])
	]);
}

function air(): string {
	const dashed = { fill: 'none', stroke: INK.air, 'stroke-linejoin': 'round' };
	return [
		group({ ...dashed, 'stroke-width': 5, 'stroke-dasharray': '20 9' }, [stroke(MAIN_LINE)]),
		group(
			{ ...dashed, 'stroke-width': 3, 'stroke-dasharray': '14 7' },
			AIR_LINES.map((line) => stroke(line))
		),
		group(
			{ ...dashed, 'stroke-width': 1.8 },
			DROPS.flatMap(({ at, to }) => (to ? [stroke([at, to])] : []))
		),
		group(
			{ fill: INK.floor, stroke: INK.air, 'stroke-width': 2.6 },
			DROPS.map(({ at }) => circle(at, 0.2))
		),
		group({ fill: INK.floor, stroke: INK.wall, 'stroke-width': 2.2 }, VALVES.map(valve))
	].join('\n');
}

function valve({ name, at: [x, y], upright, nameAt }: (typeof VALVES)[number]): string {
	const [long, wide] = [0.62, 0.38];
	const corners: Point[] = upright
		? [
				[x - wide, y - long],
				[x + wide, y - long],
				[x - wide, y + long],
				[x + wide, y + long]
			]
		: [
				[x - long, y - wide],
				[x - long, y + wide],
				[x + long, y - wide],
				[x + long, y + wide]
			];
	return (
		element('path', { d: `${stroke(corners).split('"')[1] ?? ''}Z`, 'stroke-linejoin': 'round' }) +
		box(nameAt[0] - 0.78, nameAt[1] - 0.5, 1.56, 1, { rx: 12, 'stroke-width': 1.6 }) +
		element('g', { fill: INK.wall, stroke: 'none', 'font-weight': 'bold' }, label(name, nameAt, 19))
	);
}

function rooms(): string {
	const name = (words: string, at: Point, size = 30) =>
		text(words, at, size, { 'letter-spacing': 4, 'text-anchor': 'middle' });
	return group({ fill: INK.wall, 'font-weight': 'bold' }, [
		name('SLIP HOUSE', [11.4, 20.2]),
		name('COMPRESSOR HOUSE', [12.1, 33.6], 24),
		name('WORKSHOP', [15, 43.1], 27),
		name('PRESS HALL', [34.4, 23.3]),
		name('GLAZE LINE', [35, 41.9]),
		name('KILN HALL', [70, 24.4]),
		name('PACKING HALL', [61, 48.2])
	]);
}

function titleStrip(): string {
	return group({ fill: INK.wall }, [
		stroke(
			[
				[5, 53.6],
				[91, 53.6]
			],
			{ stroke: INK.wall, 'stroke-width': 1.6 }
		),
		text('BRACKMOOR CERAMICS WORKS', [5, 55.9], 36, { 'font-weight': 'bold', 'letter-spacing': 3 }),
		text(
			'Ground floor with compressed air. An invented works, drawn for demonstration.',
			[5, 57.6],
			22,
			{
				fill: INK.words
			}
		),
		key(),
		scaleBar([68, 55.6]),
		north([88.6, 56.2])
	]);
}

function key(): string {
	const line = (at: Point, width: number, dashes: string) =>
		stroke([at, [at[0] + 3, at[1]]], {
			stroke: INK.air,
			'stroke-width': width,
			'stroke-dasharray': dashes
		});
	const words = (said: string, at: Point) => text(said, at, 19, { fill: INK.words });
	return [
		line([42, 55.3], 5, '20 9'),
		words('air main', [45.5, 55.55]),
		line([42, 57.3], 3, '14 7'),
		words('branch', [45.5, 57.55]),
		circle([51.4, 55.3], 0.2, { fill: INK.floor, stroke: INK.air, 'stroke-width': 2.6 }),
		words('drop to a machine', [52.4, 55.55]),
		group({ fill: INK.floor, stroke: INK.wall, 'stroke-width': 2.2 }, [
			element('path', {
				d: `M${px(50.9)} ${px(56.95)}V${px(57.65)}L${px(51.9)} ${px(56.95)}V${px(57.65)}Z`
			})
		]),
		words('isolating valve', [52.4, 57.55])
	].join('');
}

function scaleBar([x, y]: Point): string {
	const parts = [0, 5, 10].map((from, index) =>
		box(x + from, y, 5, 0.5, {
			fill: index % 2 === 0 ? INK.wall : INK.floor,
			stroke: INK.wall,
			'stroke-width': 1.6
		})
	);
	const figures = [0, 5, 10, 15].map((metres) =>
		text(metres === 15 ? '15 m' : String(metres), [x + metres, y + 1.5], 19, {
			fill: INK.words,
			'text-anchor': 'middle'
		})
	);
	return parts.join('') + figures.join('');
}

function north([x, y]: Point): string {
	return [
		circle([x, y], 1.25, { fill: 'none', stroke: INK.wall, 'stroke-width': 1.8 }),
		stroke(
			[
				[x, y - 1.7],
				[x + 0.55, y + 0.8],
				[x, y + 0.35],
				[x - 0.55, y + 0.8]
			],
			{ fill: INK.wall }
		),
		label('N', [x + 1.9, y - 0.9], 22)
	].join('');
}
