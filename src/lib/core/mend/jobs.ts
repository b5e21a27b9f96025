import { find } from '../survey/ids.ts';
import { STARTING_ACTION, type Action } from '../survey/parts.ts';
import type { Job, Leak, Section, StartingValues, Survey } from '../survey/schema.ts';

/** Who does a job; words for them are elsewhere. */
export type Skill = 'fitter' | 'competent-person' | 'service-engineer';

export interface StartingJob {
	/** One person's minutes at the joint, with the air off. */
	readonly minutes: number;
	/** Major units of the site's currency, whatever it is. */
	readonly partsCost: number;
	/** How long the air stays off afterwards. */
	readonly cureHours: number;
	readonly skill: Skill;
	readonly source: 'our starting value' | 'common practice';
}

const ours = (
	minutes: number,
	partsCost: number,
	skill: Skill = 'fitter',
	cureHours = 0
): StartingJob => ({ minutes, partsCost, cureHours, skill, source: 'our starting value' });

/**
 * What a repair takes before anybody has said otherwise. METHOD P4.
 * @source our starting value throughout; that compound cures overnight with the air off is common practice
 */
export const STARTING_JOBS: Readonly<Record<Action, StartingJob>> = {
	'nip-up': ours(10, 0),
	'remake-thread': { ...ours(25, 2, 'fitter', 12), source: 'common practice' },
	'replace-fitting': ours(20, 8),
	'replace-coupling': ours(20, 15),
	'replace-hose': ours(25, 25),
	'replace-clip': ours(10, 3),
	'replace-seal': ours(35, 12),
	'replace-gasket': ours(50, 15),
	'replace-valve': ours(50, 45),
	'replace-bowl': ours(20, 30),
	'replace-gauge': ours(15, 18),
	'mend-drain': ours(30, 40),
	'close-off': ours(15, 5),
	'service-engineer': ours(120, 150, 'service-engineer'),
	'out-of-service': ours(60, 0, 'competent-person'),
	other: ours(30, 10)
};

/**
 * Minutes to shut, vent and restore a section that does not say. METHOD P4.
 * @source our starting value
 */
const STARTING_SECTION_MINUTES = { isolate: 10, vent: 5, restore: 10 } as const;

/** What one repair takes, from the leak itself, else from the site's values, else from ours. */
export interface JobWork {
	readonly minutes: number;
	/** Major units of the site's currency. */
	readonly partsCost: number;
	readonly cureHours: number;
	/** The section is shut and vented for it. */
	readonly ventFirst: boolean;
	readonly skill: Skill;
	/** Somebody named by the site in place of `skill`. */
	readonly skillName?: string;
	readonly wish?: NonNullable<Job['wish']>;
}

/** What an action takes at this site, before a leak says otherwise. METHOD P4. */
export function actionWork(action: Action, values: StartingValues): StartingJob {
	return { ...STARTING_JOBS[action], ...find(values.jobs ?? {}, action) };
}

/** What the repair of a leak takes. METHOD P4. */
export function jobWork(leak: Pick<Leak, 'job' | 'part' | 'action'>, survey: Survey): JobWork {
	const action = leak.action ?? STARTING_ACTION[leak.part];
	const start = actionWork(action, survey.startingValues);
	const { minutes, partsCost, cureHours, ventFirst, skill, wish } = leak.job ?? {};
	return {
		minutes: minutes ?? start.minutes,
		partsCost: partsCost ?? start.partsCost,
		cureHours: cureHours ?? start.cureHours,
		ventFirst: ventFirst ?? true,
		skill: start.skill,
		...(skill !== undefined && { skillName: skill }),
		...(wish && { wish })
	};
}

/** Minutes to isolate, vent and restore a section, however many jobs it holds. METHOD P4. */
export function sectionMinutes(section: Section | undefined): number {
	const { isolate, vent, restore } = STARTING_SECTION_MINUTES;
	return (
		(section?.isolateMinutes ?? isolate) +
		(section?.ventMinutes ?? vent) +
		(section?.restoreMinutes ?? restore)
	);
}

/** A vessel under pressure, or anything to be taken out of service: first, whatever it costs. METHOD P3. */
export function comesFirst({ part, action }: Pick<Leak, 'part' | 'action'>): boolean {
	return part === 'pressure-vessel' || (action ?? STARTING_ACTION[part]) === 'out-of-service';
}
