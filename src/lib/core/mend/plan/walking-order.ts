/** A point on one plan, in any one unit of length. */
export interface Stop {
	readonly x: number;
	readonly y: number;
}

/**
 * The order of stops for a short walk from a start and back to it: the nearest stop next, then stretches of
 * the walk turned round as long as that shortens it (2-opt). METHOD P8. A window has some tens of stops: a
 * library of tours would be larger than this and walk no shorter by any step that can be felt.
 * @returns places in `stops`, in walking order
 */
export function walkingOrder(stops: readonly Stop[], start: Stop): number[] {
	const at = (index: number | undefined): Stop =>
		(index === undefined ? undefined : stops[index]) ?? start;
	const order: number[] = [];
	const left = new Set(stops.keys());
	while (left.size > 0) {
		const here = at(order.at(-1));
		const next = [...left].reduce((a, b) => (far(here, at(b)) < far(here, at(a)) ? b : a));
		order.push(next);
		left.delete(next);
	}
	for (let shorter = true; shorter;) {
		shorter = false;
		for (let i = 0; i < order.length - 1; i++)
			for (let j = i + 1; j < order.length; j++) {
				const [before, from, to, after] = [order[i - 1], order[i], order[j], order[j + 1]].map(at);
				if (!before || !from || !to || !after) continue;
				const now = far(before, from) + far(to, after);
				if (far(before, to) + far(from, after) >= now * (1 - 1e-12)) continue;
				order.splice(i, j - i + 1, ...order.slice(i, j + 1).reverse());
				shorter = true;
			}
	}
	return order;
}

/** How long the walk is, from the start through the stops in order and back. */
export function walkLength(stops: readonly Stop[], order: readonly number[], start: Stop): number {
	let here = start;
	let length = 0;
	for (const index of order) {
		const next = stops[index] ?? start;
		length += far(here, next);
		here = next;
	}
	return length + far(here, start);
}

function far(a: Stop, b: Stop): number {
	return Math.hypot(a.x - b.x, a.y - b.y);
}
