import { massFlux } from '../../air/orifice.ts';
import { REFERENCES, referenceDensity, type ReferenceId } from '../../air/reference-air.ts';
import type { SiteAir } from '../../air/gas-state.ts';
import { absolutePressure } from '../../air/gas-state.ts';
import type { Survey } from '../../survey/schema.ts';
import { gaugeFromBar } from '../../units/convert.ts';
import type { WeighedLeak } from '../weigh-leak.ts';
import { areaWorking } from './evidence.ts';
import { given, made, READING, SCHEDULE, SITE, type Origin, type Working } from './tree.ts';

/** Free air of a leak at a reference: Q = ṁ/ρ_ref. METHOD A5. */
export function freeAirWorking(
	leak: WeighedLeak,
	survey: Survey,
	air: SiteAir,
	reference: ReferenceId = survey.site.reference
): Working {
	const massFlow = massFlowWorking(leak, survey, air);
	const density = densityWorking(reference, survey, air);
	return made('free-air-flow', massFlow.value / density.value, 'm³/s', 'A5', [massFlow, density], {
		of: named(reference),
		...doubtOf(leak)
	});
}

/** Mean mass flow of a leak at its own pressure, or at one that the station holds it to. METHOD A14. */
export function massFlowWorking(
	leak: WeighedLeak,
	survey: Survey,
	air: SiteAir,
	at: { readonly value: number; readonly gauge: Working } = {
		value: leak.flow.massFlow,
		gauge: gaugeWorking(leak)
	}
): Working {
	const { sighting, flow } = leak;
	const { evidence } = sighting;
	const own = lineWorking(gaugeWorking(leak), survey, air);
	const line = lineWorking(at.gauge, survey, air);
	const area = evidence
		? [
				areaWorking(leak, evidence, {
					flux: own.flux,
					siteDensity: densityWorking('site', survey, air),
					soapBands: survey.startingValues.soapBands
				})
			]
		: [];
	const { criticalRatio } = flow.area;
	const through =
		criticalRatio === undefined
			? [line.flux]
			: [given('critical-ratio', criticalRatio, '', READING), ...line.states];
	return made(
		'mass-flow',
		at.value,
		'kg/s',
		criticalRatio === undefined ? 'A14' : 'A12',
		[...area, ...through, ...dutyWorking(leak)],
		doubtOf(leak)
	);
}

function dutyWorking({ sighting, flow }: WeighedLeak): Working[] {
	if (!sighting.intermittent) return [];
	const { openSeconds, everySeconds } = sighting.intermittent;
	return [
		made('duty-factor', flow.dutyFactor, 'share', 'A13', [
			given('open-time', openSeconds, 's', READING),
			given('interval', everySeconds, 's', READING)
		])
	];
}

/** Mass flux through an ideal opening to the site's air, with the states it follows from. */
function lineWorking(
	gauge: Working,
	survey: Survey,
	air: SiteAir
): { readonly flux: Working; readonly states: readonly Working[] } {
	const site = sitePressureWorking(survey, air);
	const upstream = absolutePressure(gaugeFromBar(gauge.value), air);
	const states = [
		made('line-pressure', upstream, 'Pa absolute', 'A2', [gauge, site]),
		temperatureWorking(air),
		site
	];
	const flux = massFlux({
		upstream,
		upstreamTemperature: air.temperature,
		downstream: air.pressure
	});
	return { flux: made('mass-flux', flux, 'kg/(s·m²)', 'A3', states), states };
}

/** The gauge pressure that a leak stands under, and where it was found. METHOD W1. */
export function gaugeWorking({ pressure, section }: WeighedLeak): Working {
	const origins: Readonly<Record<typeof pressure.origin, Origin>> = {
		reading: READING,
		section: { kind: 'section', name: section?.name ?? '' },
		supply: { kind: 'supply' }
	};
	return given('gauge-pressure', pressure.value, 'bar gauge', origins[pressure.origin]);
}

/** The hours a year that a leak is under pressure, and where they were found. METHOD W1. */
export function hoursWorking({ hours, section }: WeighedLeak): Working {
	const origin: Origin =
		hours.origin === 'section' ? { kind: 'section', name: section?.name ?? '' } : SCHEDULE;
	return given('hours-per-year', hours.value, 'h', origin);
}

/** Density of the air that a flow is stated at. METHOD A4, A5. */
export function densityWorking(reference: ReferenceId, survey: Survey, air: SiteAir): Working {
	const value = referenceDensity(reference, air);
	const of = named(reference);
	if (reference === 'site')
		return made(
			'reference-density',
			value,
			'kg/m³',
			'A4',
			[sitePressureWorking(survey, air), temperatureWorking(air)],
			{ of }
		);
	const { source } = REFERENCES[reference];
	return given('reference-density', value, 'kg/m³', { kind: 'cited', source }, { of });
}

function sitePressureWorking({ site }: Survey, air: SiteAir): Working {
	if (site.barometerKPa !== undefined)
		return given('site-pressure', air.pressure, 'Pa absolute', SITE);
	const height = given('altitude', site.altitudeM ?? 0, 'm', SITE);
	return made('site-pressure', air.pressure, 'Pa absolute', 'A2', [height]);
}

function temperatureWorking(air: SiteAir): Working {
	return given('air-temperature', air.temperature, 'K', SITE);
}

function named(reference: ReferenceId): NonNullable<Working['of']> {
	return { kind: 'reference', label: REFERENCES[reference].label };
}

/** The uncertainty of the area is the flow's too. METHOD A14. */
export function doubtOf({ flow }: WeighedLeak): { readonly relativeUncertainty: number } {
	return { relativeUncertainty: flow.area.relativeStandardUncertainty };
}
