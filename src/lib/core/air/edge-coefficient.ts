/** How the edge of an opening meets the air that comes to it. */
export type Edge = 'sharp' | 'rounded' | 'unknown';

export interface DischargeCoefficient {
	readonly central: number;
	readonly lowest: number;
	readonly highest: number;
	/** Standard uncertainty as a share of `central`. */
	readonly relativeStandardUncertainty: number;
	readonly source: string;
}

interface Spread {
	readonly central: number;
	readonly lowest: number;
	readonly highest: number;
}

/** Variance about the central value when anything between lowest and highest is as likely. */
function rectangularVariance({ central, lowest, highest }: Spread): number {
	const width = highest - lowest;
	const offCentre = (highest + lowest) / 2 - central;
	return width ** 2 / 12 + offCentre ** 2;
}

const SHARP: Spread = { central: 0.61, lowest: 0.56, highest: 0.84 };
const ROUNDED: Spread = { central: 0.97, lowest: 0.92, highest: 0.99 };
const MIDPOINT = (SHARP.central + ROUNDED.central) / 2;
/** Either edge, as likely: each one's own spread, and half the step between them. */
const UNKNOWN_VARIANCE =
	(rectangularVariance(SHARP) + rectangularVariance(ROUNDED)) / 2 +
	((ROUNDED.central - SHARP.central) / 2) ** 2;

/**
 * Discharge coefficient of an opening, C_d: a range with a central value, never a bare constant.
 * Standard uncertainty: √(width²/12 + (middle − central)²) for a known edge (rectangular, JCGM 100
 * 4.3.7); for an unknown one the two edges mixed half and half, central value their midpoint.
 * @validity openings in thin or thick walls at any pressure ratio of METHOD A15
 * @source sharp 0.61 and rounded 0.97: handbook multipliers, DOE tip sheet 3 (from memory);
 * sharp from 0.56 (Weisbach's air experiments, Encyclopaedia Britannica 11th ed., read) to 0.84
 * (choked limit of the polynomial attributed to Perry, partly read); rounded 0.92 to 0.99
 * (Weisbach, read); METHOD A7
 */
export const EDGE_COEFFICIENTS: Readonly<Record<Edge, DischargeCoefficient>> = {
	sharp: {
		...SHARP,
		relativeStandardUncertainty: Math.sqrt(rectangularVariance(SHARP)) / SHARP.central,
		source: 'handbook multiplier 0.61; experiments span 0.56 to 0.84'
	},
	rounded: {
		...ROUNDED,
		relativeStandardUncertainty: Math.sqrt(rectangularVariance(ROUNDED)) / ROUNDED.central,
		source: 'handbook multiplier 0.97; experiments span 0.92 to 0.99'
	},
	unknown: {
		central: MIDPOINT,
		lowest: SHARP.lowest,
		highest: ROUNDED.highest,
		relativeStandardUncertainty: Math.sqrt(UNKNOWN_VARIANCE) / MIDPOINT,
		source: 'midpoint of the handbook multipliers 0.61 and 0.97, either as likely'
	}
};
