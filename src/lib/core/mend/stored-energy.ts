import { cubicMetreFromLitre, gaugeFromBar } from '../units/convert.ts';
import { as, type Joule } from '../units/quantity.ts';
import { ok, refuse, type Result } from '../units/result.ts';

/**
 * How much energy the air in a section holds, as the plain product E = p · V.
 * It ranks how much there is to vent; it is not the energy of a burst.
 * @param pressureBarGauge pressure, bar gauge
 * @param volumeL volume behind the valve, L
 * @returns p · V, J
 * @validity p ≥ 0 gauge, V ≥ 0, both finite
 * @source the bar·litre product of the UK Pressure Systems Safety Regulations 2000, in joules; METHOD P1
 */
export function storedEnergy(pressureBarGauge: number, volumeL: number): Result<Joule> {
	if (!(pressureBarGauge >= 0 && pressureBarGauge < Infinity))
		return refuse('pressure-out-of-range', { pressureBarGauge, leastBarGauge: 0 });
	if (!(volumeL >= 0 && volumeL < Infinity))
		return refuse('volume-out-of-range', { volumeL, least: 0 });
	const energyJ = gaugeFromBar(pressureBarGauge) * cubicMetreFromLitre(volumeL);
	return Number.isFinite(energyJ)
		? ok(as<'J'>(energyJ))
		: refuse('volume-out-of-range', { volumeL, least: 0 });
}
