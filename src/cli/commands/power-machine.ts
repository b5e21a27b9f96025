import type { Compressor, Control, Cycling } from '#lib/core/supply/compressor.ts';
import { stationState } from '#lib/core/supply/sequence.ts';
import { STARTING_CONTROL, type ControlChoice } from '#lib/core/supply/starting-values.ts';
import { readyStation } from '#lib/core/supply/station.ts';
import { barFromPascal, fromSi, gaugeFromBar } from '#lib/core/units/convert.ts';
import { ok, refuse } from '#lib/core/units/result.ts';
import type { Outcome } from '../command.ts';
import { complain, type Answer } from '../complaint.ts';
import { many, may, missing, type Given } from '../options.ts';
import { figure, list, percent, table } from '../plain-text.ts';
import { choice, quantity, seconds, share, type Read } from '../reading.ts';
import { ambient, assumed, assumedPressure, blame, PRESSURE_OPTIONS } from '../site-options.ts';

const CONTROLS = [
	'start-stop',
	'load-unload',
	'throttled',
	'variable-speed'
] as const satisfies readonly ControlChoice[];

/** Seconds, or null for a motor that never stops. */
const runOn: Read<number | null> = (text) =>
	text.trim().toLowerCase() === 'never' ? ok(null) : seconds(text);

export const MACHINE_OPTIONS = {
	capacity: may('10 m3/min', 'free air it delivers, at inlet conditions', quantity('volumeFlow')),
	loaded: may('63 kW', 'electrical power of the whole package at full load', quantity('power')),
	control: may('load-unload', `${CONTROLS.join(', ')}`, choice(CONTROLS)),
	demand: many('6 m3/min', 'free air asked of it, at inlet conditions', quantity('volumeFlow')),
	receiver: may('2 m3', 'receivers and pipes that store its air', quantity('volume')),
	band: may('0.7 bar', 'between cut-in and cut-out', quantity('pressure')),
	unloaded: may('25 %', 'power unloaded, as a share of the loaded', share),
	'blow-down': may('30 s', 'until the power has fallen to the unloaded', seconds),
	'run-on': may('300 s', 'until an unloaded motor stops, or never', runOn),
	rated: may('7.5 bar', 'pressure that the loaded power was stated at', quantity('pressure')),
	set: may('7 bar', 'pressure it runs at; as --rated when not given', quantity('pressure')),
	...PRESSURE_OPTIONS
};
type MachineGiven = Given<typeof MACHINE_OPTIONS>;

/** Where no pressure is given the power is as stated, and any one serves for both. */
const ANY_PRESSURE = gaugeFromBar(7);

/** The mean power of one machine at one or more demands. METHOD S6 to S8, S10. */
export function machinePower(given: MachineGiven): Answer<Outcome> {
	const { options, written } = given;
	const { capacity, loaded, control: choiceOfControl, receiver, demand } = options;
	if (capacity === undefined) return lacking('capacity');
	if (loaded === undefined) return lacking('loaded');
	if (choiceOfControl === undefined) return lacking('control');
	if (receiver === undefined) return lacking('receiver');
	if (demand.length === 0) return lacking('demand');
	const site = ambient(given);
	if (!site.ok) return site;
	const rated = options.rated ?? options.set ?? ANY_PRESSURE;
	const set = options.set ?? rated;
	const control = controlOf(STARTING_CONTROL[choiceOfControl].control, options);
	const machine: Compressor = {
		id: 'machine',
		name: 'machine',
		build: 'screw',
		capacityM3PerMin: fromSi('volumeFlow', 'm3/min', capacity),
		loadedKw: fromSi('power', 'kW', loaded),
		ratedPressureBarGauge: barFromPascal(rated),
		control
	};
	const station = readyStation(
		{ compressors: [machine], trimId: null, receiverVolumeM3: receiver, pipingVolumeM3: 0 },
		site.value.air.pressure
	);
	if (!station.ok) return complain(station.error, blamed(station.error, written));
	if (!(set > 0)) {
		const fault = refuse('set-pressure-out-of-range', { setPressureBarGauge: barFromPascal(set) });
		return complain(fault.error, blame(fault.error.code, written, { [fault.error.code]: 'set' }));
	}
	const points: Point[] = [];
	for (const flow of demand) {
		const demandM3PerMin = fromSi('volumeFlow', 'm3/min', flow);
		if (!(demandM3PerMin >= 0))
			return complain(refuse('demand-out-of-range', { demandM3PerMin }).error, '--demand');
		const state = stationState(station.value, demandM3PerMin, barFromPascal(set));
		const delivered = demandM3PerMin - state.shortageM3PerMin;
		points.push({
			demandM3PerMin,
			powerKw: state.powerKw,
			powerFraction: state.powerKw / machine.loadedKw,
			specificPowerKwPerM3PerMin: delivered > 0 ? state.powerKw / delivered : null,
			shortageM3PerMin: state.shortageM3PerMin,
			cycle: state.machines[0]?.cycle ?? null
		});
	}
	const source = STARTING_CONTROL[choiceOfControl].source;
	const pressures = options.rated !== undefined || options.set !== undefined;
	return ok({
		text: textOf(points, [
			[
				'machine',
				`${figure(machine.capacityM3PerMin)} m³/min, ${figure(machine.loadedKw)} kW, ${choiceOfControl}`
			],
			['control', controlText(control)],
			['starting values', source],
			['receiver', `${figure(receiver)} m³`],
			[
				'pressure',
				pressures
					? `${figure(barFromPascal(set))} bar gauge, power stated at ${figure(barFromPascal(rated))}`
					: 'not given: the power is taken as stated at the pressure it runs at'
			],
			site.value.taken
		]),
		json: {
			points,
			control,
			controlSource: source,
			inputs: {
				capacityM3PerMin: machine.capacityM3PerMin,
				loadedKw: machine.loadedKw,
				receiverM3: receiver,
				ratedBarGauge: pressures ? barFromPascal(rated) : null,
				setBarGauge: pressures ? barFromPascal(set) : null,
				...site.value.inputs,
				assumed: [
					...assumed(written, ['band', 'unloaded', 'blow-down', 'run-on', 'rated', 'set']),
					...assumedPressure(written)
				]
			}
		},
		notes: points.flatMap((point) => notesOf(point, machine.capacityM3PerMin))
	});
}

