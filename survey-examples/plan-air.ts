import type { Point } from './plan-ink.ts';

/** The compressed-air lines of the demo works, in metres on the sheet. */

/** From the dry receiver through V1 and along the middle of the building. */
export const MAIN_LINE: readonly Point[] = [
	[16.2, 28],
	[78, 28]
];

/** One branch for each valve from V2 on. */
export const AIR_LINES: readonly (readonly Point[])[] = [
	[
		[20, 28],
		[20, 7],
		[6.2, 7],
		[6.2, 16.4]
	],
	[
		[23, 28],
		[23, 6.6],
		[43.9, 6.6],
		[43.9, 25]
	],
	[
		[25.6, 28],
		[25.6, 30.2],
		[22.2, 30.2],
		[22.2, 50.6],
		[43.8, 50.6],
		[43.8, 33]
	],
	[
		[46.6, 28],
		[46.6, 6.8],
		[89.4, 6.8],
		[89.4, 25]
	],
	[
		[51, 28],
		[51, 31.4],
		[70, 31.4]
	],
	[
		[51, 31.4],
		[46.6, 31.4],
		[46.6, 50.6],
		[68, 50.6]
	],
	[
		[78, 28],
		[78, 31.4],
		[89.6, 31.4],
		[89.6, 50.6],
		[72, 50.6]
	],
	[
		[20, 28],
		[20, 36.2],
		[6.5, 36.2]
	]
];

export const VALVES: readonly {
	readonly name: `V${1 | 2 | 3 | 4 | 5 | 6 | 7 | 8}`;
	readonly at: Point;
	readonly upright: boolean;
	readonly nameAt: Point;
}[] = [
	{ name: 'V1', at: [18.2, 28], upright: false, nameAt: [18.2, 26.8] },
	{ name: 'V2', at: [20, 24.4], upright: true, nameAt: [18.5, 24.4] },
	{ name: 'V3', at: [23, 25.6], upright: true, nameAt: [24.5, 25.6] },
	{ name: 'V4', at: [24, 30.2], upright: false, nameAt: [24, 31.4] },
	{ name: 'V5', at: [46.6, 25.6], upright: true, nameAt: [48.1, 25.6] },
	{ name: 'V6', at: [51, 29], upright: true, nameAt: [52.5, 28.9] },
	{ name: 'V7', at: [78, 29], upright: true, nameAt: [79.5, 28.9] },
	{ name: 'V8', at: [20, 31.8], upright: true, nameAt: [18.5, 31.8] }
];

/** Behind each valve: a stretch of its line, the way that the air goes. */
export const INTO_SECTIONS: Readonly<
	Record<(typeof VALVES)[number]['name'], readonly [from: Point, to: Point]>
> = {
	V1: [
		[19.4, 28],
		[22.6, 28]
	],
	V2: [
		[20, 23],
		[20, 19.5]
	],
	V3: [
		[23, 24.2],
		[23, 20.7]
	],
	V4: [
		[22.2, 31.2],
		[22.2, 34.7]
	],
	V5: [
		[46.6, 24.2],
		[46.6, 20.7]
	],
	V6: [
		[52.6, 31.4],
		[56.1, 31.4]
	],
	V7: [
		[79.6, 31.4],
		[83.1, 31.4]
	],
	V8: [
		[20, 32.9],
		[20, 36.2]
	]
};

/** Where a drop comes down from a branch, and the machine that it feeds when one stands there. */
export const DROPS: readonly { readonly at: Point; readonly to?: Point }[] = [
	// slip house
	{ at: [16.8, 7], to: [16.8, 8.5] },
	{ at: [12.6, 7], to: [12.6, 8.5] },
	{ at: [8.4, 7], to: [8.4, 8.5] },
	{ at: [6.2, 13.8], to: [7.7, 13.8] },
	{ at: [6.2, 16.4], to: [7.7, 16.4] },
	{ at: [20, 14.5], to: [18.4, 14.5] },
	// press hall
	{ at: [27, 6.6], to: [27, 8.6] },
	{ at: [33.6, 6.6], to: [33.6, 8.6] },
	{ at: [40.2, 6.6], to: [40.2, 8.6] },
	{ at: [23, 15], to: [25, 15] },
	{ at: [23, 19.4], to: [25, 19.4] },
	{ at: [43.9, 19.4], to: [43.3, 19.4] },
	{ at: [43.9, 25], to: [42.8, 25] },
	// glaze line
	{ at: [22.2, 34.9], to: [26, 34.9] },
	{ at: [22.2, 41.6], to: [24.5, 41.6] },
	{ at: [23.8, 50.6] },
	{ at: [26.7, 50.6], to: [26.7, 49.4] },
	{ at: [31.5, 50.6], to: [31.5, 49.4] },
	{ at: [37.2, 50.6], to: [37.2, 49] },
	{ at: [43.8, 41.6], to: [42, 41.6] },
	{ at: [43.8, 34.9], to: [40, 34.9] },
	// kiln hall
	{ at: [46.6, 10.6], to: [48.4, 10.6] },
	{ at: [46.6, 16.8], to: [48.4, 16.8] },
	{ at: [57, 6.8], to: [57, 8.8] },
	{ at: [68, 6.8], to: [68, 8.45] },
	{ at: [79, 6.8], to: [79, 8.8] },
	{ at: [89.4, 10.6], to: [88, 10.6] },
	{ at: [89.4, 16.8], to: [88, 16.8] },
	{ at: [89.4, 25], to: [85, 25] },
	// packing hall, sorting
	{ at: [46.6, 38.6], to: [50, 38.6] },
	{ at: [46.6, 43], to: [50, 43] },
	{ at: [46.6, 47.3], to: [49.4, 47.3] },
	{ at: [54, 31.4], to: [54, 33.6] },
	{ at: [61, 31.4], to: [61, 33.6] },
	{ at: [66.8, 31.4], to: [66.8, 32.9] },
	{ at: [62, 50.6] },
	{ at: [68, 50.6] },
	// pallet line
	{ at: [80.8, 31.4], to: [80.8, 34.4] },
	{ at: [89.6, 38.6], to: [87.8, 38.6] },
	{ at: [89.6, 46.2] },
	{ at: [82.4, 50.6] },
	{ at: [73.6, 50.6] },
	// workshop
	{ at: [6.5, 36.2], to: [6.5, 39.2] },
	{ at: [12, 36.2], to: [12, 37.6] },
	{ at: [16.8, 36.2], to: [16.8, 37.6] }
];
