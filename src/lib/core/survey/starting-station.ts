import {
	STARTING_CONTROL,
	startingLoadedKw,
	type ControlChoice
} from '../supply/starting-values.ts';
import { WEEKS_PER_YEAR } from '../supply/schedule.ts';
import type { Compressor, Control, SupplyStation } from './station-schema.ts';

/** A starting value, and where it comes from as shown beside it. */
interface Starting {
	readonly value: number;
	readonly source: string;
}

/** Share of the capacity that is asked for, day and night, until somebody enters the real week. */
export const STARTING_LOAD_SHARE: Starting = { value: 0.7, source: 'our starting value' };

/** Receiver volume per capacity, m³ per m³/min: one US gallon per cfm. */
export const STARTING_RECEIVER_MIN: Starting = {
	value: 0.133_7,
	source: 'one US gallon per cfm: common practice'
};

/** Share of what enters a heatless desiccant dryer that it blows away. */
export const STARTING_PURGE_SHARE: Starting = {
	value: 0.15,
	source: 'heatless desiccant dryers: common practice'
};

const STARTING_SPECIFIC_POWER_CAPACITY_M3_PER_MIN = 10;

/**
 * Specific power to start the quick method from: that of a 10 m³/min machine that just meets the
 * least efficiency of the US regulation, to a tenth.
 * @param setPressureBarGauge bar gauge
 * @returns kW per m³/min with its source; nothing where the pressure allows no answer
 * @source derived from 10 CFR 431.345; METHOD S17
 */
export function startingSpecificPower(setPressureBarGauge: number): Starting | undefined {
	const capacity = STARTING_SPECIFIC_POWER_CAPACITY_M3_PER_MIN;
	const power = startingLoadedKw(capacity, setPressureBarGauge, 'load-unload');
	if (!power.ok) return undefined;
	return {
		value: Math.round((10 * power.value) / capacity) / 10,
		source:
			`starting value: a ${capacity} m³/min machine at ${setPressureBarGauge} bar that just meets ` +
			'the least efficiency of 10 CFR 431.345'
	};
}

/** What a newcomer can tell of a machine, or is asked. */
export interface MachineSize {
	readonly id: string;
	readonly name: string;
	readonly capacityM3PerMin: number;
	readonly loadedKw: number;
	readonly ratedPressureBarGauge: number;
	readonly choice: ControlChoice;
}

/**
 * A compressor from its size and its kind of control; the control's figures are starting values.
 * METHOD S17.
 */
export function startingCompressor({ choice, ...size }: MachineSize): Compressor {
	return { ...size, build: 'screw', control: copyOf(STARTING_CONTROL[choice].control) };
}

/**
 * A station that answers at once from one compressor: the same demand at every hour of the year and
 * a small receiver, until the real ones are entered. METHOD S17.
 *
 * @param periodId id of the one period of its week
 */
export function startingStation(size: MachineSize, periodId: string): SupplyStation {
	const { capacityM3PerMin, ratedPressureBarGauge } = size;
	return {
		compressors: [startingCompressor(size)],
		trimId: null,
		receiverVolumeM3: round(capacityM3PerMin * STARTING_RECEIVER_MIN.value),
		pipingVolumeM3: 0,
		demandIs: 'delivered',
		schedule: {
			periods: [
				{
					id: periodId,
					name: 'All week',
					days: [0, 1, 2, 3, 4, 5, 6],
					fromMin: 0,
					toMin: 1440,
					air: {
						state: 'on',
						demandM3PerMin: round(capacityM3PerMin * STARTING_LOAD_SHARE.value),
						setPressureBarGauge: ratedPressureBarGauge
					},
					priceId: null
				}
			],
			weeksPerYear: round(WEEKS_PER_YEAR),
			closed: { state: 'off' },
			closedPriceId: null
		},
		purge: { kind: 'none' }
	};
}

/** The kind of control that figures belong to; `curve` has no starting value. */
export function controlChoice(control: Control): ControlChoice | 'curve' {
	if (control.kind !== 'cycling') return control.kind;
	return control.runOnS === 0 ? 'start-stop' : 'load-unload';
}

/** The starting control as data of the survey, which may change its own copy. */
export function startingControl(choice: ControlChoice): Control {
	return copyOf(STARTING_CONTROL[choice].control);
}

function copyOf(control: (typeof STARTING_CONTROL)[ControlChoice]['control']): Control {
	return control.kind === 'curve'
		? { ...control, points: control.points.map((point) => ({ ...point })) }
		: { ...control };
}

/** To four figures after the point: what is filled in should be easy to read and to change. */
function round(value: number): number {
	return Math.round(value * 1e4) / 1e4;
}
