import type { SoapBands } from '../air/evidence/soap-response.ts';
import type { SiteAir } from '../air/gas-state.ts';
import { leakFlow, type LeakFlow } from '../air/leak-flow.ts';
import type { Leak, Section, Sighting, Survey } from '../survey/schema.ts';
import { gaugeFromBar } from '../units/convert.ts';
import { ok, refuse, type Result } from '../units/result.ts';
import {
	hoursOf,
	pressureOf,
	type From,
	type HoursOrigin,
	type PressureOrigin
} from './leak-inputs.ts';

/** A leak with its flow and everything the flow was made from. */
export interface WeighedLeak {
	readonly leak: Leak;
	readonly sighting: Sighting;
	readonly section: Section | undefined;
	readonly pressure: From<PressureOrigin>;
	readonly hours: From<HoursOrigin>;
	readonly flow: LeakFlow;
}

export interface WeighingConditions {
	readonly survey: Survey;
	readonly air: SiteAir;
	readonly soapBands: SoapBands;
	readonly scheduleHours: number | undefined;
}

/**
 * Finds a leak's pressure, hours and evidence in the survey and gives its flow. METHOD W1, A14.
 *
 * @returns `evidence-missing`, `pressure-missing`, `hours-missing`, or a refusal of the flow model
 */
export function weighLeak(
	leak: Leak,
	sighting: Sighting,
	section: Section | undefined,
	conditions: WeighingConditions
): Result<WeighedLeak> {
	const { survey, air, soapBands, scheduleHours } = conditions;
	if (!sighting.evidence) return refuse('evidence-missing');
	const pressure = pressureOf(survey, section, sighting);
	if (!pressure.ok) return pressure;
	const hours = hoursOf(section, scheduleHours);
	if (!hours.ok) return hours;
	const flow = leakFlow(sighting.evidence, {
		linePressure: gaugeFromBar(pressure.value.value),
		lineTemperature: air.temperature,
		site: air,
		soapBands,
		reference: survey.site.reference,
		duty: sighting.intermittent
	});
	if (!flow.ok) return flow;
	return ok({
		leak,
		sighting,
		section,
		pressure: pressure.value,
		hours: hours.value,
		flow: flow.value
	});
}

interface Remembered {
	readonly section: Section | undefined;
	readonly sighting: Sighting;
	readonly site: Survey['site'];
	readonly setPressureBarGauge: number | undefined;
	readonly soapBands: SoapBands;
	readonly scheduleHours: number | undefined;
	readonly weighed: Result<WeighedLeak>;
}

const remembered = new WeakMap<Leak, Remembered>();

/**
 * As `weighLeak`, but a leak is computed again only when something it depends on was changed: the
 * survey is immutable, so what is the same object is the same value.
 */
export function weighLeakOnce(
	leak: Leak,
	sighting: Sighting,
	section: Section | undefined,
	conditions: WeighingConditions
): Result<WeighedLeak> {
	const { survey, soapBands, scheduleHours } = conditions;
	const { setPressureBarGauge } = survey.supply;
	const before = remembered.get(leak);
	if (
		before &&
		before.section === section &&
		before.sighting === sighting &&
		before.site === survey.site &&
		before.setPressureBarGauge === setPressureBarGauge &&
		before.soapBands === soapBands &&
		before.scheduleHours === scheduleHours
	)
		return before.weighed;
	const weighed = weighLeak(leak, sighting, section, conditions);
	remembered.set(leak, {
		section,
		sighting,
		site: survey.site,
		setPressureBarGauge,
		soapBands,
		scheduleHours,
		weighed
	});
	return weighed;
}
