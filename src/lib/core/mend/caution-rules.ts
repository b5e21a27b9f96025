import { practice, type CautionOrigin, type CautionRule } from './caution-rule.ts';
import { ROOM_CAUTION_RULES } from './room-caution-rules.ts';

function read(source: string): CautionOrigin {
	return { source, status: 'verified' };
}

/**
 * Every caution, in the order of printing; METHOD C1 to C35. None can be switched off: they are
 * the least that is said, and local codes, permits and licensed practice ask for more.
 */
export const CAUTION_RULES: readonly CautionRule[] = [
	{
		id: 'C1',
		key: 'depressurise-first',
		when: 'always',
		text: 'Isolate, lock, vent, prove zero at the gauge, then loosen. Never loosen or tighten a joint on a live line.',
		origin: read(
			'30 CFR 77.412: no repair until the pressure is relieved; the order is trade practice'
		),
		where: ['headline', 'job']
	},
	{
		id: 'C2',
		key: 'local-rules-first',
		when: 'always',
		text: 'Local codes, this site’s permit system and licensed practice come first. Where they ask for more, do more. In doubt, stop and ask a competent person.',
		origin: practice,
		where: ['headline']
	},
	{
		id: 'C3',
		key: 'out-of-service',
		when: [
			{ parts: ['pressure-vessel'] },
			{ actions: ['out-of-service'] },
			{ room: ['condensate-drain'] }
		],
		text: 'A leaking or rusted pressure vessel goes out of service now: shut it off, vent it, tag it, and have a competent person examine it. Never patch, weld or plug it.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C4',
		key: 'safety-valve',
		when: [
			{ parts: ['valve', 'pressure-vessel'] },
			{ actions: ['close-off', 'replace-valve', 'out-of-service'] }
		],
		text: 'If it is a safety valve, never plug, blank or reset it, and never put a valve between it and its vessel: a competent person replaces it.',
		origin: read(
			'29 CFR 1910.169, read as quoted by others: no valve between receiver and safety valve; the rest is trade practice'
		),
		where: ['job']
	},
	{
		id: 'C5',
		key: 'service-engineer',
		when: [{ hazards: ['rotary-screw'] }, { actions: ['service-engineer'] }],
		text: 'Leave the machine closed and call its service engineer: a rotary screw machine holds hot oil under pressure.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C6',
		key: 'find-the-valve',
		when: [{ valveUnknown: true }],
		text: 'Find the isolating valve first, and a gauge behind it that can show zero. No valve, no job.',
		origin: practice,
		where: ['section', 'job']
	},
	{
		id: 'C7',
		key: 'stored-air',
		when: 'always',
		text: 'Air stays behind non-return valves and in hoses, bowls and cylinders, and creeps back past a valve that passes. Watch the gauge while you work: if it rises, stop.',
		origin: read(
			'29 CFR 1910.147(d)(5): stored energy is rendered safe, and checked while it can build up again'
		),
		where: ['headline', 'section']
	},
	{
		id: 'C8',
		key: 'see-the-gauge-fall',
		when: 'always',
		text: 'See the gauge fall to zero: one that already stood there proves nothing.',
		origin: practice,
		where: ['headline', 'section']
	},
	{
		id: 'C9',
		key: 'eye-protection',
		when: 'always',
		text: 'Wear eye protection. Stand to the side of a vent or joint as it opens.',
		origin: practice,
		where: ['headline', 'job']
	},
	{
		id: 'C10',
		key: 'mains-off-before-guard',
		when: [
			{ hazards: ['moving-machinery', 'live-electrics', 'rotary-screw'] },
			{ parts: ['pump-joint'] },
			{ room: ['intake-filter', 'belt-tension', 'head-bolts', 'pump-joints'] }
		],
		text: 'Switch the mains off, lock them off and test that they are dead before any guard or cover comes off.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C11',
		key: 'compressor-starts-itself',
		when: [
			{ parts: ['pump-joint'] },
			{ room: ['intake-filter', 'oil-level', 'belt-tension', 'head-bolts', 'pump-joints'] }
		],
		text: 'A compressor starts by itself and its joints are hot: lock it off, let it cool, and vent both sides of its non-return valve.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C12',
		key: 'tank-empty',
		when: [
			{ parts: ['drain', 'gauge', 'pressure-vessel'] },
			{ actions: ['mend-drain', 'replace-gauge'] },
			{ room: ['condensate-drain', 'timed-drain'] }
		],
		text: 'Empty the tank or line first: no drain, plug, gauge or fitting leaves it while there is pressure behind it.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C13',
		key: 'bowl',
		when: [{ parts: ['filter-bowl', 'lubricator-bowl'] }, { actions: ['replace-bowl'] }],
		text: 'Never turn a bowl under pressure. Solvents and some oils crack plastic bowls, and a cracked bowl bursts: put its metal guard back.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C14',
		key: 'regulator-holds',
		when: [{ parts: ['regulator'] }],
		text: 'A regulator can hold pressure on its outlet after its inlet is vented: prove zero on both sides.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C15',
		key: 'cylinder-moves',
		when: [{ parts: ['cylinder'] }, { hazards: ['moving-machinery'] }],
		text: 'Machines move when air goes off and again when it returns: lock the machine, prop what can fall, keep hands out.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C16',
		key: 'hose-whip',
		when: [
			{ parts: ['hose', 'hose-clip', 'quick-coupling', 'blow-gun', 'tool'] },
			{ actions: ['replace-hose', 'replace-clip', 'replace-coupling'] }
		],
		text: 'A hose that lets go under pressure whips: vent it before either end is undone, and tether it where your rules ask for that.',
		origin: read('30 CFR 77.412: chains or locks at hose joints; the wording is trade practice'),
		where: ['job']
	},
	{
		id: 'C17',
		key: 'tool-starts',
		when: [{ parts: ['tool'] }],
		text: 'A tool can start when its air returns: take the bit, blade or socket out first.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C18',
		key: 'blow-gun',
		when: [{ parts: ['blow-gun'] }],
		text: 'Never point a nozzle at anybody or clean skin or clothes with it. A cleaning nozzle stays below 30 psi (2 bar), with chip guarding.',
		origin: read(
			'29 CFR 1910.242(b): below 30 psi for cleaning; 30 CFR 77.412: never aimed at a person'
		),
		where: ['job']
	},
	{
		id: 'C19',
		key: 'blowing-out',
		when: [
			{ actions: ['remake-thread', 'replace-hose', 'replace-valve', 'replace-bowl', 'mend-drain'] }
		],
		text: 'If you blow dirt out: eye protection and a mask, nobody in line with it, a cleaning nozzle below 30 psi (2 bar).',
		origin: read(
			'29 CFR 1910.242(b): below 30 psi, guarding and personal protection; the mask is trade practice'
		),
		where: ['job']
	},
	{
		id: 'C20',
		key: 'nip-up-vented',
		when: [{ actions: ['nip-up'] }, { room: ['pump-joints'] }],
		text: 'Nip the joint up a little at a time with the line vented: air on, soap it, vent again, then the next little. Threads split when forced.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C21',
		key: 'compound-sets',
		when: [
			{
				actions: [
					'remake-thread',
					'replace-fitting',
					'replace-coupling',
					'replace-valve',
					'replace-gauge',
					'mend-drain'
				]
			}
		],
		text: 'Thread-sealing compound sets overnight with the air off: leave the valve locked and tell the next shift.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C22',
		key: 'soap-live-electrics',
		when: [{ hazards: ['live-electrics'] }],
		text: 'No soap solution, leak-test fluid or water on or above live electrics: dead first, or do not wet it.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C23',
		key: 'hot-surface',
		when: [{ hazards: ['hot-surface'] }],
		text: 'Hot surface: let it cool or screen it, and wear gloves that fit the heat.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C24',
		key: 'at-height',
		when: [{ hazards: ['at-height'] }],
		text: 'Work at height: use the site’s approved platform or scaffold, tie tools on, keep people from below. Never climb the pipework.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C25',
		key: 'confined-space',
		when: [{ hazards: ['confined-space'] }],
		text: 'Confined space: nobody goes in without the site’s confined-space permit, tested air and a watcher outside.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C26',
		key: 'job-not-described',
		when: [{ parts: ['other'] }, { actions: ['other'] }],
		text: 'This job is not described in full: agree how it is made safe before it starts.',
		origin: practice,
		where: ['job']
	},
	{
		id: 'C27',
		key: 'soap-and-brass',
		when: 'always',
		text: 'Re-soap with soap solution or leak-test fluid. Nothing with ammonia in it touches brass: it cracks.',
		origin: read('a consulting metallurgist’s page: ammonia cracks yellow brass'),
		where: ['headline', 'section']
	},
	{
		id: 'C28',
		key: 'restore-slowly',
		when: 'always',
		text: 'Bring the air back slowly with everybody clear, then soap every joint that was mended.',
		origin: practice,
		where: ['headline', 'section']
	},
	...ROOM_CAUTION_RULES
];
