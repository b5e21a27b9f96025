import { expect, test } from 'vitest';
import { yearOfParts } from '../supply/schedule.ts';
import { readyStation } from '../supply/station.ts';
import { STARTING_CONTROL, type ControlChoice } from '../supply/starting-values.ts';
import { as } from '../units/quantity.ts';
import { SupplyStation } from './station-schema.ts';
import {
	controlChoice,
	startingControl,
	startingSpecificPower,
	startingStation
} from './starting-station.ts';

const size = {
	id: 'compressor-1',
	name: 'C1',
	capacityM3PerMin: 10,
	loadedKw: 55,
	ratedPressureBarGauge: 7.5
} as const;
const choices = Object.keys(STARTING_CONTROL) as ControlChoice[];

test('[S17] one machine, by size and control, is a whole station that can be computed with', () => {
	for (const choice of choices) {
		const station = startingStation({ ...size, choice }, 'period-1');
		expect(SupplyStation.parse(station)).toEqual(station);
		expect(readyStation(station, as<'Pa absolute'>(101_325)).ok).toBe(true);
		const year = yearOfParts(station.schedule);
		expect(year.ok && year.value.gaps).toEqual([]);
		// derived: the one period is the year of 8,760 h
		expect(year.ok && year.value.parts[0]?.hoursPerYear).toBeCloseTo(8760, 0);
	}
});

test('[S17] a control tells which choice it was started from', () => {
	for (const choice of choices) expect(controlChoice(startingControl(choice))).toBe(choice);
});

test('[S17] the receiver to start from is one US gallon per cfm', () => {
	// derived: 1 US gallon is 3.785411784 L and 1 cfm is 28.316846592 L/min, so 0.13368 m³ per m³/min
	const { receiverVolumeM3 } = startingStation({ ...size, choice: 'load-unload' }, 'period-1');
	expect(receiverVolumeM3).toBeCloseTo((10 * 3.785411784) / 28.316846592, 2);
});

test('[S17] the specific power to start from rises with pressure and is of the usual size', () => {
	const at = (bar: number) => startingSpecificPower(bar)?.value ?? NaN;
	// common practice: 18 to 22 kW per 100 cfm at 100 psi, that is 6.4 to 7.8 kW per m³/min
	expect(at(6.9)).toBeGreaterThan(5.5);
	expect(at(6.9)).toBeLessThan(8);
	expect(at(10)).toBeGreaterThan(at(7));
	expect(startingSpecificPower(-2)).toBeUndefined();
});
