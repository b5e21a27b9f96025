import { withoutAirToo } from '../survey/feeding.ts';
import { find } from '../survey/ids.ts';
import { leaksInOrder, mendingIn, type LeakState } from '../survey/leak-state.ts';
import { STARTING_ACTION, type Action, type Hazard, type Part } from '../survey/parts.ts';
import type { Leak, Mending, Section, ShutdownWindow, Survey } from '../survey/schema.ts';
import { knownLeak, roundsUntil } from '../survey/standing.ts';
import type { Assessment, LeakAssessment } from '../weigh/assessment.ts';
import type { Joule } from '../units/quantity.ts';
import type { Refusal } from '../units/result.ts';
import { cautionsForJob, headlineCautions, sectionCautions, type Caution } from './cautions.ts';
import { comesFirst, jobWork, type JobWork } from './jobs.ts';
import { stopsOfWindow } from './plan/stops.ts';
import { plannedWindows, windowsInOrder } from './plan/windows.ts';
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
	/** Mended or tight in this round, or before it and not looked at since: shown, but no longer work. */
	readonly done: boolean;
	/** A pressure vessel, or anything to be taken out of service: first, whatever it costs. */
	readonly pinnedFirst: boolean;
	readonly freeAirM3PerS?: number;
	readonly energyKwhPerYear?: number;
	readonly costMinorPerYear?: number;
	readonly costOfWaitingMinorPerDay?: number;
	/** What it takes: minutes, parts, cure. */
	readonly work: JobWork;
	/** The window that it is planned into. */
	readonly windowId?: string;
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
	/** When the list goes by windows: the one that these jobs are planned into. */
	readonly window?: ShutdownWindow;
	readonly pressureBarGauge?: number;
	/** p·V of the air in the section, where its volume and pressure are known; METHOD P1. */
	readonly storedEnergyJ?: Joule;
	/** Sections that lose their air with this one, where it was said what feeds them. */
	readonly withoutAirToo: readonly Section[];
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

/** How the list is laid out: by valve, worst first; or by the windows of the plan, in walking order. */
export type FixListOrder = 'section' | 'window';

/** By windows as soon as a job is planned into one. */
export function listOrder(survey: Survey): FixListOrder {
	return plannedWindows(survey).size > 0 ? 'window' : 'section';
}

/**
 * Puts every leak of a round on the list of work, behind the valve that isolates it.
 * Groups and jobs stand worst first, and what must come first whatever it costs is ahead of them
 * (METHOD P3). By windows, each window's sections and jobs stand in the order of the walk (METHOD P8); what
 * is in no window follows, unless it must come first.
 * @param survey the site, its sections and leaks
 * @param assessment what the leaks waste; its round is the list's round
 */
export function fixList(
	survey: Survey,
	assessment: Assessment,
	order: FixListOrder = 'section'
): FixList {
	const weighed = new Map(assessment.leaks.map((leak) => [leak.leakId, leak]));
	const refused = new Map(assessment.unweighed.map((leak) => [leak.leakId, leak.refusal]));
	const planned = plannedWindows(survey);
	const roundIds = roundsUntil(survey, assessment.roundId);
	const all = leaksInOrder(survey).map((leak) => {
		const section = standing(find(survey.sections, leak.sectionId));
		const windowId = planned.get(leak.id);
		const job = fixJob(survey, leak, section, roundIds, weighed.get(leak.id), refused.get(leak.id));
		return { section, job: windowId === undefined ? job : { ...job, windowId } };
	});
	const groups =
		order === 'window' ? groupsByWindow(survey, all) : groupsBySection(survey, all).sort(byUrgency);
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

interface Placed {
	readonly section: Section | undefined;
	readonly job: FixJob;
}

function groupsBySection(survey: Survey, all: readonly Placed[]): FixGroup[] {
	const bySection = new Map<string | undefined, { section?: Section; jobs: FixJob[] }>();
	for (const { section, job } of all) {
		const group = bySection.get(section?.id) ?? { ...(section && { section }), jobs: [] };
		group.jobs.push(job);
		bySection.set(section?.id, group);
	}
	return [...bySection.values()].map(({ section, jobs }) => fixGroup(survey, section, jobs));
}

function groupsByWindow(survey: Survey, all: readonly Placed[]): FixGroup[] {
	const windows = windowsInOrder(survey).flatMap((window) => {
		const members = all.filter(({ job }) => job.windowId === window.id);
		const byId = new Map(members.map((placed) => [placed.job.leakId, placed]));
		return stopsOfWindow(survey, [...byId.keys()]).map(({ leakIds }) => {
			const placed = leakIds.flatMap((leakId) => byId.get(leakId) ?? []);
			const jobs = placed.map(({ job }) => job);
			return { ...fixGroup(survey, placed[0]?.section, jobs), jobs, window };
		});
	});
	const rest = groupsBySection(
		survey,
		all.filter(({ job }) => job.windowId === undefined)
	).sort(byUrgency);
	return [...rest.filter(holdsPinned), ...windows, ...rest.filter((group) => !holdsPinned(group))];
}

function fixJob(
	survey: Survey,
	leak: Leak,
	section: Section | undefined,
	roundIds: readonly string[],
	weighed: LeakAssessment | undefined,
	unweighed: Refusal | undefined
): FixJob {
	const roundId = roundIds.at(-1) ?? '';
	const { state } = knownLeak(leak, roundIds);
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
		pinnedFirst: comesFirst(leak),
		...(weighed && { freeAirM3PerS: weighed.freeAirM3PerS }),
		...(weighed?.energyKwhPerYear !== undefined && { energyKwhPerYear: weighed.energyKwhPerYear }),
		...(cost !== undefined && {
			costMinorPerYear: cost,
			costOfWaitingMinorPerDay: costOfWaitingPerDay(cost)
		}),
		work: jobWork(leak, survey),
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
		withoutAirToo: section ? withoutAirToo(survey, section.id) : [],
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
