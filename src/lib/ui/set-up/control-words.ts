import type { ControlChoice } from '#lib/core/supply/starting-values.ts';
import type { Compressor } from '#lib/core/survey/station-schema.ts';
import { supply } from '#lib/words/supply.ts';

const CHOICES: readonly ControlChoice[] = [
	'load-unload',
	'start-stop',
	'throttled',
	'variable-speed'
];
const BUILDS: readonly Compressor['build'][] = ['screw', 'piston', 'vane', 'centrifugal'];

/** How a machine follows demand, told by what somebody who stands beside it can see or hear. */
export function controlOptions() {
	return CHOICES.map((value) => ({ value, ...supply.machine.controls[value] }));
}

export function buildOptions() {
	return BUILDS.map((value) => ({ value, text: supply.machine.builds[value] }));
}
