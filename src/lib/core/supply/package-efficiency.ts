import { UNITS } from '../units/convert.ts';
import { REFERENCE_PRESSURE_PA } from '../units/constants.ts';
import { as, type CubicMetrePerSecond, type PascalAbsolute, type Watt } from '../units/quantity.ts';
import { ok, refuse, type Result } from '../units/result.ts';
import { isentropicPower, isothermalPower } from './isentropic.ts';

/** How a package's efficiency strikes someone who has seen many; `checks` turn it into a question. */
export type Plausibility = 'ordinary' | 'unusually-good' | 'unusually-poor';

/** Ordinary packages; outside it a figure is probably mistyped. Our starting values. */
const ORDINARY = { least: 0.4, most: 0.9 };

/**
 * Package isentropic efficiency: η = P_isentropic / P_package.
 * @param flow free-air delivery, m³/s at inlet conditions
 * @param inlet absolute inlet pressure, Pa
 * @param discharge absolute discharge pressure, Pa
 * @param packagePower electrical power of the whole package, W
 * @returns efficiency, dimensionless, and whether it is an ordinary figure
 * @validity power above the isothermal limit, which nothing beats
 * @source 10 CFR 431 subpart T appendix A, after ISO 1217:2009 (from memory); METHOD S4
 */
export function packageEfficiency(
	flow: CubicMetrePerSecond,
	inlet: PascalAbsolute,
	discharge: PascalAbsolute,
	packagePower: Watt
): Result<{ readonly efficiency: number; readonly plausibility: Plausibility }> {
	const limit = isothermalPower(flow, inlet, discharge);
	const ideal = isentropicPower(flow, inlet, discharge);
	if (!limit.ok) return limit;
	if (!ideal.ok) return ideal;
	if (!(packagePower > 0 && packagePower < Infinity))
		return refuse('power-out-of-range', { powerW: packagePower, above: 0 });
	if (packagePower < limit.value)
		return refuse('power-below-isothermal-limit', { powerW: packagePower, leastW: limit.value });
	const efficiency = ideal.value / packagePower;
	if (efficiency > ORDINARY.most) return ok({ efficiency, plausibility: 'unusually-good' });
	if (efficiency < ORDINARY.least) return ok({ efficiency, plausibility: 'unusually-poor' });
	return ok({ efficiency, plausibility: 'ordinary' });
}

/** η_reg = a·ln²V + b·ln V + c with V in L/s, and the loss allowed beyond it in per cent. */
const REGULATION = {
	'fixed-speed': { a: -0.00928, b: 0.13911, c: 0.2711, d: -15 },
	'variable-speed': { a: -0.01549, b: 0.21573, c: 0.00905, d: -10 }
} as const;

/** Litres per second in a cubic foot per minute, as the regulation prints it. */
const LITRE_PER_S_IN_CFM = 0.4719;
/** Flow that the regulation covers, cfm. */
const COVERED_CFM = { least: 35, most: 1250 };

/**
 * Least package isentropic efficiency that the US regulation allows an air-cooled lubricated rotary
 * compressor: η = η_reg + (1 − η_reg)·d/100, η_reg = a·ln²V + b·ln V + c, V in L/s.
 *
 * A machine that just meets it is taken as the starting value where only the size is known.
 * @param flow full-load free-air delivery, m³/s
 * @param drive fixed or variable speed
 * @returns efficiency, dimensionless
 * @validity 35 to 1,250 cfm; outside, the value at the nearer end is used (our starting value)
 * @source 10 CFR 431.345, table 1 (formula verified in a copy of the text); METHOD S4
 */
export function leastRegulatedEfficiency(
	flow: CubicMetrePerSecond,
	drive: keyof typeof REGULATION
): Result<number> {
	if (!(flow > 0 && flow < Infinity))
		return refuse('flow-out-of-range', { flowM3PerS: flow, above: 0 });
	const { a, b, c, d } = REGULATION[drive];
	const cfm = UNITS.volumeFlow.cfm.fromSi(flow);
	const covered = Math.min(Math.max(cfm, COVERED_CFM.least), COVERED_CFM.most);
	const ln = Math.log(LITRE_PER_S_IN_CFM * covered);
	const regression = a * ln * ln + b * ln + c;
	return ok(regression + ((1 - regression) * d) / 100);
}

/**
 * Power of a package that just meets the least regulated efficiency: P = P_isentropic / η.
 * @param flow full-load free-air delivery, m³/s
 * @param dischargeGaugePa full-load operating pressure, Pa gauge
 * @param drive fixed or variable speed
 * @returns package power, W
 * @validity as `leastRegulatedEfficiency`; inlet at 100 kPa, as the regulation tests it
 * @source derived from 10 CFR 431.345; METHOD S4
 */
export function regulatedPower(
	flow: CubicMetrePerSecond,
	dischargeGaugePa: number,
	drive: keyof typeof REGULATION
): Result<Watt> {
	const inlet = as<'Pa absolute'>(REFERENCE_PRESSURE_PA);
	const ideal = isentropicPower(flow, inlet, as<'Pa absolute'>(inlet + dischargeGaugePa));
	if (!ideal.ok) return ideal;
	const efficiency = leastRegulatedEfficiency(flow, drive);
	return efficiency.ok ? ok(as<'W'>(ideal.value / efficiency.value)) : efficiency;
}
