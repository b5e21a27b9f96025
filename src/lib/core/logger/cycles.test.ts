import { describe, expect, it } from 'vitest';
import {
	dice,
	METRO_NIGHT,
	METRO_START,
	record,
	type Recording,
	type TrueCycle
} from '../../../../tests/logger/rebuild.ts';
import { loggerFindings } from '../weigh/logger-findings.ts';
import { findCycles, type FoundCycles } from './cycles.ts';
import type { ColumnKind } from './column-kinds.ts';
import { quietCycles } from './quiet.ts';
import type { Series } from './series.ts';

function found(series: Series, kind: ColumnKind): FoundCycles {
	const cycles = findCycles(series, kind);
	if (!cycles.ok) throw new Error(cycles.error.code);
	return cycles.value;
}

function findings(series: Series, kind: ColumnKind) {
	const made = loggerFindings(series, kind);
	if (!made.ok) throw new Error(made.error.code);
	return made.value;
}

const METRO: Recording = {
	cycles: METRO_NIGHT,
	start: METRO_START,
	stepS: 10,
	jitterS: 1.5,
	noise: 0.004,
	lost: 0.02,
	seed: 1
};

describe('[T11] the parked railway unit (MetroPT-3, CC BY 4.0, verified), rebuilt', () => {
	const { cycles } = found(record(METRO), 'pressure');

	it('[T11] finds its four cycles, each time within a sample', () => {
		expect(cycles.length).toBe(4);
		for (const [at, truth] of METRO_NIGHT.entries()) {
			expect(Math.abs((cycles[at]?.loadedS ?? 0) - truth.loadedS)).toBeLessThan(10);
			expect(Math.abs((cycles[at]?.unloadedS ?? 0) - truth.restS)).toBeLessThan(15);
		}
	});

	it('[T11] loads near 8.1 bar and unloads near 10.1 bar', () => {
		for (const [at, truth] of METRO_NIGHT.entries()) {
			expect(cycles[at]?.fromBar).toBeCloseTo(truth.fromBar, 1);
			expect(cycles[at]?.toBar).toBeCloseTo(truth.toBar, 1);
			expect(cycles[at]?.downToBar).toBeCloseTo(truth.downToBar, 1);
		}
	});

	it('[T1][T2] is loaded about 5 % of the time, by both routes', () => {
		const { all } = findings(record(METRO), 'pressure');
		expect(all.loadFraction).toBeCloseTo(0.0502, 2);
		expect(Math.abs(all.loadFraction - 0.0502)).toBeLessThan(
			2 * all.loadFractionUncertainty + 5e-4
		);
		expect(all.shareBySlopes).toBeCloseTo(all.loadFraction, 2);
		expect(all.bleedBarPerMin).toBeCloseTo((2.022 / 1920) * 60, 2);
		expect(all.meanPressureBarGauge).toBeCloseTo(9.06, 1);
	});

	it('[T11] stays the same under more noise, gaps and other jitter', () => {
		for (let seed = 2; seed < 30; seed++) {
			const { all } = findings(
				record({ ...METRO, seed, noise: 0.03, jitterS: 3, lost: 0.1 }),
				'pressure'
			);
			expect(all.cycles).toBe(4);
			expect(Math.abs(all.loadFraction - 0.0502)).toBeLessThan(0.004);
		}
	});

	it('[T11] tells loaded, unloaded and off by the motor current (levels near those published: derived)', () => {
		const series = record({
			...METRO,
			levels: { loaded: 5.6, unloaded: 3.8, off: 0.04 },
			runOnS: 60,
			noise: 0.06
		});
		const { cycles: byCurrent, levels } = found(series, 'current');
		expect(levels?.states).toEqual(['off', 'unloaded', 'loaded']);
		expect(byCurrent.length).toBe(4);
		for (const [at, truth] of METRO_NIGHT.entries()) {
			const cycle = byCurrent[at];
			expect(Math.abs((cycle?.loadedS ?? 0) - truth.loadedS)).toBeLessThan(14);
			expect(Math.abs((cycle?.unloadedS ?? 0) - 60)).toBeLessThan(24);
			expect(Math.abs((cycle?.offS ?? 0) - truth.restS + 60)).toBeLessThan(30);
		}
	});
});

/** A machine of any size and habit, known to the second. */
function anyRecording(seed: number): Recording {
	const roll = dice(seed);
	const between = (low: number, high: number) => low + (high - low) * roll();
	const stepS = between(0.5, 10);
	const loadedS = stepS * between(8, 60);
	const restS = stepS * between(12, 200);
	const fromBar = between(5, 8);
	const swing = between(0.4, 2);
	const cycles = Array.from({ length: 4 + Math.floor(between(0, 12)) }, (): TrueCycle => ({
		loadedS: loadedS * between(0.85, 1.15),
		restS: restS * between(0.85, 1.15),
		fromBar,
		toBar: fromBar + swing,
		downToBar: fromBar
	}));
	return {
		cycles,
		start: METRO_START,
		stepS,
		jitterS: stepS * 0.15,
		noise: swing * between(0, 0.012),
		lost: between(0, 0.03),
		seed
	};
}

