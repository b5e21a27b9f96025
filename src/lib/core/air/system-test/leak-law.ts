/** One interval of a bleed-down: how fast the system lost air, and at what pressure. */
export interface LawPoint {
	/** Mean gauge pressure over the interval, Pa. */
	readonly pressure: number;
	/** Mean mass flux of a fixed opening over the interval, kg/(s·m²). METHOD T5. */
	readonly flux: number;
	/** What was lost, kg/s. */
	readonly massFlow: number;
	/** Standard uncertainty of `massFlow` from the gauge's divisions, kg/s. */
	readonly uncertainty: number;
}

/** Flow in proportion to the flux of a fixed opening. */
export interface OrificeFit {
	/** Effective area, m². */
	readonly area: number;
	/** Root mean square of what the law leaves over, kg/s. */
	readonly residual: number;
	/** Standard uncertainty of `area`, m². */
	readonly areaUncertainty: number;
}

/** Flow as a straight line in gauge pressure. */
export interface LineFit {
	/** kg/s per Pa. */
	readonly slope: number;
	/** kg/s at zero gauge; below zero when the joints close first. */
	readonly intercept: number;
	readonly residual: number;
	/** Where the line reaches zero flow, Pa gauge. */
	readonly zeroFlowPressure: number;
	readonly meanPressure: number;
	/** Sum of squares of the pressures about their mean, Pa². */
	readonly spread: number;
	readonly points: number;
}

function sum(points: readonly LawPoint[], part: (point: LawPoint) => number): number {
	return points.reduce((total, point) => total + part(point), 0);
}

/**
 * Least squares through the origin: A_e = Σ(ṁ·G)/ΣG².
 * @param points two or more intervals
 * @returns area (m²), its standard uncertainty and the residual (kg/s)
 * @validity errors of the intervals alike and independent
 * @source least squares, any statistics text; METHOD T6
 */
export function fitOrifice(points: readonly LawPoint[]): OrificeFit {
	const squares = sum(points, ({ flux }) => flux * flux);
	const area = sum(points, ({ flux, massFlow }) => flux * massFlow) / squares;
	const left = sum(points, ({ flux, massFlow }) => (massFlow - area * flux) ** 2);
	const residual = Math.sqrt(left / (points.length - 1));
	return { area, residual, areaUncertainty: residual / Math.sqrt(squares) };
}

/**
 * Least squares with an intercept: ṁ = slope·p + intercept.
 * @param points three or more intervals
 * @returns the line, where it reaches zero, and the residual (kg/s)
 * @validity errors of the intervals alike and independent
 * @source least squares, any statistics text; METHOD T6
 */
export function fitLine(points: readonly LawPoint[]): LineFit {
	const n = points.length;
	const meanPressure = sum(points, ({ pressure }) => pressure) / n;
	const meanFlow = sum(points, ({ massFlow }) => massFlow) / n;
	const spread = sum(points, ({ pressure }) => (pressure - meanPressure) ** 2);
	const slope =
		sum(points, ({ pressure, massFlow }) => (pressure - meanPressure) * (massFlow - meanFlow)) /
		spread;
	const intercept = meanFlow - slope * meanPressure;
	const left = sum(
		points,
		({ pressure, massFlow }) => (massFlow - slope * pressure - intercept) ** 2
	);
	return {
		slope,
		intercept,
		residual: Math.sqrt(left / (n - 2)),
		zeroFlowPressure: -intercept / slope,
		meanPressure,
		spread,
		points: n
	};
}

/** 95 % points of F(1, ν), ν = 1 to 10. */
const F_95 = [161.4, 18.51, 10.13, 7.71, 6.61, 5.99, 5.59, 5.32, 5.12, 4.96];

/** 95 % point of F(1, ν); above ν = 10 by 3.84 + 9.9/ν, within 0.04. */
function f95(freedom: number): number {
	return F_95[freedom - 1] ?? 3.84 + 9.9 / freedom;
}

export type FittedLaw = 'orifice' | 'line' | 'undecided';

/**
 * Says which law the readings follow. The line has a number more to fit with, so it must earn it:
 * F = (S_orifice − S_line)/s², s² the line's own scatter or the gauge's, whichever is larger, above
 * the 95 % point of F(1, n − 2).
 * @param points the intervals
 * @param orifice the one-number law
 * @param line the two-number law; left out where there are too few intervals
 * @returns the law, or `undecided` with fewer than three intervals
 * @validity errors of the intervals alike and independent
 * @source F test for one more term, any statistics text; table from memory; METHOD T6
 */
export function chooseLaw(
	points: readonly LawPoint[],
	orifice: OrificeFit,
	line: LineFit | undefined
): FittedLaw {
	if (line === undefined) return 'undecided';
	const freedom = line.points - 2;
	const orificeSum = orifice.residual ** 2 * (line.points - 1);
	const lineSum = line.residual ** 2 * freedom;
	const gauge = sum(points, ({ uncertainty }) => uncertainty ** 2) / points.length;
	const scatter = Math.max(line.residual ** 2, gauge);
	const gained = orificeSum - lineSum;
	const smallest = 1e-12 * sum(points, ({ massFlow }) => massFlow ** 2);
	return line.slope > 0 && gained > f95(freedom) * scatter + smallest ? 'line' : 'orifice';
}
