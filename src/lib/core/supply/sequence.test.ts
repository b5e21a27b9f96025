import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { as } from '../units/quantity.ts';
import type { Compressor, Control } from './compressor.ts';
import { shareDemand, stationKw, stationState, trimCycle } from './sequence.ts';
import { STARTING_CONTROL } from './starting-values.ts';
import { readyStation, type ReadyStation, type Station } from './station.ts';

const inlet = as<'Pa absolute'>(1e5);
const fixed: Control = STARTING_CONTROL['load-unload'].control;
const variable: Control = STARTING_CONTROL['variable-speed'].control;

function machine(id: string, capacityM3PerMin: number, control = fixed): Compressor {
	return {
		id,
		name: id,
		build: 'screw',
		capacityM3PerMin,
		loadedKw: 6.5 * capacityM3PerMin,
		ratedPressureBarGauge: 7,
		control
	};
}

function station(compressors: readonly Compressor[], trimId: string | null = null): ReadyStation {
	const plain: Station = { compressors, trimId, receiverVolumeM3: 4, pipingVolumeM3: 1 };
	const ready = readyStation(plain, inlet);
	if (!ready.ok) throw new Error(ready.error.code);
	return ready.value;
}

const inOrder = station([machine('a', 10), machine('b', 6), machine('c', 4)]);
const withTrim = station([machine('a', 10), machine('b', 10), machine('v', 12, variable)], 'v');
const withSmallTrim = station([machine('a', 10), machine('v', 4, variable)], 'v');

function roles(ready: ReadyStation, demand: number): string {
	return stationState(ready, demand, 7)
		.machines.map(({ id, role, flowM3PerMin }) => `${id} ${role} ${flowM3PerMin}`)
		.join(', ');
}

describe('the sequence', () => {
	// Derived by hand. Rule from the California energy code acceptance test NA7.13 (verified): base
	// machines are full or off and one trims.
	it.each([
		[0, 'a trim 0, b stopped 0, c stopped 0'],
		[7, 'a trim 7, b stopped 0, c stopped 0'],
		[10, 'a trim 10, b stopped 0, c stopped 0'],
		[13, 'a full 10, b trim 3, c stopped 0'],
		[18, 'a full 10, b full 6, c trim 2'],
		[25, 'a full 10, b full 6, c trim 4']
	])('[S10] with no trim named, at %d m³/min the last started trims', (demand, expected) => {
		expect(roles(inOrder, demand)).toBe(expected);
	});

	it.each([
		[0, 'a stopped 0, b stopped 0, v trim 0'],
		[11, 'a stopped 0, b stopped 0, v trim 11'],
		[15, 'a full 10, b stopped 0, v trim 5'],
		[25, 'a full 10, b full 10, v trim 5'],
		[40, 'a full 10, b full 10, v trim 12']
	])('[S10] a named trim takes the varying part at %d m³/min', (demand, expected) => {
		expect(roles(withTrim, demand)).toBe(expected);
	});

	it.each([
		[4, 'a stopped 0, v trim 4'],
		[7, 'a trim 7, v stopped 0'],
		[12, 'a full 10, v trim 2']
	])('[S10] a trim too small leaves a control gap, which the base machine fills at %d', (d, e) => {
		expect(roles(withSmallTrim, d)).toBe(e);
	});

	it('[S10] says what is short and never hides it', () => {
		expect(stationState(inOrder, 25, 7).shortageM3PerMin).toBe(5);
		expect(stationState(inOrder, 25, 7).powerKw).toBeCloseTo(20 * 6.5, 10);
		expect(stationState(inOrder, 20, 7).shortageM3PerMin).toBe(0);
	});

	// Law.
	it('[S10] delivers the demand or everything there is, and both ways of telling agree', () => {
		const demands = fc.double({ min: 0, max: 60, noNaN: true });
		const stations = fc.constantFrom(inOrder, withTrim, withSmallTrim);
		fc.assert(
			fc.property(stations, demands, (ready, demand) => {
				const flows = new Float64Array(ready.compressors.length);
				shareDemand(ready, demand, flows);
				const sum = flows.reduce((a, b) => a + b, 0);
				expect(sum).toBeCloseTo(Math.min(demand, ready.capacityM3PerMin), 9);
				const state = stationState(ready, demand, 7);
				expect(state.powerKw).toBe(stationKw(ready, demand, 7, flows));
				const trim = state.machines.find(({ role }) => role === 'trim');
				expect(trimCycle(ready, demand, flows)).toEqual(trim?.cycle);
			})
		);
	});

	// Law.
	it('[S10] with no trim named, power rises with demand', () => {
		const demands = fc.double({ min: 0, max: 25, noNaN: true });
		fc.assert(
			fc.property(demands, demands, (a, b) => {
				const flows = new Float64Array(3);
				const low = stationKw(inOrder, Math.min(a, b), 7, flows);
				expect(stationKw(inOrder, Math.max(a, b), 7, flows)).toBeGreaterThanOrEqual(low - 1e-9);
			})
		);
	});

	// Derived by hand: (7.5/1)^(2/7) − 1 over (8/1)^(2/7) − 1 = 0.95991.
	it('[S3] a lower set pressure takes less work', () => {
		const flows = new Float64Array(3);
		const ratio = stationKw(inOrder, 20, 6.5, flows) / stationKw(inOrder, 20, 7, flows);
		expect(ratio).toBeCloseTo((7.5 ** (2 / 7) - 1) / (8 ** (2 / 7) - 1), 12);
	});

	it.each([
		[
			{ compressors: [], trimId: null, receiverVolumeM3: 1, pipingVolumeM3: 0 },
			'station-has-no-compressor'
		],
		[
			{
				compressors: [machine('a', 1), machine('a', 2)],
				trimId: null,
				receiverVolumeM3: 1,
				pipingVolumeM3: 0
			},
			'compressor-twice'
		],
		[
			{ compressors: [machine('a', 1)], trimId: 'b', receiverVolumeM3: 1, pipingVolumeM3: 0 },
			'trim-unknown'
		],
		[
			{ compressors: [machine('a', -1)], trimId: null, receiverVolumeM3: 1, pipingVolumeM3: 0 },
			'compressor-out-of-range'
		],
		[
			{ compressors: [machine('a', 1)], trimId: null, receiverVolumeM3: NaN, pipingVolumeM3: 0 },
			'volume-out-of-range'
		]
	])('[S10] refuses %j', (wrong, code) => {
		expect(readyStation(wrong, inlet)).toMatchObject({ ok: false, error: { code } });
	});
});
