import { find } from '../survey/ids.ts';
import { leakState, leaksInOrder, mendingIn, type LeakState } from '../survey/leak-state.ts';
import { STARTING_ACTION, type Action, type Hazard, type Part } from '../survey/parts.ts';
import type { Leak, Mending, Section, Survey } from '../survey/schema.ts';
import type { Assessment, LeakAssessment } from '../weigh/assessment.ts';
import type { Joule } from '../units/quantity.ts';
import type { Refusal } from '../units/result.ts';
import { cautionsForJob, headlineCautions, sectionCautions, type Caution } from './cautions.ts';
import { storedEnergy } from './stored-energy.ts';
import { costOfWaitingPerDay } from './waiting.ts';

/** One leak as work to be done. What is not known is absent, never zero. */
export interface FixJob {
	readonly leakId: string;
	readonly tag: number;
	readonly place?: string;
	readonly note?: string;
	readonly part: Part;
	readonly action: Action;
	readonly hazards: readonly Hazard[];
	readonly state: LeakState;
	/** Mended or tight in this round: shown, but no longer work. */
	readonly done: boolean;
	/** A pressure vessel, or anything to be taken out of service: first, whatever it costs. */
	readonly pinnedFirst: boolean;
	readonly freeAirM3PerS?: number;
	readonly energyKwhPerYear?: number;
	readonly costMinorPerYear?: number;
	readonly costOfWaitingMinorPerDay?: number;
	/** Why it could not be weighed; it must still be mended. */
	readonly unweighed?: Refusal;
	/** Never empty. */
	readonly cautions: readonly Caution[];
	/** What has been ticked in this round. */
	readonly ticks: Mending;
}

/** The jobs behind one isolating valve, or those whose valve is still to be found. */
export interface FixGroup {
	/** Absent: the leaks that belong to no section. Find the isolating valve first. */
	readonly section?: Section;
	readonly pressureBarGauge?: number;
	/** p·V of the air in the section, where its volume and pressure are known; METHOD P1. */
	readonly storedEnergyJ?: Joule;
	/** Of the jobs still to do that could be priced. */
	readonly costMinorPerYear?: number;
	readonly openCount: number;
	readonly cautions: readonly Caution[];
	readonly jobs: readonly FixJob[];
}

export interface FixList {
	readonly roundId: string;
	readonly currency: string;
	readonly headline: readonly Caution[];
	readonly openCount: number;
	readonly doneCount: number;
	readonly groups: readonly FixGroup[];
}

/**
 * Puts every leak of a round on the list of work, behind the valve that isolates it.
 * Groups and jobs stand worst first, and what must come first whatever it costs is ahead of them
 * (METHOD P3).
 * @param survey the site, its sections and leaks
 * @param assessment what the leaks waste; its round is the list's round
 */
export function fixList(survey: Survey, assessment: Assessment): FixList {
	const weighed = new Map(assessment.leaks.map((leak) => [leak.leakId, leak]));
	const refused = new Map(assessment.unweighed.map((leak) => [leak.leakId, leak.refusal]));
	const bySection = new Map<string | undefined, { section?: Section; jobs: FixJob[] }>();
	for (const leak of leaksInOrder(survey)) {
		const section = standing(find(survey.sections, leak.sectionId));
		const group = bySection.get(section?.id) ?? { ...(section && { section }), jobs: [] };
		group.jobs.push(
			fixJob(leak, section, assessment.roundId, weighed.get(leak.id), refused.get(leak.id))
		);
		bySection.set(section?.id, group);
	}
	const groups = [...bySection.values()]
		.map(({ section, jobs }) => fixGroup(survey, section, jobs))
		.sort(byUrgency);
	const jobs = groups.flatMap((group) => group.jobs);
	return {
		roundId: assessment.roundId,
		currency: assessment.currency,
		headline: headlineCautions(),
		openCount: jobs.filter((job) => !job.done).length,
		doneCount: jobs.filter((job) => job.done).length,
		groups
	};
}

function fixJob(
	leak: Leak,
	section: Section | undefined,
	roundId: string,
	weighed: LeakAssessment | undefined,
	unweighed: Refusal | undefined
): FixJob {
	const state = leakState(leak, roundId);
	const action = leak.action ?? STARTING_ACTION[leak.part];
	const cost = weighed?.costMinorPerYear;
	return {
		leakId: leak.id,
		tag: leak.tag,
		...(leak.place !== undefined && { place: leak.place }),
		...(leak.note !== undefined && { note: leak.note }),
		part: leak.part,
		action,
		hazards: leak.hazards,
		state,
		done: state === 'mended' || state === 'tight',
		pinnedFirst: leak.part === 'pressure-vessel' || action === 'out-of-service',
		...(weighed && { freeAirM3PerS: weighed.freeAirM3PerS }),
		...(weighed?.energyKwhPerYear !== undefined && { energyKwhPerYear: weighed.energyKwhPerYear }),
		...(cost !== undefined && {
			costMinorPerYear: cost,
			costOfWaitingMinorPerDay: costOfWaitingPerDay(cost)
		}),
		...(unweighed && { unweighed }),
		cautions: cautionsForJob(leak, section),
		ticks: mendingIn(leak, roundId) ?? {}
	};
}

function fixGroup(survey: Survey, section: Section | undefined, jobs: readonly FixJob[]): FixGroup {
	const open = jobs.filter((job) => !job.done);
	const costs = open.flatMap((job) => job.costMinorPerYear ?? []);
	const pressure = section && (section.pressureBarGauge ?? survey.supply.setPressureBarGauge);
	const energy =
		pressure !== undefined && section?.volumeL !== undefined
			? storedEnergy(pressure, section.volumeL)
			: undefined;
	return {
		...(section && { section }),
		...(pressure !== undefined && { pressureBarGauge: pressure }),
		...(energy?.ok && { storedEnergyJ: energy.value }),
		...(costs.length > 0 && { costMinorPerYear: costs.reduce((sum, cost) => sum + cost, 0) }),
		openCount: open.length,
		cautions: sectionCautions(section),
		jobs: [...jobs].sort(byWorth)
	};
}

/** Open before done, pinned first, dearest next; what has no price by its air, then by tag. */
function byWorth(a: FixJob, b: FixJob): number {
	return (
		Number(a.done) - Number(b.done) ||
		Number(b.pinnedFirst) - Number(a.pinnedFirst) ||
		(b.costMinorPerYear ?? -1) - (a.costMinorPerYear ?? -1) ||
		(b.freeAirM3PerS ?? -1) - (a.freeAirM3PerS ?? -1) ||
		a.tag - b.tag
	);
}

function byUrgency(a: FixGroup, b: FixGroup): number {
	return (
		Number(holdsPinned(b)) - Number(holdsPinned(a)) ||
		Number(a.section === undefined) - Number(b.section === undefined) ||
		(b.costMinorPerYear ?? -1) - (a.costMinorPerYear ?? -1) ||
		airLost(b) - airLost(a) ||
		lowestTag(a) - lowestTag(b)
	);
}

function holdsPinned(group: FixGroup): boolean {
	return group.jobs.some((job) => job.pinnedFirst && !job.done);
}

function airLost(group: FixGroup): number {
	return group.jobs.reduce((sum, job) => sum + (job.done ? 0 : (job.freeAirM3PerS ?? 0)), 0);
}

function lowestTag(group: FixGroup): number {
	return Math.min(...group.jobs.map((job) => job.tag));
}

function standing(section: Section | undefined): Section | undefined {
	return section?.removed ? undefined : section;
}
