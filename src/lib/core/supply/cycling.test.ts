import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toSi } from '../units/convert.ts';
import { cycleTimes, cyclingKw, meanOffLoadKw, type CycleInputs } from './cycling.ts';

const machine: CycleInputs = {
	capacityM3PerMin: 10,
	loadedKw: 60,
	unloadStartKw: 51,
	unloadedKw: 15,
	blowDownS: 30,
	runOnS: null,
	storedM3: 1
};

const share = fc.double({ min: 0.02, max: 0.98, noNaN: true });
const machines = fc
	.record({
		capacityM3PerMin: fc.double({ min: 0.2, max: 60, noNaN: true }),
		loadedKw: fc.double({ min: 1, max: 400, noNaN: true }),
		startShare: fc.double({ min: 0, max: 1, noNaN: true }),
		unloadedShare: fc.double({ min: 0, max: 1, noNaN: true }),
		blowDownS: fc.double({ min: 0, max: 120, noNaN: true }),
		runOnS: fc.oneof(
			fc.constant(null),
			fc.constant(0),
			fc.double({ min: 1, max: 900, noNaN: true })
		),
		storedPerFlow: fc.double({ min: 0.001, max: 3, noNaN: true })
	})
	.map(({ startShare, unloadedShare, storedPerFlow, ...rest }): CycleInputs => {
		const unloadStartKw = rest.loadedKw * startShare;
		const storedM3 = storedPerFlow * rest.capacityM3PerMin;
		return { ...rest, unloadStartKw, unloadedKw: unloadStartKw * unloadedShare, storedM3 };
	});

/**
 * The second route: a receiver is filled and emptied in small steps, the machine switches at the two
 * pressures, and its power is read off a clock. It knows nothing of t_L, t_U or shares.
 */
function simulatedKw(inputs: CycleInputs, demand: number, stepS: number): number {
	const flowPerS = inputs.capacityM3PerMin / 60;
	const demandPerS = demand / 60;
	let stored = 0;
	let loaded = true;
	let offS = 0;
	let energy = 0;
	let time = 0;
	for (let cycles = 0; cycles < 1;) {
		stored += ((loaded ? flowPerS : 0) - demandPerS) * stepS;
		if (loaded) energy += inputs.loadedKw * stepS;
		else {
			const middle = offS + stepS / 2;
			const fallen = inputs.blowDownS > 0 ? Math.min(1, middle / inputs.blowDownS) : 1;
			const stopped = inputs.runOnS !== null && middle >= inputs.runOnS;
			const power = inputs.unloadStartKw + (inputs.unloadedKw - inputs.unloadStartKw) * fallen;
			energy += stopped ? 0 : power * stepS;
			offS += stepS;
		}
		time += stepS;
		if (loaded && stored >= inputs.storedM3) {
			loaded = false;
			offS = 0;
		} else if (!loaded && stored <= 0) {
			loaded = true;
			cycles++;
		}
	}
	return energy / time;
}

