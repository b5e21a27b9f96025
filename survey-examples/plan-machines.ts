import { box, circle, element, INK, label, px, stroke, type Point } from './plan-ink.ts';

/** The machines that the plan is drawn with, seen from above. Sizes in metres. */

export function press(x: number, y: number, name: string): string {
	const columns: Point[] = [
		[x + 0.4, y + 0.4],
		[x + 3.6, y + 0.4],
		[x + 0.4, y + 2.8],
		[x + 3.6, y + 2.8]
	];
	return [
		box(x, y, 4, 3.2),
		box(x + 0.7, y + 0.75, 2.6, 1.7, { fill: INK.floor }),
		...columns.map((at) => circle(at, 0.22, { fill: INK.floor })),
		box(x + 4.2, y + 0.5, 0.9, 2.2),
		words(name, [x + 2, y + 1.6], 17)
	].join('');
}

export function tank(at: Point, radius: number, name = ''): string {
	const parts = [circle(at, radius), circle(at, radius * 0.82, { fill: INK.floor })];
	if (name) parts.push(words(name, at));
	else parts.push(circle(at, 0.12, { fill: INK.line }));
	return parts.join('');
}

export function pump([x, y]: Point, name: string): string {
	return [
		circle([x, y], 0.5),
		box(x + 0.5, y - 0.3, 0.8, 0.6),
		stroke([
			[x - 0.2, y - 0.35],
			[x + 0.45, y],
			[x - 0.2, y + 0.35]
		]),
		words(name, [x + 0.35, y + 1], 16)
	].join('');
}

/** A named box; the name stands in it or, for a flat one, is turned. */
export function unit(
	x: number,
	y: number,
	width: number,
	height: number,
	name: string,
	size = 18
): string {
	const turned = height > width * 1.6;
	return (
		box(x, y, width, height, { rx: 3 }) + words(name, [x + width / 2, y + height / 2], size, turned)
	);
}

/** Rollers across the way that things travel. */
export function conveyor(x: number, y: number, width: number, height: number): string {
	const level = width >= height;
	const length = level ? width : height;
	const rollers: string[] = [];
	for (let along = 0.6; along < length - 0.1; along += 0.6) {
		rollers.push(
			level
				? `M${px(x + along)} ${px(y)}V${px(y + height)}`
				: `M${px(x)} ${px(y + along)}H${px(x + width)}`
		);
	}
	return (
		box(x, y, width, height) +
		element('path', { d: rollers.join(''), fill: 'none', stroke: INK.faint, 'stroke-width': 1.2 })
	);
}

/** A tunnel kiln: thick sides, three zones, burners along the fire, a flue at the cold end. */
export function tunnelKiln(x: number, y: number, length: number, name: string): string {
	const height = 3.6;
	const fire = [x + length * 0.34, x + length * 0.64] as const;
	const burners: string[] = [];
	for (let at = fire[0] + 0.7; at < fire[1]; at += 1.2)
		burners.push(box(at, y - 0.35, 0.4, 0.35), box(at, y + height, 0.4, 0.35));
	return [
		...burners,
		box(x, y, length, height),
		box(x, y + 0.75, length, height - 1.5, { fill: INK.floor }),
		...fire.map((at) =>
			stroke([
				[at, y],
				[at, y + height]
			])
		),
		circle([x + 2.2, y + 0.36], 0.26, { fill: INK.floor }),
		circle([x + 3.4, y + 0.36], 0.26, { fill: INK.floor }),
		words(name, [x + length / 2 - 0.4, y + height / 2], 22),
		words('preheat', [x + length * 0.19, y + height / 2], 16),
		words('cooling', [x + length * 0.82, y + height / 2], 16)
	].join('');
}

/** A pair of rails for kiln cars, with a few cars on it. */
export function track(from: Point, to: Point, cars: readonly number[] = []): string {
	const gap = 0.5;
	const level = from[1] === to[1];
	const rail = (offset: number) =>
		stroke(
			level
				? [
						[from[0], from[1] + offset],
						[to[0], to[1] + offset]
					]
				: [
						[from[0] + offset, from[1]],
						[to[0] + offset, to[1]]
					],
			{ stroke: '#b5b2a8', 'stroke-width': 1.4 }
		);
	const car = (at: number) =>
		level ? box(at, from[1] - 0.85, 2.2, 1.7) : box(from[0] - 0.85, at, 1.7, 2.2);
	return rail(-gap) + rail(gap) + cars.map(car).join('');
}

/** A spray booth open to the line below or above it, with its extract. */
export function booth(x: number, y: number, name: string, opensDown: boolean): string {
	const back = opensDown ? y : y + 2.6;
	const front = opensDown ? y + 2.6 : y;
	return [
		box(x, y, 3.2, 2.6),
		stroke([
			[x + 0.35, front],
			[x + 0.35, back + (opensDown ? 0.4 : -0.4)],
			[x + 2.85, back + (opensDown ? 0.4 : -0.4)],
			[x + 2.85, front]
		]),
		circle([x + 1.6, back + (opensDown ? -0.5 : 0.5)], 0.4),
		words(name, [x + 1.6, y + 1.3], 17)
	].join('');
}

export function stairs(x: number, y: number, width: number, height: number): string {
	const treads: string[] = [];
	for (let at = 0.3; at < width; at += 0.3)
		treads.push(`M${px(x + at)} ${px(y)}V${px(y + height)}`);
	const middle = y + height / 2;
	return [
		box(x, y, width, height, { fill: INK.floor }),
		element('path', { d: treads.join(''), stroke: '#b5b2a8', 'stroke-width': 1.2 }),
		stroke([
			[x + 0.2, middle],
			[x + width - 0.2, middle]
		]),
		stroke([
			[x + width - 0.55, middle - 0.25],
			[x + width - 0.2, middle],
			[x + width - 0.55, middle + 0.25]
		])
	].join('');
}

/** A robot arm in its fence. */
export function robot([x, y]: Point, reach: number, name: string): string {
	return [
		circle([x, y], reach, { fill: 'none', 'stroke-dasharray': '6 5' }),
		circle([x, y], 0.6),
		stroke([
			[x, y],
			[x + reach * 0.55, y - reach * 0.35],
			[x + reach * 0.85, y + reach * 0.1]
		]),
		words(name, [x, y + reach * 0.62], 17)
	].join('');
}

export function words(name: string, at: Point, size = 18, turned = false): string {
	return element('g', { fill: INK.words, stroke: 'none' }, label(name, at, size, turned));
}
