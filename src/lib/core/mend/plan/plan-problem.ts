import { toMinor } from '../../money/currency.ts';
import { find } from '../../survey/ids.ts';
import { hoursBetween } from '../../survey/instants.ts';
import { leaksInOrder } from '../../survey/leak-state.ts';
import { knownLeak, roundsUntil } from '../../survey/standing.ts';
import type { Leak, ShutdownWindow, Survey } from '../../survey/schema.ts';
import { ok, refuse, type Result } from '../../units/result.ts';
import type { Assessment } from '../../weigh/assessment.ts';
import { comesFirst, jobWork, sectionMinutes, type JobWork } from '../jobs.ts';
import type { PlanJob, PlanProblem, PlanSection, PlanWindow } from './problem.ts';
import { settleMusts } from './musts.ts';
import { windowsInOrder } from './windows.ts';
import { meanOverMedian, savingUntilHorizon } from './worth.ts';

/** How far a plan looks when nobody says. @source our starting value; METHOD P5 */
export const STARTING_HORIZON_YEARS = 1;
/**
 * Hours that the air stays off after a window that may stay off overnight. METHOD P6.
 * @source our starting value
 */
const OVERNIGHT_HOURS = 12;
const HOURS_PER_YEAR = 8760;

/** Why a leak is in no window, before any plan was tried. */
export type NotAsked = 'left-out' | 'not-priced' | 'too-long' | 'cure';

/** A problem, and the leaks that it does not hold. */
export interface AskedPlan {
	readonly problem: PlanProblem;
	readonly notAsked: readonly { readonly leakId: string; readonly why: NotAsked }[];
	/** Jobs that were to come first or always, and for which no room was found together with the others. */
	readonly noRoom: readonly string[];
}

/**
 * Makes the planning problem of a survey: what each repair is worth in each window, and what it takes.
 * METHOD P5, P6.
 * @returns a refusal `plan-without-windows` or `plan-without-jobs` when there is nothing to plan
 */
export function planProblem(survey: Survey, assessment: Assessment): Result<AskedPlan> {
	const shutdowns = windowsInOrder(survey);
	const first = shutdowns[0];
	if (!first) return refuse('plan-without-windows');
	const currency = survey.site.currency;
	const windows: PlanWindow[] = [];
	for (const window of shutdowns) {
		const cost = toMinor((window.downtimeCostPerHour ?? 0) * (window.minutes / 60), currency);
		if (!cost.ok) return cost;
		const { id, minutes, people } = window;
		windows.push({ id, minutes, personMinutes: minutes * people, costMinor: cost.value });
	}
	const plan = survey.mendPlan ?? {};
	const horizonHours = (plan.horizonYears ?? STARTING_HORIZON_YEARS) * HOURS_PER_YEAR;
	const hoursLeft = shutdowns.map(
		({ startsAt, minutes }) => horizonHours - hoursBetween(first.startsAt, startsAt) - minutes / 60
	);

	const weighed = new Map(assessment.leaks.map((leak) => [leak.leakId, leak]));
	const sections = new Sections(survey);
	const roundIds = roundsUntil(survey, assessment.roundId);
	const notAsked: AskedPlan['notAsked'][number][] = [];
	const jobs: (PlanJob & { readonly first: boolean })[] = [];
	for (const leak of leaksInOrder(survey)) {
		if (knownLeak(leak, roundIds).state !== 'leaking') continue;
		const work = jobWork(leak, survey);
		const leaving = (why: NotAsked) => notAsked.push({ leakId: leak.id, why });
		const cost = weighed.get(leak.id)?.costMinorPerYear;
		const comes = comesFirst(leak);
		const must = comes || work.wish === 'always';
		if (work.wish === 'never' && !comes) leaving('left-out');
		else if (cost === undefined && !must) leaving('not-priced');
		else {
			const parts = toMinor(work.partsCost, currency);
			if (!parts.ok) return parts;
			const fixed = work.ventFirst ? sections.minutesOf(leak) : 0;
			const fits = whereItFits(shutdowns, work, fixed);
			if (!fits.allowed.includes(true)) {
				leaving(fits.withoutCure ? 'cure' : 'too-long');
				continue;
			}
			const u = weighed.get(leak.id)?.relativeUncertainty ?? 0;
			const factor = (plan.expected ?? true) ? meanOverMedian(u) : 1;
			const off = (plan.lessParts ?? true) ? parts.value : 0;
			jobs.push({
				leakId: leak.id,
				...(work.ventFirst && { section: sections.placeOf(leak) }),
				minutes: work.minutes,
				budgetMinor: parts.value,
				worthMinor: hoursLeft.map((hours) => savingUntilHorizon(cost ?? 0, factor, hours) - off),
				allowed: fits.allowed,
				must,
				first: comes
			});
		}
	}
	if (jobs.length === 0) return refuse('plan-without-jobs');
	const budget = plan.budget === undefined ? undefined : toMinor(plan.budget, currency);
	if (budget && !budget.ok) return budget;
	return ok({
		notAsked,
		...settleMusts({ windows, sections: sections.list, jobs }, budget?.value)
	});
}

function whereItFits(
	windows: readonly ShutdownWindow[],
	{ minutes, cureHours }: JobWork,
	fixed: number
) {
	const alone = minutes + fixed;
	const overnight = ({ overnightOff }: ShutdownWindow) => (overnightOff ? OVERNIGHT_HOURS * 60 : 0);
	return {
		allowed: windows.map(
			(window) =>
				alone <= window.minutes && alone + cureHours * 60 <= window.minutes + overnight(window)
		),
		withoutCure: windows.some((window) => alone <= window.minutes)
	};
}

/** The sections of a problem. A leak without a section is shut alone: its valve is still to be found. */
class Sections {
	readonly list: PlanSection[] = [];
	readonly #survey: Survey;
	readonly #places = new Map<string, number>();

	constructor(survey: Survey) {
		this.#survey = survey;
	}

	placeOf(leak: Leak): number {
		const section = this.#sectionOf(leak);
		const id = section?.id ?? leak.id;
		const known = this.#places.get(id);
		if (known !== undefined) return known;
		this.#places.set(id, this.list.length);
		return this.list.push({ id, minutes: sectionMinutes(section) }) - 1;
	}

	minutesOf(leak: Leak): number {
		return sectionMinutes(this.#sectionOf(leak));
	}

	#sectionOf(leak: Leak) {
		const section = find(this.#survey.sections, leak.sectionId);
		return section?.removed ? undefined : section;
	}
}
