import type { Kelvin, PascalAbsolute } from '../../units/quantity.ts';
import { as } from '../../units/quantity.ts';
import type { SiteAir } from '../gas-state.ts';
import { CHOKED_FLOW_CONSTANT, CRITICAL_PRESSURE_RATIO, massFlux } from '../orifice.ts';

/** Even number of panels for Simpson's rule over the part that is not choked. */
const PANELS = 200;

/**
 * The lowest absolute pressure from which a leak to the site's air is choked: p = p_site / r*.
 * @param site the air that the leak blows to
 * @returns absolute pressure, Pa
 * @validity as `massFlux`
 * @source derived from METHOD A3; METHOD T5
 */
export function lowestChokedPressure(site: SiteAir): PascalAbsolute {
	return as<'Pa absolute'>(site.pressure / CRITICAL_PRESSURE_RATIO);
}

/**
 * How long a square metre of opening takes over a fall in pressure, up to V/(R·T):
 * I = ∫ dp / G(p) from p2 to p1; √T·ln(p1/p2)/0.0404149 while choked, Simpson's rule below.
 * @param from higher pressure, Pa absolute
 * @param to lower pressure, Pa absolute, above the site's
 * @param temperature of the air in the system, K
 * @param site the air that the leak blows to
 * @returns the integral, Pa·s·m²/kg
 * @validity isothermal: a fall that takes minutes, so that the pipes keep the air warm
 * @source derived from METHOD A3; METHOD T3, T5
 */
export function bleedIntegral(
	from: PascalAbsolute,
	to: PascalAbsolute,
	temperature: Kelvin,
	site: SiteAir
): number {
	const limit = lowestChokedPressure(site);
	const chokedFrom = Math.max(from, limit);
	const chokedTo = Math.max(to, limit);
	const choked = (Math.sqrt(temperature) / CHOKED_FLOW_CONSTANT) * Math.log(chokedFrom / chokedTo);
	if (to >= limit) return choked;

	// p = p_site + x² takes the square root out of the flux near p_site.
	const start = Math.sqrt(to - site.pressure);
	const step = (Math.sqrt(Math.min(from, limit) - site.pressure) - start) / PANELS;
	const slowness = (x: number): number =>
		(2 * x) /
		massFlux({
			upstream: as<'Pa absolute'>(site.pressure + x * x),
			upstreamTemperature: temperature,
			downstream: site.pressure
		});
	let sum = slowness(start) + slowness(start + PANELS * step);
	for (let panel = 1; panel < PANELS; panel += 1) {
		sum += (panel % 2 === 0 ? 2 : 4) * slowness(start + panel * step);
	}
	return choked + (sum * step) / 3;
}
