import type { PartOutcome } from '../../supply/year.ts';
import { stationState } from '../../supply/sequence.ts';
import { factorAt } from '../../supply/station.ts';
import type { ReadyYear } from '../../supply/supply-year.ts';
import { flowAtSet, pressurisedHours } from '../station-year.ts';
import type { WeighedLeak } from '../weigh-leak.ts';
import { densityWorking, gaugeWorking, hoursWorking, massFlowWorking } from './flow.ts';
import type { Weighing } from './round.ts';
import { given, made, SCHEDULE, STATION, there, type Subject, type Working } from './tree.ts';

/** One part of the year in which the station holds pressure. */
export interface OnPart {
	readonly index: number;
	readonly outcome: PartOutcome;
	readonly delivered: NonNullable<PartOutcome['delivered']>;
	readonly of: Subject;
	readonly demandM3PerMin: number;
	readonly setPressureBarGauge: number;
}

/** The parts of the year in which anything can leak, named as the week names them. */
export function onParts({ survey, station, found }: Weighing): OnPart[] {
	const periods = survey.supply.station?.schedule.periods ?? [];
	return (station?.year.parts ?? []).flatMap((part, index) => {
		const outcome = found.outcome?.parts[index];
		if (!outcome?.delivered || part.air.state === 'off' || part.hoursPerYear === 0) return [];
		const { delivered } = outcome;
		const name = periods.find(({ id }) => id === part.id)?.name;
		const of: Subject = name === undefined ? { kind: 'closed' } : { kind: 'period', name };
		const { demandM3PerMin, setPressureBarGauge } = part.air;
		return [{ index, outcome, delivered, of, demandM3PerMin, setPressureBarGauge }];
	});
}

/** What one leak saves in one part of the year: its flow times what a flow saves. METHOD S13. */
export function savingInPart(
	weighing: Weighing,
	ready: ReadyYear,
	leak: WeighedLeak,
	part: OnPart
): Working {
	const flow = inletFlowWorking(weighing, ready, leak, part);
	const { savingKwhPerM3PerMin } = part.outcome;
	const together = leaksInPart(weighing, part);
	const rate = made('saving-per-flow', savingKwhPerM3PerMin, 'kWh per m³/min', 'S13', [
		savingOfAllInPart(ready, part, together),
		together
	]);
	const value = flow.value * savingKwhPerM3PerMin;
	return made('saving-in-part', value, 'kWh', 'S13', [flow, rate], { of: part.of });
}

/** A leak's flow in one part of the year, as the machines take it in. METHOD W4, S18. */
export function inletFlowWorking(
	weighing: Weighing,
	ready: ReadyYear,
	leak: WeighedLeak,
	part: OnPart
): Working {
	const { survey, air } = weighing;
	const hours = pressurisedHours(ready);
	const flow = flowAtSet(leak, part.setPressureBarGauge, hours, air);
	const density = densityWorking('site', survey, air);
	const { barGauge, massFlow, share, inletM3PerMin } = there(
		flow.ok ? flow.value : undefined,
		'inlet-flow'
	);
	const own = gaugeWorking(leak);
	const gauge =
		barGauge === own.value ? own : given('gauge-pressure', barGauge, 'bar gauge', SCHEDULE);
	const inputs = [
		massFlowWorking(leak, survey, air, { value: massFlow, gauge }),
		density,
		...(share === 1
			? []
			: [
					made('share-of-hours', share, 'share', 'W4', [
						hoursWorking(leak),
						given('station-hours', hours, 'h', SCHEDULE)
					])
				])
	];
	return made('inlet-flow', inletM3PerMin, 'm³/min', 'W4', inputs, { of: part.of });
}

/** All leaks together in one part of the year. METHOD W4. */
function leaksInPart({ leaks, found }: Weighing, part: OnPart): Working {
	let sum = 0;
	for (const index of leaks.keys()) sum += found.flowInPart?.(index, part.index) ?? 0;
	return made('leaks-in-part', sum, 'm³/min', 'W4', [], { of: part.of });
}

/** What the station stops drawing in one part of the year when all leaks go. METHOD S12. */
export function savingOfAll(weighing: Weighing, ready: ReadyYear, part: OnPart): Working {
	return savingOfAllInPart(ready, part, leaksInPart(weighing, part));
}

function savingOfAllInPart(ready: ReadyYear, part: OnPart, leaks: Working): Working {
	const { outcome, delivered, of } = part;
	const demand = given('demand', part.demandM3PerMin, 'm³/min', SCHEDULE, { of });
	const now = made(
		'delivered-with-leaks',
		delivered.nowM3PerMin,
		'm³/min',
		'S12',
		ready.demandIs === 'delivered' ? [demand] : [demand, leaks]
	);
	const without = made('delivered-without-leaks', delivered.withoutM3PerMin, 'm³/min', 'S12', [
		now,
		leaks
	]);
	return made(
		'saving-of-all-in-part',
		outcome.savingKwh,
		'kWh',
		'S12',
		[
			powerWorking('power-with-leaks', outcome.powerKw, now, ready, part),
			powerWorking('power-without-leaks', outcome.powerWithoutKw, without, ready, part),
			given('hours-in-part', outcome.hours, 'h', SCHEDULE, { of })
		],
		{ of }
	);
}

/** Power of the station at what it delivers, machine by machine. METHOD S10. */
export function powerWorking(
	id: 'power-with-leaks' | 'power-without-leaks',
	kw: number,
	delivered: Working,
	ready: ReadyYear,
	part: OnPart
): Working {
	const { station } = ready;
	const set = part.setPressureBarGauge;
	const state = stationState(station, delivered.value, set);
	const running = state.machines.flatMap((machine, index) => {
		const sheet = station.compressors[index];
		if (machine.role === 'stopped' || !sheet) return [];
		const of: Subject = { kind: 'machine', name: sheet.name };
		const inputs = [
			made('machine-flow', machine.flowM3PerMin, 'm³/min', 'S10', [delivered]),
			given('machine-capacity', sheet.capacityM3PerMin, 'm³/min', STATION),
			given('machine-full-power', sheet.loadedKw, 'kW', STATION),
			made('work-factor', factorAt(station, sheet, set), '', 'S3', [
				given('set-pressure', set, 'bar gauge', SCHEDULE),
				given('rated-pressure', sheet.ratedPressureBarGauge, 'bar gauge', STATION)
			])
		];
		const rule = PART_LOAD[sheet.control.kind];
		return [made('machine-power', machine.powerKw, 'kW', rule, inputs, { of })];
	});
	return made(id, kw, 'kW', 'S10', running, { of: part.of });
}

/** The METHOD rule of power at part load, by the kind of control. */
const PART_LOAD = { cycling: 'S6', throttled: 'S7', 'variable-speed': 'S8', curve: 'S9' } as const;
