import type { BleedDownReadings } from '../../air/system-test/bleed-down.ts';
import type { BleedSeries } from '../../air/system-test/bleed-series.ts';
import type { LoadTimeReadings } from '../../air/system-test/load-time.ts';
import type { PumpUpReadings } from '../../air/system-test/pump-up.ts';
import { STARTING_RESOLUTION, type TestConditions } from '../../air/system-test/readings.ts';
import { referenceDensity } from '../../air/reference-air.ts';
import type { Survey } from '../../survey/schema.ts';
import type { SystemTest } from '../../survey/system-test-schema.ts';
import { gaugeFromBar, kelvinFromCelsius, toSi } from '../../units/convert.ts';
import { as } from '../../units/quantity.ts';
import { ok, refuse, type Result } from '../../units/result.ts';
import { siteConditions } from '../site-conditions.ts';

type Of<Kind extends SystemTest['kind']> = Extract<SystemTest, { kind: Kind }>;

/** The readings of a test in SI, with the conditions that its formula takes. */
export type TestReadings =
	| { readonly kind: 'load-time'; readonly readings: LoadTimeReadings; readonly at: TestConditions }
	| {
			readonly kind: 'bleed-down';
			readonly readings: BleedDownReadings;
			readonly at: TestConditions;
	  }
	| { readonly kind: 'bleed-series'; readonly readings: BleedSeries; readonly at: TestConditions }
	| {
			readonly kind: 'pump-up';
			readonly readings: PumpUpReadings;
			readonly at: Pick<TestConditions, 'site' | 'reference'>;
	  };

/**
 * Makes the readings of a test ready for the formulas; what was not said of them is taken at our
 * starting values. METHOD T13.
 *
 * @returns the readings, or `site-pressure-unknown`, `test-set-pressure-missing`, `series-too-short`
 */
export function testReadings(survey: Survey, test: SystemTest): Result<TestReadings> {
	const site = siteConditions(survey.site);
	if (!site.ok) return site;
	const { reference } = survey.site;
	if (test.kind === 'pump-up')
		return ok({
			kind: 'pump-up',
			readings: pumpUp(test),
			at: { site: site.value, reference }
		});
	const { setPressureBarGauge } = survey.supply;
	if (setPressureBarGauge === undefined) return refuse('test-set-pressure-missing');
	const at: TestConditions = {
		site: site.value,
		lineTemperature: site.value.temperature,
		setPressure: gaugeFromBar(setPressureBarGauge),
		reference
	};
	return test.kind === 'load-time' ? ok(loadTime(test, at)) : bleedDown(test, at);
}

function loadTime(test: Of<'load-time'>, at: TestConditions): TestReadings {
	// A machine's capacity is stated at the air it takes in; the test wants it at the reference.
	const toReference = referenceDensity('site', at.site) / referenceDensity(at.reference, at.site);
	const capacity = toSi('volumeFlow', 'm3/min', test.capacityM3PerMin * toReference);
	const { meanPressureBarGauge: mean } = test;
	return {
		kind: 'load-time',
		at,
		readings: {
			capacity,
			capacityRelativeUncertainty:
				test.capacityRelativeUncertainty ?? STARTING_RESOLUTION.capacityRelativeUncertainty,
			meanPressure: mean === undefined ? at.setPressure : gaugeFromBar(mean),
			clockResolution: as<'s'>(test.clockResolutionS ?? STARTING_RESOLUTION.clockS),
			cycles: test.cycles.map(({ loadedS, unloadedS, offS }) => ({
				loaded: as<'s'>(loadedS),
				unloaded: as<'s'>(unloadedS),
				...(offS !== undefined && { off: as<'s'>(offS) })
			}))
		}
	};
}

function bleedDown(test: Of<'bleed-down'>, at: TestConditions): Result<TestReadings> {
	const { readings } = test;
	const [first, second] = readings;
	if (!first || !second)
		return refuse('series-too-short', { readings: readings.length, fewest: 2 });
	if (readings.length > 2)
		return ok({
			kind: 'bleed-series',
			at,
			readings: {
				...vessel(test),
				readings: readings.map(({ seconds, barGauge }) => ({
					at: as<'s'>(seconds),
					pressure: gaugeFromBar(barGauge)
				}))
			}
		});
	return ok({
		kind: 'bleed-down',
		at,
		readings: {
			...vessel(test),
			from: gaugeFromBar(first.barGauge),
			to: gaugeFromBar(second.barGauge),
			duration: as<'s'>(second.seconds - first.seconds)
		}
	});
}

function pumpUp(test: Of<'pump-up'>): PumpUpReadings {
	return {
		...vessel(test),
		from: gaugeFromBar(test.fromBarGauge),
		to: gaugeFromBar(test.toBarGauge),
		duration: as<'s'>(test.seconds),
		...(test.tankTemperatureC !== undefined && {
			tankTemperature: kelvinFromCelsius(test.tankTemperatureC)
		})
	};
}

function vessel(test: Of<'bleed-down' | 'pump-up'>) {
	return {
		volume: as<'m³'>(test.volumeM3),
		volumeRelativeUncertainty:
			test.volumeRelativeUncertainty ?? STARTING_RESOLUTION.volumeRelativeUncertainty,
		gaugeResolution: gaugeFromBar(test.gaugeResolutionBar ?? STARTING_RESOLUTION.gaugeBar),
		clockResolution: as<'s'>(test.clockResolutionS ?? STARTING_RESOLUTION.clockS)
	};
}
