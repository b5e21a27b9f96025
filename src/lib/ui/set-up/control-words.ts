import type { ControlChoice } from '#lib/core/supply/starting-values.ts';
import type { Compressor } from '#lib/core/survey/station-schema.ts';

/** How a machine follows demand, told by what somebody who stands beside it can see or hear. */
export const CONTROL_OPTIONS: readonly {
	readonly value: ControlChoice;
	readonly text: string;
	readonly about: string;
}[] = [
	{
		value: 'load-unload',
		text: 'Loads and unloads',
		about: 'The motor keeps turning; the machine goes quiet when the pressure is reached.'
	},
	{
		value: 'start-stop',
		text: 'Starts and stops',
		about: 'The motor stops when the pressure is reached. Usual for small piston machines.'
	},
	{
		value: 'throttled',
		text: 'Throttles its inlet',
		about: 'A valve at the inlet closes by degrees; the power hardly falls.'
	},
	{
		value: 'variable-speed',
		text: 'Changes its speed',
		about: 'An inverter drive: the pitch of the sound follows the demand.'
	}
];

export const BUILD_OPTIONS: readonly {
	readonly value: Compressor['build'];
	readonly text: string;
}[] = [
	{ value: 'screw', text: 'Screw' },
	{ value: 'piston', text: 'Piston' },
	{ value: 'vane', text: 'Vane' },
	{ value: 'centrifugal', text: 'Centrifugal' }
];
