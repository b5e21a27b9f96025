import { barFromPascal } from '../units/convert.ts';
import type { Kelvin, PascalAbsolute, PascalGauge } from '../units/quantity.ts';
import { as } from '../units/quantity.ts';
import { ok, refuse } from '../units/result.ts';
import type { Result } from '../units/result.ts';
import type { SiteAir } from './gas-state.ts';
import { absolutePressure } from './gas-state.ts';
import { checkLinePressure, checkTemperature } from './ranges.ts';

export interface LineConditions {
	readonly linePressure: PascalGauge;
	readonly lineTemperature: Kelvin;
	readonly site: SiteAir;
	/** Where the leak blows to; left out, the air around it. */
	readonly downstreamPressure?: PascalGauge | undefined;
}

/** The air on both sides of a leak, checked: what every flow formula starts from. */
export interface LineAir {
	readonly upstream: PascalAbsolute;
	readonly upstreamTemperature: Kelvin;
	readonly downstream: PascalAbsolute;
	readonly site: SiteAir;
}

/**
 * Checks gauge readings against the trusted ranges and makes them absolute.
 * @param conditions gauge pressures in Pa, temperature in K
 * @returns the air on both sides, or `pressure-out-of-range`, `temperature-out-of-range`,
 * `downstream-out-of-range`
 * @validity 0.1 to 16 bar gauge, −20 to 60 °C; downstream from 0 gauge to below the line
 * @source definition of gauge pressure; METHOD A2, A15
 */
export function lineAir(conditions: LineConditions): Result<LineAir> {
	const { linePressure, lineTemperature, site } = conditions;
	const pressure = checkLinePressure(linePressure);
	if (!pressure.ok) return pressure;
	const temperature = checkTemperature(lineTemperature, 'line');
	if (!temperature.ok) return temperature;
	const downstream = conditions.downstreamPressure ?? as<'Pa gauge'>(0);
	if (!(downstream >= 0 && downstream < linePressure)) {
		return refuse('downstream-out-of-range', {
			downstreamBarGauge: barFromPascal(downstream),
			lowestBarGauge: 0,
			belowBarGauge: barFromPascal(linePressure)
		});
	}
	return ok({
		upstream: absolutePressure(linePressure, site),
		upstreamTemperature: lineTemperature,
		downstream: absolutePressure(downstream, site),
		site
	});
}
