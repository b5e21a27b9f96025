import { refuse } from '#lib/core/units/result.ts';
import { command, type JsonKey, type Outcome } from '../command.ts';
import { complain, type Answer } from '../complaint.ts';
import type { Io } from '../io.ts';
import type { Given } from '../options.ts';
import { ROUND_OPTION, SURVEY_WORD } from '../survey-argument.ts';
import { MACHINE_OPTIONS, machinePower } from './power-machine.ts';
import { stationPower } from './power-station.ts';

const OPTIONS = { ...ROUND_OPTION, ...MACHINE_OPTIONS };

const JSON_KEYS: readonly JsonKey[] = [
	['', 'For a survey:'],
	['site', 'name of the site'],
	['round', 'the round whose leaks count: id, name, startedAt; null where there is none'],
	['method', 'supply'],
	['capacityM3PerMin', 'of all machines, free air at inlet conditions'],
	['energyKwhPerYear', 'of the year as it is, leaks included'],
	['energyWithoutLeaksKwhPerYear', 'of the year without the leaks'],
	['savingKwhPerYear', 'the difference'],
	['peakKw, peakWithoutLeaksKw', 'highest mean power of any part of the year'],
	['leaks', 'counted and unweighed'],
	['parts[]', 'parts of the year: id, name, hoursPerYear, setPressureBarGauge, demandM3PerMin,'],
	['', 'demandWithoutLeaksM3PerMin (null while off), powerKw, powerWithoutLeaksKw,'],
	['', 'energyKwhPerYear, savingKwhPerYear, shortageM3PerMin, machines[]'],
	['parts[].machines[]', 'as it is: id, name, role (full, trim, stopped), flowM3PerMin, powerKw'],
	['warnings[]', 'what the figures must not be shown without: code, sentence'],
	['quarantined, conflicts', 'as in audit'],
	['', 'For one machine:'],
	['points[]', 'in the order of --demand: demandM3PerMin, powerKw, powerFraction,'],
	['', 'specificPowerKwPerM3PerMin (null at no demand), shortageM3PerMin, cycle'],
	['points[].cycle', 'loadedS, offLoadS, cyclesPerMin, shortCycling; null where it does not cycle'],
	['control', 'the figures of the control that were used'],
	['controlSource', 'where its starting values come from'],
	[
		'inputs',
		'capacityM3PerMin, loadedKw, receiverM3, ratedBarGauge, setBarGauge (null where neither'
	],
	['', 'is given), altitudeM, sitePressureKPa, assumed']
];

export const power = command({
	name: 'power',
	summary: 'what a station draws over its year, or one machine at a demand',
	usage: [
		'power FILE [--round "First round"]',
		'power --capacity "10 m3/min" --loaded "63 kW" --control load-unload --receiver "2 m3" --demand "6 m3/min"'
	],
	word: { ...SURVEY_WORD, must: false },
	notes: [
		'METHOD S3, S5 to S14, S17 and W4. Figures of the control that are not given start from S17.'
	],
	options: OPTIONS,
	json: JSON_KEYS,
	run
});

function run(given: Given<typeof OPTIONS>, io: Io): Promise<Answer<Outcome>> | Answer<Outcome> {
	const [path] = given.words;
	const typed = Object.keys(given.written);
	if (path !== undefined) {
		const machine = typed.find((name) => Object.hasOwn(MACHINE_OPTIONS, name));
		return machine === undefined
			? stationPower(path, given.options.round, io)
			: unusable(`--${machine}`, 'FILE');
	}
	if (given.options.round !== undefined) return unusable('--round', 'the figures of one machine');
	return machinePower(given);
}

function unusable(option: string, other: string): Answer<Outcome> {
	return complain(refuse('option-unusable-with', { option, other }).error);
}
