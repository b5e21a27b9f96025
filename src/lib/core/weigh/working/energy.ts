import type { ReadyYear } from '../../supply/supply-year.ts';
import { fromSi } from '../../units/convert.ts';
import type { WeighedLeak } from '../weigh-leak.ts';
import { doubtOf, freeAirWorking, hoursWorking } from './flow.ts';
import type { Weighing } from './round.ts';
import { inletFlowWorking, onParts, savingInPart, savingOfAll } from './station.ts';
import { given, made, SCHEDULE, there, type Origin, type Working } from './tree.ts';

/** One leak's energy a year by the method of the round; none without a supply. METHOD W2. */
export function leakEnergyWorking(weighing: Weighing, index: number): Working | undefined {
	const { leaks, found, station, quick } = weighing;
	const leak = leaks[index];
	const kwh = found.years[index]?.energyKwh;
	if (!leak || kwh === undefined) return undefined;
	if (!station) return quickEnergyWorking('energy-per-year', weighing, leak, kwh);
	const parts = onParts(weighing).map((part) => savingInPart(weighing, station, leak, part));
	const quickKwh = quick?.years[index]?.energyKwh;
	return made('energy-per-year', kwh, 'kWh', 'W4', parts, {
		...(quickKwh !== undefined && {
			beside: [quickEnergyWorking('quick-energy', weighing, leak, quickKwh)]
		})
	});
}

/** The quick method: one specific power × free air × hours. METHOD S1. */
export function quickEnergyWorking(
	id: 'energy-per-year' | 'quick-energy',
	weighing: Weighing,
	leak: WeighedLeak,
	kwh: number
): Working {
	const { survey, air } = weighing;
	const quick = there(survey.supply.quick, 'specific-power');
	const each = quick.specificPowerKwPerM3PerMin;
	const flow = freeAirWorking(leak, survey, air, 'iso-1217');
	const power = each * fromSi('volumeFlow', 'm3/min', flow.value);
	const origin: Origin =
		quick.source === '' ? { kind: 'supply' } : { kind: 'cited', source: quick.source };
	return made(
		id,
		kwh,
		'kWh',
		'S1',
		[
			made(
				'quick-power',
				power,
				'kW',
				'S1',
				[given('specific-power', each, 'kW per m³/min', origin), flow],
				doubtOf(leak)
			),
			hoursWorking(leak)
		],
		doubtOf(leak)
	);
}

/** The energy of all leaks a year; none without a supply. METHOD W2, S12. */
export function totalEnergyWorking(weighing: Weighing): Working | undefined {
	const { found, station, quick } = weighing;
	if (found.method === 'none') return undefined;
	const kwh = sumOf(found.years.map(({ energyKwh }) => energyKwh ?? 0));
	if (!station) return made('energy-per-year', kwh, 'kWh', 'W2', leakEnergies(weighing));
	const parts = onParts(weighing).map((part) => savingOfAll(weighing, station, part));
	return made('energy-per-year', kwh, 'kWh', 'S12', parts, {
		...(quick && { beside: [totalQuickEnergy(weighing)] })
	});
}

function totalQuickEnergy(weighing: Weighing): Working {
	const years = weighing.quick?.years ?? [];
	const leaks = weighing.leaks.map((leak, index) =>
		made('quick-energy', years[index]?.energyKwh ?? 0, 'kWh', 'S1', [], {
			of: { kind: 'leak', tag: leak.leak.tag },
			...doubtOf(leak)
		})
	);
	return made('quick-energy', sumOf(leaks.map(({ value }) => value)), 'kWh', 'W2', leaks);
}

/** One line for each leak; its own working has the rest. */
function leakEnergies({ leaks, found }: Weighing): Working[] {
	return leaks.map((leak, index) =>
		made('energy-per-year', found.years[index]?.energyKwh ?? 0, 'kWh', 'S1', [], {
			of: { kind: 'leak', tag: leak.leak.tag },
			...doubtOf(leak)
		})
	);
}

const MINUTES_PER_HOUR = 60;

/** One leak's free air a year, as ISO 1217 states it. METHOD A5, W4. */
export function leakAirWorking(weighing: Weighing, index: number): Working {
	const { leaks, found, station } = weighing;
	const leak = there(leaks[index], 'air-per-year');
	const volume = there(found.years[index], 'air-per-year').freeAirM3;
	if (!station) return steadyAirWorking(weighing, leak, volume);
	return made('air-per-year', volume, 'm³', 'W4', airByPart(weighing, station, leak));
}

/** One leak's free air a year where its flow is the same at all hours. METHOD W2. */
export function steadyAirWorking(weighing: Weighing, leak: WeighedLeak, volume: number): Working {
	const flow = freeAirWorking(leak, weighing.survey, weighing.air, 'iso-1217');
	return made('air-per-year', volume, 'm³', 'W2', [flow, hoursWorking(leak)], doubtOf(leak));
}

function airByPart(weighing: Weighing, station: ReadyYear, leak: WeighedLeak): Working[] {
	const { survey, air } = weighing;
	const iso = freeAirWorking(leak, survey, air, 'iso-1217');
	const inlet = freeAirWorking(leak, survey, air, 'site');
	const inletToIso = inlet.value === 0 ? 1 : iso.value / inlet.value;
	return onParts(weighing).map((part) => {
		const flow = inletFlowWorking(weighing, station, leak, part);
		const { hours } = part.outcome;
		const value = flow.value * MINUTES_PER_HOUR * hours * inletToIso;
		return made(
			'air-in-part',
			value,
			'm³',
			'W4',
			[
				flow,
				given('hours-in-part', hours, 'h', SCHEDULE, { of: part.of }),
				...inlet.inputs.slice(1),
				...iso.inputs.slice(1)
			],
			{ of: part.of }
		);
	});
}

function sumOf(values: readonly number[]): number {
	return values.reduce((sum, value) => sum + value, 0);
}
