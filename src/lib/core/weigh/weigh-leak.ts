import type { SoapBands } from '../air/evidence/soap-response.ts';
import type { SiteAir } from '../air/gas-state.ts';
import type { ReferenceId } from '../air/reference-air.ts';
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
import { FLOW_KINDS, scaledFlow } from './scaled-flow.ts';

/** A leak with its flow and everything the flow was made from. */
export interface WeighedLeak {
	readonly leak: Leak;
	readonly sighting: Sighting;
	readonly section: Section | undefined;
	readonly pressure: From<PressureOrigin>;
	readonly hours: From<HoursOrigin>;
	readonly flow: LeakFlow;
	/** What the estimate was multiplied by, where it was scaled to a system test. */
	readonly scaling?: number;
}

export interface WeighingConditions {
	readonly air: SiteAir;
	readonly reference: ReferenceId;
	readonly soapBands: SoapBands;
	/** What sections without a pressure of their own stand at. */
	readonly setPressureBarGauge: number | undefined;
	readonly scheduleHours: number | undefined;
	/** Of every flow that was estimated; absent when nothing is scaled. METHOD W12. */
	readonly scaling: number | undefined;
}

/**
 * Finds a leak's pressure, hours and evidence in the survey and gives its flow, scaled where the user
 * took over a scaling. METHOD W1, W12, A14.
 *
 * @returns `evidence-missing`, `pressure-missing`, `hours-missing`, or a refusal of the flow model
 */
export function weighLeak(
	leak: Leak,
	sighting: Sighting,
	section: Section | undefined,
	conditions: WeighingConditions
): Result<WeighedLeak> {
	const { air, reference, soapBands, scheduleHours } = conditions;
	if (!sighting.evidence) return refuse('evidence-missing');
	const pressure = pressureOf(sighting, section, conditions.setPressureBarGauge);
	if (!pressure.ok) return pressure;
	const hours = hoursOf(section, scheduleHours);
	if (!hours.ok) return hours;
	const flow = leakFlow(sighting.evidence, {
		linePressure: gaugeFromBar(pressure.value.value),
		lineTemperature: air.temperature,
		site: air,
		soapBands,
		reference,
		duty: sighting.intermittent
	});
	if (!flow.ok) return flow;
	const scaling = FLOW_KINDS.has(sighting.evidence.kind) ? undefined : conditions.scaling;
	return ok({
		leak,
		sighting,
		section,
		pressure: pressure.value,
		hours: hours.value,
		flow: scaling === undefined ? flow.value : scaledFlow(flow.value, scaling),
		...(scaling !== undefined && { scaling })
	});
}

interface Remembered {
	readonly section: Section | undefined;
	readonly sighting: Sighting;
	readonly conditions: WeighingConditions;
	readonly weighed: Result<WeighedLeak>;
}

const remembered = new WeakMap<Leak, Remembered>();

/**
 * As `weighLeak`, but a leak is computed again only when something it depends on was changed: the
 * survey is immutable, so what is the same object is the same value.
 *
 * @param conditions of `weighingConditions`, so that the same conditions are the same object
 */
export function weighLeakOnce(
	leak: Leak,
	sighting: Sighting,
	section: Section | undefined,
	conditions: WeighingConditions
): Result<WeighedLeak> {
	const before = remembered.get(leak);
	if (
		before?.conditions === conditions &&
		before.section === section &&
		before.sighting === sighting
	)
		return before.weighed;
	const weighed = weighLeak(leak, sighting, section, conditions);
	remembered.set(leak, { section, sighting, conditions, weighed });
	return weighed;
}

let latest: WeighingConditions | undefined;

/** What all leaks of a survey share; as long as none of it changes, the same object as before. */
export function weighingConditions(
	survey: Survey,
	air: SiteAir,
	scheduleHours: number | undefined
): WeighingConditions {
	const { reference } = survey.site;
	const { soapBands } = survey.startingValues;
	const scaling = survey.startingValues.scaling?.factor;
	const { setPressureBarGauge } = survey.supply;
	if (
		latest?.air !== air ||
		latest.reference !== reference ||
		latest.soapBands !== soapBands ||
		latest.setPressureBarGauge !== setPressureBarGauge ||
		latest.scheduleHours !== scheduleHours ||
		latest.scaling !== scaling
	)
		latest = { air, reference, soapBands, setPressureBarGauge, scheduleHours, scaling };
	return latest;
}