describe('[T11] known cycles over 500 seeds (derived)', () => {
	const seeds = Array.from({ length: 500 }, (_, seed) => seed);
	const trueShare = (cycles: readonly TrueCycle[]) => {
		const loaded = cycles.reduce((sum, { loadedS }) => sum + loadedS, 0);
		return loaded / (loaded + cycles.reduce((sum, { restS }) => sum + restS, 0));
	};

	it('[T11] in a pressure: none missed, none made up, each within a sample or two', () => {
		for (const seed of seeds) {
			const recording = anyRecording(seed);
			const { cycles, sampleS } = found(record(recording), 'pressure');
			expect(cycles.length, `seed ${String(seed)}`).toBe(recording.cycles.length);
			for (const [at, truth] of recording.cycles.entries()) {
				const cycle = cycles[at];
				const off = Math.abs((cycle?.loadedS ?? 0) - truth.loadedS);
				expect(off, `seed ${String(seed)} cycle ${String(at)}`).toBeLessThan(3 * sampleS);
			}
		}
	});

	it('[T11] in a power: the load fraction within its own uncertainty nearly always', () => {
		let within = 0;
		for (const seed of seeds) {
			const recording = anyRecording(seed);
			const { all } = findings(
				record({ ...recording, noise: 1.2, levels: { loaded: 55, unloaded: 17 } }),
				'power'
			);
			expect(all.cycles, `seed ${String(seed)}`).toBe(recording.cycles.length);
			const off = Math.abs(all.loadFraction - trueShare(recording.cycles));
			if (off < 3 * all.loadFractionUncertainty) within += 1;
		}
		expect(within).toBeGreaterThan(490);
	});
});

describe('[T11] what is not a cycle', () => {
	const steady = anyRecording(7);

	it('[T11] one level alone has no cycles', () => {
		const series = record({ ...steady, noise: 2, levels: { loaded: 40, unloaded: 40 } });
		for (const kind of ['power', 'current', 'load-signal', 'pressure'] as const) {
			const cycles = findCycles(series, kind);
			expect(cycles.ok ? cycles.value.cycles.length : cycles.error.code).toBe('logger-no-cycles');
		}
	});

	it('[T11] leaves out a cycle with a gap and counts what is missing', () => {
		const whole = record(steady);
		const { cycles: before, sampleS } = found(whole, 'pressure');
		const cut = before[2];
		if (!cut) throw new Error('no third cycle');
		const from = cut.start + cut.loadedS + 0.2 * cut.unloadedS;
		const keep = [...whole.times.keys()].filter((at) => {
			const time = whole.times[at] ?? 0;
			return time < from || time > from + 10 * sampleS;
		});
		const holed = {
			times: Float64Array.from(keep, (at) => whole.times[at] ?? 0),
			values: Float64Array.from(keep, (at) => whole.values[at] ?? 0)
		};
		const after = found(holed, 'pressure');
		expect(after.cycles.length).toBe(before.length - 1);
		expect([after.gaps, after.leftOut.withGap]).toEqual([1, 1]);
		expect(Math.abs(after.missingSamples - 10)).toBeLessThanOrEqual(2);
	});

	it('[T11] leaves out a week-end switched off, by pressure and by power', () => {
		const quick: TrueCycle = {
			loadedS: 60,
			restS: 300,
			fromBar: 6.5,
			toBar: 7.2,
			downToBar: 6.5
		};
		const weekEnd: TrueCycle = { ...quick, restS: 50 * 3600, downToBar: 0.2 };
		const filling: TrueCycle = { ...quick, loadedS: 900, fromBar: 0.2 };
		const cycles = [quick, quick, quick, quick, weekEnd, filling, quick, quick, quick, quick];
		const base = { ...steady, cycles, stepS: 5, jitterS: 0.5, noise: 0.005, lost: 0 };
		const byPressure = found(record(base), 'pressure');
		expect(byPressure.cycles.length).toBe(8);
		expect(byPressure.leftOut.irregular).toBe(2);
		const byPower = found(
			record({ ...base, noise: 0.3, levels: { loaded: 37, unloaded: 11, off: 0.1 }, runOnS: 400 }),
			'power'
		);
		expect(byPower.leftOut.stayedOff).toBe(1);
		expect(byPower.cycles.every(({ offS }) => offS < 3600)).toBe(true);
	});

	it('[T11] does not take a starting current or a stray sample for a load', () => {
		const series = record({ ...steady, noise: 0.5, levels: { loaded: 60, unloaded: 20 } });
		const { cycles: plain } = found(series, 'current');
		const values = series.values.slice();
		for (const { start } of plain) {
			const first = series.times.findIndex((time) => time > start);
			values[first] = 180;
		}
		const quietAt = series.times.findIndex(
			(time) => time > (plain[1]?.start ?? 0) + (plain[1]?.loadedS ?? 0) * 2
		);
		values[quietAt] = 61;
		const { cycles } = found({ times: series.times, values }, 'current');
		expect(cycles.length).toBe(plain.length);
	});
});

describe('[T12] the quiet hours', () => {
	const cycle = (loadedS: number, unloadedS: number, at: number) => ({
		start: at,
		loadedS,
		unloadedS,
		offS: 0
	});

	it('[T12] parts night from day and keeps the night (derived)', () => {
		const day = Array.from({ length: 60 }, (_, at) =>
			cycle(90 + (at % 7), 30 + (at % 5), at * 130)
		);
		const night = Array.from({ length: 12 }, (_, at) => cycle(60 + (at % 3), 540, 9000 + at * 600));
		const { split, quiet } = quietCycles([...day, ...night]);
		expect(split).toBe(true);
		expect(quiet.slice(0, 60).some(Boolean)).toBe(false);
		expect(quiet.slice(60).every(Boolean)).toBe(true);
	});

	it('[T12] splits nothing where all hours are alike', () => {
		const alike = Array.from({ length: 50 }, (_, at) => cycle(60 + (at % 11), 300, at * 365));
		expect(quietCycles(alike).split).toBe(false);
	});
});
