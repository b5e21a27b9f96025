import { practice, type CautionRule } from './caution-rule.ts';

/** The cautions that only the compressor room calls for, METHOD C29 to C35. */
export const ROOM_CAUTION_RULES: readonly CautionRule[] = [
	{
		id: 'C29',
		key: 'drain-opened-empty',
		when: [{ room: ['condensate-drain'] }],
		text: 'Open a drain by hand only when the tank is empty of air and you have seen its gauge fall to zero; stand to the side. Rust in the water: the tank stays empty until a competent person has examined it inside.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C30',
		key: 'condensate-is-oily',
		when: [{ room: ['condensate-drain', 'timed-drain'] }],
		text: 'Condensate holds oil: catch it and hand it in as the site’s rules ask. None of it goes into a floor drain. Gloves on.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C31',
		key: 'timed-drain-live',
		when: [{ room: ['timed-drain'] }],
		text: 'A timed drain can open at any moment and may be wired to the mains: shut the valve before it, vent it, lock its mains off and test that they are dead before it is opened.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C32',
		key: 'filter-stopped',
		when: [{ room: ['intake-filter'] }],
		text: 'The intake is opened only with the machine stopped and locked off, and the machine never runs without its filter. Never wash a filter in petrol or solvent: the vapour can burn inside the pump.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C33',
		key: 'oil-stopped',
		when: [{ room: ['oil-level'] }],
		text: 'Read the oil with the machine stopped and settled. No plug comes out while it runs, is hot or holds pressure. Only the oil that the maker names goes in.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C34',
		key: 'belt-guard-on',
		when: [{ room: ['belt-tension'] }],
		text: 'The belt guard stays on until the machine is locked off and tested dead; mind the nip when a wheel is turned by hand. The guard goes back before the mains do.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C35',
		key: 'head-bolts-makers-torque',
		when: [{ room: ['head-bolts'] }],
		text: 'Head bolts: cold, vented and locked off, to the maker’s torque and in the maker’s order. Without the maker’s figure, do not touch them.',
		origin: practice,
		where: ['job']
	}
];