interface Point {
	readonly demandM3PerMin: number;
	readonly powerKw: number;
	readonly powerFraction: number;
	readonly specificPowerKwPerM3PerMin: number | null;
	readonly shortageM3PerMin: number;
	readonly cycle: ReturnType<typeof stationState>['machines'][number]['cycle'];
}

function lacking(name: 'capacity' | 'loaded' | 'control' | 'receiver' | 'demand') {
	return complain(missing(name, MACHINE_OPTIONS[name].as));
}

/** The starting control with the figures that were given in their place. */
function controlOf(control: Control, options: MachineGiven['options']): Control {
	const changed = (cycling: Cycling): Cycling => ({
		...cycling,
		...(options.band !== undefined && { pressureBandBar: barFromPascal(options.band) }),
		...(options.unloaded !== undefined && { unloadedFraction: options.unloaded }),
		...(options['blow-down'] !== undefined && { blowDownS: options['blow-down'] }),
		...(options['run-on'] !== undefined && { runOnS: options['run-on'] })
	});
	switch (control.kind) {
		case 'cycling':
			return changed(control);
		case 'throttled':
		case 'variable-speed':
			return { ...control, below: changed(control.below) };
		case 'curve':
			return control;
	}
}

const FIELDS: Readonly<Record<string, string>> = {
	capacityM3PerMin: 'capacity',
	loadedKw: 'loaded',
	ratedPressureBarGauge: 'rated',
	pressureBandBar: 'band',
	blowDownS: 'blow-down',
	runOnS: 'run-on',
	unloadedFraction: 'unloaded'
};

function blamed(
	{
		code,
		detail = {}
	}: { readonly code: string; readonly detail?: Readonly<Record<string, unknown>> },
	written: Readonly<Record<string, string>>
): string | undefined {
	const field = FIELDS[String(detail['field'])] ?? 'unloaded';
	return blame(code, written, { [code]: code === 'volume-out-of-range' ? 'receiver' : field });
}

function controlText(control: Control): string {
	if (control.kind === 'curve') return 'by its curve';
	const { kind } = control;
	const cycling = kind === 'cycling' ? control : control.below;
	const { unloadedFraction, unloadStartFraction, blowDownS, runOnS, pressureBandBar } = cycling;
	const head =
		control.kind === 'throttled'
			? `slope ${figure(control.slope)}, unloads below ${percent(control.unloadsBelowFraction)}; then `
			: control.kind === 'variable-speed'
				? `least flow ${percent(control.minimumFraction)} at ${percent(control.minimumPowerFraction)} of the power; then `
				: '';
	const runs = runOnS === null ? 'never stops' : `stops after ${figure(runOnS)} s`;
	return `${head}unloaded ${percent(unloadedFraction)} from ${percent(unloadStartFraction)} in ${figure(blowDownS)} s, ${runs}, band ${figure(pressureBandBar)} bar`;
}

function notesOf({ demandM3PerMin, shortageM3PerMin, cycle }: Point, capacity: number): string[] {
	const at = `At ${figure(demandM3PerMin)} m³/min`;
	return [
		...(shortageM3PerMin > 0
			? [
					`${at} more is asked for than the ${figure(capacity)} m³/min it delivers; the pressure would fall.`
				]
			: []),
		...(cycle?.shortCycling === true
			? [
					`${at} it loads ${figure(cycle.cyclesPerMin, 2)} times a minute: check the receiver and the band.`
				]
			: [])
	];
}

function textOf(
	points: readonly Point[],
	reckoned: readonly (readonly [name: string, value: string])[]
): string {
	const rows = points.map(({ demandM3PerMin, powerKw, powerFraction, cycle, ...point }) => [
		figure(demandM3PerMin),
		figure(powerKw),
		percent(powerFraction, 3),
		point.specificPowerKwPerM3PerMin === null ? '' : figure(point.specificPowerKwPerM3PerMin, 3),
		cycle === null ? '' : `${figure(cycle.loadedS, 3)} s on, ${figure(cycle.offLoadS, 3)} s off`
	]);
	const columns = [
		{ head: 'm³/min', side: 'right' },
		{ head: 'kW', side: 'right' },
		{ head: 'of loaded', side: 'right' },
		{ head: 'kW per m³/min', side: 'right' },
		{ head: 'cycle', side: 'left' }
	] as const;
	return `${table(columns, rows)}\nReckoned with\n${list(reckoned)}\n`;
}
