import { GAS_CONSTANT_DRY_AIR } from '../../units/constants.ts';
import type {
	CubicMetre,
	CubicMetrePerSecond,
	Kelvin,
	KilogramPerSecond,
	PascalGauge,
	Second,
	SquareMetre
} from '../../units/quantity.ts';
import { as } from '../../units/quantity.ts';
import type { Result } from '../../units/result.ts';
import { ok, refuse } from '../../units/result.ts';
import type { SiteAir } from '../gas-state.ts';
import { absolutePressure } from '../gas-state.ts';
import { massFlux } from '../orifice.ts';
import { checkPositive, checkTemperature } from '../ranges.ts';
import type { ReferenceId } from '../reference-air.ts';
import { freeAirFlow, referenceTemperature } from '../reference-air.ts';
import type { ReceiverResolution } from './bleed-down.ts';
import { checkNotNegative, checkPressurePair, resolutionUncertainty } from './readings.ts';

export interface PumpUpReadings extends ReceiverResolution {
	readonly volume: CubicMetre;
	readonly from: PascalGauge;
	readonly to: PascalGauge;
	readonly duration: Second;
	/** Of the air in the receiver at the end; left out, taken as the reference's. */
	readonly tankTemperature?: Kelvin | undefined;
	/** What leaked from the receiver and its pipes while they filled, as one opening. */
	readonly leakArea?: SquareMetre | undefined;
}

export interface DeliveredCapacity {
	readonly massFlow: KilogramPerSecond;
	readonly freeAir: CubicMetrePerSecond;
	readonly reference: ReferenceId;
	/** The part of it that leaked during the fill and was added back. */
	readonly leakedMassFlow: KilogramPerSecond;
	readonly temperatureCorrected: boolean;
	readonly relativeStandardUncertainty: number;
}

/** Air is some 0 to 10 % hotter, absolute, than it was taken for: our starting value. */
const UNCORRECTED_TEMPERATURE_UNCERTAINTY = 0.03;
const PANELS = 100;

/** Mean mass flux to the site's air while the pressure rises evenly, by Simpson's rule. */
function meanFlux(readings: PumpUpReadings, temperature: Kelvin, site: SiteAir): number {
	const flux = (panel: number): number => {
		const gauge = readings.from + ((readings.to - readings.from) * panel) / PANELS;
		return massFlux({
			upstream: absolutePressure(as<'Pa gauge'>(gauge), site),
			upstreamTemperature: temperature,
			downstream: site.pressure
		});
	};
	let sum = flux(0) + flux(PANELS);
	for (let panel = 1; panel < PANELS; panel += 1) sum += (panel % 2 === 0 ? 2 : 4) * flux(panel);
	return sum / (3 * PANELS);
}

function checkReadings(readings: PumpUpReadings): Result<true> {
	for (const name of ['volume', 'duration'] as const) {
		const part = checkPositive(name, readings[name]);
		if (!part.ok) return part;
	}
	const finenesses = ['gaugeResolution', 'clockResolution', 'volumeRelativeUncertainty'] as const;
	for (const name of finenesses) {
		const part = checkNotNegative(name, readings[name]);
		if (!part.ok) return part;
	}
	const leakArea = checkNotNegative('leakArea', readings.leakArea ?? 0);
	if (!leakArea.ok) return leakArea;
	return checkPressurePair(readings.to, readings.from, 'zero');
}

/**
 * What a compressor really delivers, from the time it takes to fill a receiver:
 * Q = V/t·(p2 − p1)/p_ref·T_ref/T_tank, and the leak during the fill added back.
 * @param readings volume in m³, gauge pressures in Pa, seconds, tank temperature in K
 * @param conditions the site's air and the reference of free air
 * @returns delivered capacity as mass flow and free air, with its relative standard uncertainty; or
 * `pressures-not-apart`, `test-pressure-out-of-range`, `reading-not-positive`,
 * `temperature-out-of-range`
 * @validity a receiver shut off from the system, filled without a pause; without the tank's
 * temperature the answer is some percent high and 3 % is added to its uncertainty; the leak is
 * added back as if the pressure rose evenly, 1.2 % high where it takes a third of the supply
 * @source pump-up formula of energy-management training (read) and BEE (India) guidebook 3 (from
 * memory); 3 %: our starting value; METHOD T8, T9
 */
export function deliveredCapacity(
	readings: PumpUpReadings,
	conditions: { readonly site: SiteAir; readonly reference: ReferenceId }
): Result<DeliveredCapacity> {
	const readable = checkReadings(readings);
	if (!readable.ok) return readable;
	const { site, reference } = conditions;
	const temperature = readings.tankTemperature ?? referenceTemperature(reference, site);
	const warm = checkTemperature(temperature, 'tank');
	if (!warm.ok) return warm;

	const rise = readings.to - readings.from;
	const stored =
		(readings.volume * rise) / (GAS_CONSTANT_DRY_AIR * temperature * readings.duration);
	const leaked = (readings.leakArea ?? 0) * meanFlux(readings, temperature, site);
	const massFlow = as<'kg/s'>(stored + leaked);
	if (!Number.isFinite(massFlow)) return refuse('reading-not-positive', { reading: 'duration' });
	const temperatureCorrected = readings.tankTemperature !== undefined;
	const relativeOfStored = Math.hypot(
		readings.volumeRelativeUncertainty,
		(Math.SQRT2 * resolutionUncertainty(readings.clockResolution)) / readings.duration,
		(Math.SQRT2 * resolutionUncertainty(readings.gaugeResolution)) / rise,
		temperatureCorrected ? 0 : UNCORRECTED_TEMPERATURE_UNCERTAINTY
	);
	return ok({
		massFlow,
		freeAir: freeAirFlow(massFlow, reference, site),
		reference,
		leakedMassFlow: as<'kg/s'>(leaked),
		temperatureCorrected,
		relativeStandardUncertainty: (relativeOfStored * stored) / massFlow
	});
}
