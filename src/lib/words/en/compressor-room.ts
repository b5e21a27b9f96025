import type { RoomFindingKind, RoomPoint } from '#lib/core/survey/room-points.ts';
import { pluralsOf } from '../plural.ts';

const many = pluralsOf('en');

/** The points of the compressor room, and what is found there. */
export const compressorRoom = {
	points: {
		'condensate-drain': {
			name: 'Condensate drain',
			look: 'With the tank empty of air, open the drain and catch what runs out. Water is as it should be; rust, or no water at all, is a finding.'
		},
		'timed-drain': {
			name: 'Timed drain',
			look: 'Wait for it to open and to shut again. One that stays open is an open pipe; one that never opens fills the tank with water.'
		},
		'intake-filter': {
			name: 'Intake filter',
			look: 'Machine stopped and locked off: is it clean and soft, or dirty, or hard with paint?'
		},
		'oil-level': {
			name: 'Oil level',
			look: 'Machine stopped and settled: does the oil stand between the marks?'
		},
		'belt-tension': {
			name: 'Belt',
			look: 'Machine locked off: press the belt at mid-span. On small belt-driven machines about 10 mm is usual; the maker’s figure goes first.'
		},
		'head-bolts': {
			name: 'Head bolts',
			look: 'Machine cold, vented and locked off: are they at the maker’s torque?'
		},
		'pump-joints': {
			name: 'Joints of the pump',
			look: 'Soap round the pump’s own joints, pipes and valves from where nothing turns and nothing is hot.'
		}
	} satisfies Record<RoomPoint, { name: string; look: string }>,
	findings: {
		'drain-rust': { found: 'Rust in the water', action: 'Out of service until examined inside' },
		'drain-no-water': { found: 'No water comes', action: 'Clear or replace the drain' },
		'drain-stuck-open': { found: 'Stuck open', action: 'Mend or replace the timed drain' },
		'drain-stuck-shut': { found: 'Never opens', action: 'Mend or replace the timed drain' },
		'filter-dirty': { found: 'Dirty', action: 'Change the filter' },
		'filter-hard': { found: 'Hard with paint', action: 'Change the filter; keep paint mist away' },
		'oil-low': { found: 'Below the marks', action: 'Top up; look where it went' },
		'oil-high': { found: 'Above the marks', action: 'Draw off to the marks; look why' },
		'belt-slack': { found: 'Too slack', action: 'Tension to the maker’s figure' },
		'belt-tight': { found: 'Too tight', action: 'Ease to the maker’s figure' },
		'belt-worn': { found: 'Worn', action: 'Change the belt' },
		'bolts-loose': { found: 'Below torque', action: 'Tighten to the maker’s torque, in order' },
		'joint-leaks': {
			found: 'A joint leaks',
			action: 'Nip up a little at a time, vented; else new gasket'
		}
	} satisfies Record<RoomFindingKind, { found: string; action: string }>,
	somethingElse: 'Something else',
	serviceEngineer: 'Call the service engineer',
	agree: 'Agree what to do',
	/** What stands for the valve to close where the jobs are on a machine. */
	madeSafe: 'Lock the machine off, let it cool, vent it to zero',
	rotaryScrews: 'Rotary screw machines: leave them to their service engineer',

	pageTitle: (site: string) => `Compressor room – ${site} – Airtally`,
	heading: 'Compressor room',
	back: 'Back to the plan',
	soFar: (looked: number, shown: string, found: string) =>
		many(looked, {
			one: `1 point looked at, ${found} found`,
			other: `${shown} points looked at, ${found} found`
		}),
	beforeTouching: 'Before you touch anything',
	machine: 'Machine or tank',
	firstMachine: 'Name the first machine or tank',
	anotherMachine: 'Another machine or tank',
	add: 'Add it',
	isRotaryScrew: 'This is a rotary screw machine',
	leaveClosed: 'Leave the machine closed.',
	leaveClosedWhy: 'Its filter, oil, belt and joints are its service engineer’s.',
	whatFound: (point: string) => `${point}: what did you find?`,
	inOrder: 'In order',
	notDone: 'Not done',
	onList: 'On the fix list:',
	note: 'Note',
	putRight: 'Put right'
};
