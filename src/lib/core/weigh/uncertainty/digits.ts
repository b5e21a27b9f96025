/** A value and its interval with the digits that the interval leaves standing. */
export interface EarnedDigits {
	readonly value: number;
	readonly low: number;
	readonly high: number;
	/** What the last digit of the value is worth: 1000, 10, 0.01. */
	readonly step: number;
	/** Digits after the decimal point that go with `step`; a number below it may carry more. */
	readonly decimals: number;
}

/** Half widths that begin with 10 to 35 keep two digits, larger ones one: the last digit means something. */
const TWO_DIGITS_UP_TO = 3.55;

/**
 * What the last digit of a value may be worth: that of the half width of its interval, kept to two
 * digits where it begins with 10 to 35, else to one.
 * @param halfWidth half of the 90 % interval, the value's unit; 0 where nothing is uncertain
 * @returns a power of ten, or 0 where every digit stands
 * @validity finite, ≥ 0
 * @source JCGM 100:2008, 7.2.6 (at most two digits of an uncertainty); where one and where two is the
 * convention of the Particle Data Group (from memory); METHOD W10
 */
export function earnedStep(halfWidth: number): number {
	if (!(halfWidth > 0 && Number.isFinite(halfWidth))) return 0;
	const power = Math.floor(Math.log10(halfWidth));
	const lead = halfWidth / 10 ** power;
	if (lead < TWO_DIGITS_UP_TO) return powerOfTen(power - 1);
	return powerOfTen(power);
}

/**
 * Rounds a value and its interval to the digits that the interval earns. An end that would round to
 * nothing keeps one digit of its own, because a lopsided interval does not reach zero.
 * @param value of the figure
 * @param low lower end
 * @param high upper end
 * @returns the three, rounded, and the worth of the last digit
 * @validity low ≤ high, all finite
 * @source as `earnedStep`; METHOD W10
 */
export function earnedDigits(value: number, low: number, high: number): EarnedDigits {
	const step = earnedStep((high - low) / 2);
	if (step === 0) return { value, low, high, step, decimals: 0 };
	return {
		value: roundOwn(value, step),
		low: roundOwn(low, step),
		high: roundOwn(high, step),
		step,
		decimals: Math.max(0, -Math.round(Math.log10(step)))
	};
}

function roundOwn(value: number, step: number): number {
	const rounded = roundTo(value, step);
	if (rounded !== 0 || value === 0) return rounded;
	return roundTo(value, powerOfTen(Math.floor(Math.log10(Math.abs(value)))));
}

/** Halves away from zero; divides by whole powers, so that 0.3 stays 0.3. */
function roundTo(value: number, step: number): number {
	const sign = value < 0 ? -1 : 1;
	const size = Math.abs(value);
	if (step >= 1) return sign * Math.round(size / step) * step || 0;
	const inverse = Math.round(1 / step);
	return (sign * Math.round(size * inverse)) / inverse || 0;
}

/** Written, not multiplied up, so that it is the nearest number to the decimal. */
function powerOfTen(power: number): number {
	return Number(`1e${power}`);
}
