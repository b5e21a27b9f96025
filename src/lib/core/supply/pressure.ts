import { GAMMA_AIR } from '../units/constants.ts';
import { fromSi, toSi } from '../units/convert.ts';
import { as, type PascalAbsolute } from '../units/quantity.ts';
import { ok, refuse, type Result } from '../units/result.ts';
import { workFactor } from './isentropic.ts';
import { mapAir } from './schedule.ts';
import { inProcessTerms, type ProcessYear, type SupplyYear } from './supply-year.ts';

/** What a change of set pressure does, as factors on what was there before. */
export interface PressureEffect {
	/** On the power of compression. */
	readonly workFactor: number;
	/** On leaks and on demand that has no regulator. */
	readonly flowFactor: number;
	/** On the power by the handbook rule, to be shown beside `workFactor`. */
	readonly ruleFactor: number;
}

/** @source "1 % per 2 psi", quoted as US DOE in secondary texts (verified as quoted) */
const RULE = { fraction: 0.01, perPsi: 2 };

/** p₂/p₁ under which the flow through an opening is choked. */
const CHOKED_RATIO = (2 / (GAMMA_AIR + 1)) ** (GAMMA_AIR / (GAMMA_AIR - 1));

/**
 * Effect of a change of set pressure: work by the isentropic ratio, flow through leaks and open
 * blowing by absolute pressure, f = p_to / p_from, since both are choked.
 * @param inlet absolute pressure around, Pa
 * @param from absolute set pressure before, Pa
 * @param to absolute set pressure after, Pa
 * @returns the factors, and that of the handbook rule: 1 − 0.01 · Δp / 2 psi
 * @validity both set pressures choke a leak to the surroundings: inlet / p ≤ 0.528
 * @source derived; the rule as quoted from US DOE; METHOD S16
 */
export function pressureEffect(
	inlet: PascalAbsolute,
	from: PascalAbsolute,
	to: PascalAbsolute
): Result<PressureEffect> {
	for (const pressure of [from, to])
		if (!(inlet > 0 && pressure < Infinity && inlet / pressure <= CHOKED_RATIO))
			return refuse('set-pressure-does-not-choke', {
				pressurePaAbsolute: pressure,
				leastPaAbsolute: inlet / CHOKED_RATIO
			});
	const fallPsi = fromSi('pressure', 'psi', from - to);
	return ok({
		workFactor: workFactor(inlet, from, to),
		flowFactor: to / from,
		ruleFactor: 1 - (RULE.fraction * fallPsi) / RULE.perPsi
	});
}

/**
 * Moves every set pressure of the year by the same step and lets the flows follow.
 *
 * The outcomes of `yearWithLeaks` before and after are the effect. The result is in process terms,
 * since of a demand read at the compressors only a part follows the pressure.
 * @param supply as entered
 * @param leaksM3PerMin leaks in each period and, last, in the closed time, m³/min
 * @param stepBar change of the set pressure, bar; negative lowers it
 * @param unregulatedFraction share of the process demand that has no regulator
 * @param inlet absolute pressure around, Pa
 * @returns the changed year and leaks
 * @validity leaks at the set pressure, not behind a regulator; as `pressureEffect`
 * @source derived; METHOD S16
 */
export function withPressureStep(
	supply: SupplyYear,
	leaksM3PerMin: readonly number[],
	stepBar: number,
	unregulatedFraction: number,
	inlet: PascalAbsolute
): Result<ProcessYear> {
	if (!(unregulatedFraction >= 0 && unregulatedFraction <= 1))
		return refuse('fraction-out-of-range', { fraction: unregulatedFraction, least: 0, most: 1 });
	const before = inProcessTerms(supply, leaksM3PerMin);
	const leaks = [...before.leaksM3PerMin];
	let refused: ReturnType<typeof refuse> | undefined;
	const schedule = mapAir(before.supply.schedule, (air, i) => {
		const setPressureBarGauge = air.setPressureBarGauge + stepBar;
		const from = absolute(inlet, air.setPressureBarGauge);
		const effect = pressureEffect(inlet, from, absolute(inlet, setPressureBarGauge));
		if (!effect.ok) {
			refused ??= effect;
			return air;
		}
		const { flowFactor } = effect.value;
		leaks[i] = (leaks[i] ?? 0) * flowFactor;
		const followed = 1 - unregulatedFraction * (1 - flowFactor);
		return { ...air, setPressureBarGauge, demandM3PerMin: air.demandM3PerMin * followed };
	});
	return refused ?? ok({ supply: { ...before.supply, schedule }, leaksM3PerMin: leaks });
}

function absolute(inlet: PascalAbsolute, barGauge: number): PascalAbsolute {
	return as<'Pa absolute'>(inlet + toSi('pressure', 'bar', barGauge));
}
