import { freeAirFlow } from '../air/reference-air.ts';
import type { SiteAir } from '../air/gas-state.ts';
import { energyKwh, quickPowerKw } from '../supply/quick.ts';
import type { Survey } from '../survey/schema.ts';
import { fromSi } from '../units/convert.ts';
import type { KilogramPerSecond } from '../units/quantity.ts';
import type { Refusal, Result } from '../units/result.ts';
import type { SupplyMethod } from './assessment.ts';
import type { WeighedLeak } from './weigh-leak.ts';

/** Energy a year of each weighed leak, in their order, and how it was found. */
export interface LeakEnergy {
	readonly method: SupplyMethod;
	readonly energyKwhPerYear?: readonly number[];
	readonly missing?: Refusal;
}

/**
 * Turns flows into energy by the method that the survey has the data for. METHOD W2.
 *
 * @returns `method: 'none'` and what is missing when the survey does not say how the air is made
 */
export function leakEnergy(
	survey: Survey,
	air: SiteAir,
	leaks: readonly WeighedLeak[]
): LeakEnergy {
	const { quick } = survey.supply;
	if (!quick) return { method: 'none', missing: { code: 'supply-missing' } };
	const energies: number[] = [];
	for (const { flow, hours } of leaks) {
		const energy = quickEnergy(quick.specificPowerKwPerM3PerMin, flow.massFlow, air, hours.value);
		if (!energy.ok) return { method: 'none', missing: energy.error };
		energies.push(energy.value);
	}
	return { method: 'quick', energyKwhPerYear: energies };
}

/** One leak by the quick method, on its free air as ISO 1217 states it. METHOD S1, W2. */
function quickEnergy(
	specificPowerKwPerM3PerMin: number,
	massFlow: KilogramPerSecond,
	air: SiteAir,
	hours: number
): Result<number> {
	const flow = freeAirFlow(massFlow, 'iso-1217', air);
	const power = quickPowerKw(specificPowerKwPerM3PerMin, fromSi('volumeFlow', 'm3/min', flow));
	return power.ok ? energyKwh(power.value, hours) : power;
}
