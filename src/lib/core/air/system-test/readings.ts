import { barFromPascal } from '../../units/convert.ts';
import type {
	CubicMetrePerSecond,
	Kelvin,
	KilogramPerSecond,
	PascalGauge
} from '../../units/quantity.ts';
import { as } from '../../units/quantity.ts';
import type { Result } from '../../units/result.ts';
import { ok, refuse } from '../../units/result.ts';
import type { SiteAir } from '../gas-state.ts';
import { absolutePressure } from '../gas-state.ts';
import { massFlux } from '../orifice.ts';
import { checkLinePressure, checkTemperature, LINE_PRESSURE_BAR } from '../ranges.ts';
import type { ReferenceId } from '../reference-air.ts';
import { freeAirFlow } from '../reference-air.ts';

/** What every system test is reckoned against. */
export interface TestConditions {
	readonly site: SiteAir;
	/** Of the air in the system. */
	readonly lineTemperature: Kelvin;
	/** The normal set pressure, at which the leak is stated. */
	readonly setPressure: PascalGauge;
	readonly reference: ReferenceId;
}

/** The whole system's leak at the normal set pressure. */
export interface SystemLeak {
	readonly massFlow: KilogramPerSecond;
	readonly freeAir: CubicMetrePerSecond;
	readonly reference: ReferenceId;
	readonly relativeStandardUncertainty: number;
}

/** How well readings were taken, where nobody said. Our starting values. METHOD T13. */
export const STARTING_RESOLUTION = {
	clockS: 1,
	gaugeBar: 0.1,
	capacityRelativeUncertainty: 0.05,
	volumeRelativeUncertainty: 0.1
} as const;

/** Passes the conditions of a test, or refuses what is outside METHOD A15. */
export function checkConditions(conditions: TestConditions): Result<TestConditions> {
	const pressure = checkLinePressure(conditions.setPressure);
	if (!pressure.ok) return pressure;
	const temperature = checkTemperature(conditions.lineTemperature, 'line');
	if (!temperature.ok) return temperature;
	return ok(conditions);
}

/**
 * Passes a fall (or a rise) between two gauge readings: above 0, up to 16 bar, the first higher.
 * @returns true, or `test-pressure-out-of-range`, `pressures-not-apart`
 */
export function checkPressurePair(
	higher: PascalGauge,
	lower: PascalGauge,
	lowest: 'above-zero' | 'zero'
): Result<true> {
	const highBar = barFromPascal(higher);
	const lowBar = barFromPascal(lower);
	const lowEnough = lowest === 'zero' ? lowBar >= 0 : lowBar > 0;
	if (!(lowEnough && highBar <= LINE_PRESSURE_BAR.highest)) {
		return refuse('test-pressure-out-of-range', {
			fromBarGauge: highBar,
			toBarGauge: lowBar,
			lowestBarGauge: 0,
			highestBarGauge: LINE_PRESSURE_BAR.highest
		});
	}
	if (!(higher > lower)) {
		return refuse('pressures-not-apart', { fromBarGauge: highBar, toBarGauge: lowBar });
	}
	return ok(true);
}

/** Passes a resolution or uncertainty that may be zero, or refuses it by name. */
export function checkNotNegative(reading: string, value: number): Result<number> {
	if (value >= 0 && Number.isFinite(value)) return ok(value);
	return refuse('reading-negative', { reading, value: String(value) });
}

/**
 * Standard uncertainty of a reading to the nearest division: u = division / √12.
 * @param division smallest step that is read, in the reading's own unit
 * @returns standard uncertainty, same unit
 * @validity the true value anywhere within half a division, all as likely
 * @source JCGM 100:2008, 4.3.7; METHOD T9
 */
export function resolutionUncertainty(division: number): number {
	return division / Math.sqrt(12);
}

/**
 * Mass flow through each square metre of leaks to the site's air: G(p_gauge + p_site).
 * @param pressure of the system, Pa gauge
 * @param conditions the site's air and the temperature of the air in the system, K
 * @returns mass flux, kg/(s·m²)
 * @validity as `massFlux`
 * @source as `massFlux`; METHOD A3
 */
export function fluxAt(pressure: PascalGauge, conditions: TestConditions): number {
	return massFlux({
		upstream: absolutePressure(pressure, conditions.site),
		upstreamTemperature: conditions.lineTemperature,
		downstream: conditions.site.pressure
	});
}

/**
 * States a leak's mass flow at the set pressure in free air: Q = ṁ / ρ_ref.
 * @param massFlow at the set pressure, kg/s
 * @param relativeStandardUncertainty of that flow, a share
 * @param conditions the site's air and the reference of free air
 * @returns mass flow (kg/s) and free air (m³/s) with their uncertainty
 * @validity as `freeAirFlow`
 * @source as `freeAirFlow`; METHOD T9
 */
export function systemLeak(
	massFlow: number,
	relativeStandardUncertainty: number,
	conditions: TestConditions
): SystemLeak {
	const { reference, site } = conditions;
	const flow = as<'kg/s'>(massFlow);
	return {
		massFlow: flow,
		freeAir: freeAirFlow(flow, reference, site),
		reference,
		relativeStandardUncertainty
	};
}
