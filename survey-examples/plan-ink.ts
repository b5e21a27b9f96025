/** Pen strokes for the floor plan: metres go in, SVG text comes out. Plain shapes, no scripts. */

const PX_PER_METRE = 25;

export const INK = {
	paper: '#f5f2ea',
	floor: '#fefdfa',
	wall: '#2c3033',
	line: '#8b8f8e',
	body: '#f3f1ea',
	faint: '#d9d5ca',
	words: '#4c5153',
	air: '#5b6265'
} as const;

export type Point = readonly [x: number, y: number];
type Attributes = Record<string, string | number>;

/** Metres to picture points, rounded so that the file stays small and the same on every machine. */
export function px(metres: number): number {
	return Number((metres * PX_PER_METRE).toFixed(1));
}

export function element(name: string, attributes: Attributes, inside = ''): string {
	const written = Object.entries(attributes)
		.map(([key, value]) => ` ${key}="${value}"`)
		.join('');
	return inside === '' ? `<${name}${written}/>` : `<${name}${written}>${inside}</${name}>`;
}

export function group(attributes: Attributes, parts: readonly string[]): string {
	return element('g', attributes, `\n${parts.join('\n')}\n`);
}

export function box(x: number, y: number, width: number, height: number, more: Attributes = {}) {
	const corner = { x: px(x), y: px(y), width: px(width), height: px(height) };
	return element('rect', { ...corner, ...more });
}

export function circle([x, y]: Point, radius: number, more: Attributes = {}): string {
	return element('circle', { cx: px(x), cy: px(y), r: px(radius), ...more });
}

export function stroke(points: readonly Point[], more: Attributes = {}): string {
	const d = points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${px(x)} ${px(y)}`).join('');
	return element('path', { d, fill: 'none', ...more });
}

export function text(words: string, [x, y]: Point, size: number, more: Attributes = {}): string {
	const safe = words.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
	return element('text', { x: px(x), y: px(y), 'font-size': size, ...more }, safe);
}

/** Centred on the point, and turned to read upwards when asked. */
export function label(words: string, [x, y]: Point, size = 18, turned = false): string {
	const turn = turned ? { transform: `rotate(-90 ${px(x)} ${px(y)})` } : {};
	return text(words, [x, y + size / 72], size, { 'text-anchor': 'middle', ...turn });
}

export interface Opening {
	/** Where along the wall it starts: x of a level wall, y of an upright one. */
	readonly from: number;
	readonly width: number;
	readonly kind: 'door' | 'shutter' | 'window' | 'way';
	/** The side a door opens to: 1 is down or right, -1 is up or left. */
	readonly side?: 1 | -1;
	/** A door hangs at its start unless told. */
	readonly hinge?: 'start' | 'end';
}

/** A level or upright wall with its openings; drawn solid, openings in thin line. */
export function wall(a: Point, b: Point, thickness: number, openings: readonly Opening[] = []) {
	const level = a[1] === b[1];
	const half = thickness / 2;
	const [start, end] = level ? [a[0], b[0]] : [a[1], b[1]];
	const place = (along: number, across: number): Point =>
		level ? [along, a[1] + across] : [a[0] + across, along];
	const solid = (from: number, to: number) => {
		const [x, y] = place(from, -half);
		return level ? box(x, y, to - from, thickness) : box(x, y, thickness, to - from);
	};
	const parts: string[] = [];
	let reached = start - half;
	for (const opening of openings.toSorted((one, two) => one.from - two.from)) {
		parts.push(solid(reached, opening.from), fill(opening, place, half));
		reached = opening.from + opening.width;
	}
	parts.push(solid(reached, end + half));
	return parts.join('');
}

function fill(
	opening: Opening,
	place: (along: number, across: number) => Point,
	half: number
): string {
	const { from, width, kind, side = 1, hinge = 'start' } = opening;
	const to = from + width;
	const thin = { fill: 'none', stroke: INK.wall, 'stroke-width': 1.6 };
	const across = (offset: number) => stroke([place(from, offset), place(to, offset)], thin);
	if (kind === 'way') return '';
	if (kind === 'window') return across(-half) + across(0) + across(half);
	if (kind === 'shutter')
		return stroke([place(from, 0), place(to, 0)], {
			...thin,
			'stroke-width': 3,
			'stroke-dasharray': '10 5'
		});
	const [hung, free] = hinge === 'start' ? [from, to] : [to, from];
	const h = place(hung, 0);
	const open = place(hung, side * width);
	const shut = place(free, 0);
	const turn =
		(open[0] - h[0]) * (shut[1] - h[1]) - (open[1] - h[1]) * (shut[0] - h[0]) > 0 ? 1 : 0;
	const arc = `M${px(open[0])} ${px(open[1])}A${px(width)} ${px(width)} 0 0 ${turn} ${px(shut[0])} ${px(shut[1])}`;
	return (
		stroke([h, open], { ...thin, 'stroke-width': 2.4 }) +
		element('path', { d: arc, ...thin, 'stroke-width': 1.1 })
	);
}