describe('cycling', () => {
	// Derived by hand. q = 4 of 10 m³/min, S = 1 m³: t_L = 10 s, t_U = 15 s. Off load the power falls
	// from 51 to 33 kW, mean 42. P = (60·10 + 42·15)/25 = 49.2 kW.
	it('[S6] cuts the blow-down short when the machine is loaded again', () => {
		expect(cyclingKw(machine, 4)).toBeCloseTo(49.2, 10);
		const cycle = cycleTimes(10, 1, 4);
		expect(cycle?.loadedS).toBeCloseTo(10, 10);
		expect(cycle?.offLoadS).toBeCloseTo(15, 10);
		expect(cycle?.cyclesPerMin).toBeCloseTo(2.4, 10);
		expect(cycle?.shortCycling).toBe(true);
	});

	// Derived by hand. S = 5, q = 5: t_L = t_U = 60 s. Off load 33·30 + 15·30 = 1,440 kJ, mean 24 kW.
	it('[S6] idles after the blow-down, or stops when the run-on is over', () => {
		expect(cyclingKw({ ...machine, storedM3: 5 }, 5)).toBeCloseTo(42, 10);
		// Stopped 40 s after unloading: 33·30 + 15·10 = 1,140 kJ, mean 19 kW.
		expect(cyclingKw({ ...machine, storedM3: 5, runOnS: 40 }, 5)).toBeCloseTo(39.5, 10);
		// Stopped in the blow-down after 10 s, at 39 kW: 45·10 = 450 kJ, mean 7.5 kW.
		expect(cyclingKw({ ...machine, storedM3: 5, runOnS: 10 }, 5)).toBeCloseTo(33.75, 10);
		expect(cycleTimes(10, 5, 5)?.shortCycling).toBe(false);
	});

	// Derived by hand.
	it('[S6] takes the unloaded power at no demand, nothing if it stops, full power at full demand', () => {
		expect(cyclingKw(machine, 0)).toBe(15);
		expect(cyclingKw({ ...machine, runOnS: 600 }, 0)).toBe(0);
		expect(cyclingKw(machine, 10)).toBe(60);
		expect(cyclingKw(machine, 11)).toBe(60);
		expect(cycleTimes(10, 1, 0)).toBeNull();
		expect(cycleTimes(10, 1, 10)).toBeNull();
		expect(cycleTimes(10, 0, 5)).toBeNull();
	});

	// Derived by a second method, to 0.5 % of the full power.
	it('[S6] agrees with a simulation of the receiver step by step', () => {
		fc.assert(
			fc.property(machines, share, (inputs, x) => {
				const demand = x * inputs.capacityM3PerMin;
				const cycle = cycleTimes(inputs.capacityM3PerMin, inputs.storedM3, demand);
				if (cycle === null) throw new Error('no cycle');
				const stepS = Math.min(cycle.loadedS, cycle.offLoadS) / 1500;
				const simulated = simulatedKw(inputs, demand, stepS);
				const difference = Math.abs(cyclingKw(inputs, demand) - simulated);
				expect(difference).toBeLessThan(0.005 * Math.max(simulated, 0.2 * inputs.loadedKw));
			}),
			{ numRuns: 150 }
		);
	});

	// Published. Load/unload lubricated screw at half flow: 87 % of full power with 1 US gallon of
	// receiver per cfm, 76 % with 3. Read only in a secondary text that quotes US DOE curves. Status:
	// verified as quoted. Assumed here: 10 psi band, 14.7 psia, unloaded 25 %; the power at unloading
	// (85 %) and the blow-down (30 s) are our starting values, chosen to meet these two points, so
	// this checks that one pair of ordinary values explains both, to half a printed per cent.
	it.each([
		[1, 87],
		[3, 76]
	])('[S6] meets the printed half-flow power with %d gallons per cfm', (gallons, percent) => {
		const cfm = toSi('volumeFlow', 'cfm', 1) * 60;
		const inputs: CycleInputs = {
			capacityM3PerMin: cfm,
			loadedKw: 100,
			unloadStartKw: 85,
			unloadedKw: 25,
			blowDownS: 30,
			runOnS: null,
			storedM3: (toSi('volume', 'gal(US)', gallons) * 10) / 14.7
		};
		expect(Math.abs(cyclingKw(inputs, cfm / 2) - percent)).toBeLessThan(0.5);
	});

	// Published 55 % at half flow with "good storage" (trade article, verified as printed): no store
	// reaches it with 25 % unloaded power, 62.5 % being the limit; 10 % unloaded power would.
	it('[S6] shows why 55 % at half flow is not load/unload with 25 % unloaded power', () => {
		const endless = { ...machine, loadedKw: 100, unloadStartKw: 85, storedM3: 1e9 };
		expect(cyclingKw({ ...endless, unloadedKw: 25 }, 5)).toBeCloseTo(62.5, 3);
		expect(cyclingKw({ ...endless, unloadedKw: 10 }, 5)).toBeCloseTo(55, 3);
	});
});

describe('limits of cycling', () => {
	// Law.
	it('[S6] an endless store tends to the straight line from unloaded to full power', () => {
		fc.assert(
			fc.property(machines, share, (inputs, x) => {
				const endless = { ...inputs, storedM3: 1e9 * inputs.capacityM3PerMin };
				const least = inputs.runOnS === null ? inputs.unloadedKw : 0;
				const line = least + (inputs.loadedKw - least) * x;
				const power = cyclingKw(endless, x * inputs.capacityM3PerMin);
				expect(Math.abs(power - line)).toBeLessThan(1e-6 * inputs.loadedKw);
			})
		);
	});

	// Law.
	it('[S6] no store leaves no time for the power to fall: the expensive limit', () => {
		fc.assert(
			fc.property(machines, share, (inputs, x) => {
				const running = { ...inputs, blowDownS: inputs.blowDownS + 1, runOnS: null };
				const none = cyclingKw({ ...running, storedM3: 0 }, x * inputs.capacityM3PerMin);
				const line = x * inputs.loadedKw + (1 - x) * inputs.unloadStartKw;
				expect(none).toBeCloseTo(line, 9);
				const tiny = cyclingKw({ ...running, storedM3: 1e-9 }, x * inputs.capacityM3PerMin);
				expect(Math.abs(tiny - none)).toBeLessThan(1e-5 * inputs.loadedKw);
				const some = cyclingKw(running, x * inputs.capacityM3PerMin);
				expect(some).toBeLessThanOrEqual(none * (1 + 1e-12));
			})
		);
	});

	// Law.
	it('[S6] power rises with demand and falls with the store', () => {
		fc.assert(
			fc.property(machines, share, share, (inputs, a, b) => {
				const [low, high] = [Math.min(a, b), Math.max(a, b)];
				const at = (x: number, store = 1): number =>
					cyclingKw({ ...inputs, storedM3: inputs.storedM3 * store }, x * inputs.capacityM3PerMin);
				const slack = 1e-9 * inputs.loadedKw;
				expect(at(high)).toBeGreaterThanOrEqual(at(low) - slack);
				expect(at(low, 2)).toBeLessThanOrEqual(at(low) + slack);
			})
		);
	});

	it('[S6] has the right ends off load', () => {
		expect(meanOffLoadKw(machine, 0)).toBe(51);
		expect(meanOffLoadKw({ ...machine, blowDownS: 0 }, 0)).toBe(15);
		expect(meanOffLoadKw({ ...machine, runOnS: 0 }, 0)).toBe(0);
		expect(meanOffLoadKw(machine, Infinity)).toBe(15);
	});
});
