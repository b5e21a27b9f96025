/** Layers of equal area under exp(−x²/2); the lowest takes the tail with it. */
export const LAYERS = 256;

/**
 * Where the tail begins, chosen so that 256 layers of equal area end exactly at the top of the curve.
 * @source Marsaglia and Tsang, 2000 (from memory; the tests check that the layers close)
 */
export const TAIL_FROM = 3.654_152_885_361_008_8;
/** Area of each layer: base rectangle and tail. Same source. */
const LAYER_AREA = 0.004_928_673_233_974_66;

const STEPS = 2 ** 23;

/** exp(−x²/2) at the outer end of each layer, rising from the base to 1. */
export const HEIGHT = new Float64Array(LAYERS + 1);
/** What one of the 2²³ steps across a layer is worth. */
export const WIDTH = new Float64Array(LAYERS);
/** Steps that lie under the curve for the whole height of the layer. */
export const ACCEPT = new Float64Array(LAYERS);

/** The outer end of each layer, falling from the base's to 0. */
function outerEnds(): Float64Array {
	const ends = new Float64Array(LAYERS + 1);
	const curve = (x: number) => Math.exp(-0.5 * x * x);
	// The base is as wide as its rectangle would be if the tail were part of it.
	ends[0] = LAYER_AREA / curve(TAIL_FROM);
	ends[1] = TAIL_FROM;
	for (let layer = 2; layer < LAYERS; layer++) {
		const below = ends[layer - 1]!;
		ends[layer] = Math.sqrt(-2 * Math.log(LAYER_AREA / below + curve(below)));
	}
	return ends;
}

/** How far from 1 the top of the last layer ends: the check that the constants belong together. */
export function closingError(): number {
	const last = outerEnds()[LAYERS - 1]!;
	return LAYER_AREA / last + Math.exp(-0.5 * last * last) - 1;
}

const ends = outerEnds();
for (let layer = 0; layer < LAYERS; layer++) {
	HEIGHT[layer] = Math.exp(-0.5 * ends[layer]! ** 2);
	WIDTH[layer] = ends[layer]! / STEPS;
	ACCEPT[layer] = (ends[layer + 1]! / ends[layer]!) * STEPS;
}
HEIGHT[LAYERS] = 1;
