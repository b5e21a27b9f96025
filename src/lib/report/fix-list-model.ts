import { minorDigits } from '../core/money/currency.ts';
import {
	depressuriseFirst,
	localRulesFirst,
	valveKnown,
	type Caution
} from '../core/mend/cautions.ts';
import {
	fixList,
	listOrder,
	type FixGroup,
	type FixJob,
	type FixListOrder
} from '../core/mend/fix-list.ts';
import { partsMinor } from '../core/mend/plan/planned-parts.ts';
import { windowsInOrder } from '../core/mend/plan/windows.ts';
import { roomFindings } from '../core/mend/room-findings.ts';
import { priorities, type Priority } from '../core/mend/priority.ts';
import { blobPath } from '../core/survey/blob-kinds.ts';
import { find } from '../core/survey/ids.ts';
import { hoursBetween } from '../core/survey/instants.ts';
import type { Survey } from '../core/survey/schema.ts';
import type { Assessment } from '../core/weigh/assessment.ts';
import { ACTION_WORDS, METHOD_WORDS, STATE_WORDS } from '../words/actions.ts';
import { cautionText } from '../words/cautions.ts';
import { documentLanguage } from '../words/document-language.ts';
import { fixList as words } from '../words/fix-list.ts';
import { SKILL_WORDS } from '../words/planning.ts';
import { HAZARD_WORDS, PART_WORDS } from '../words/parts.ts';
import { refusalSentence } from '../words/refusals.ts';
import { sourceWords } from '../words/sources.ts';
import { supplyWarningSentence } from '../words/supply-warnings.ts';
import type {
	CautionLine,
	JobGroup,
	JobPhoto,
	JobRow,
	JobValues,
	PinShape,
	PrintFormat,
	ReportModel,
	Step,
	Tick
} from './model.ts';
import { headline } from './headline.ts';
import { leakSpot } from './leak-spot.ts';
import { partsOfPlan, windowLine } from './parts-of-plan.ts';
import { pinOf, planPages, type PinToPrint } from './plan-pages.ts';
import { roomGroup, walkedLines } from './room-group.ts';

export interface FixListOptions {
	readonly format: PrintFormat;
	/** The instant of printing, ISO 8601. */
	readonly printedAt: string;
	/** What a part of the week is called in the warnings of the supply model; else its id. */
	readonly partName?: (partId: string) => string;
	/** By window when absent and jobs are planned, else by section. */
	readonly order?: FixListOrder;
}

/** Puts a survey's fix list into words and figures, ready for any kind of page. */
export function fixListModel(
	survey: Survey,
	assessment: Assessment,
	{ format, printedAt, partName = (partId) => partId, order = listOrder(survey) }: FixListOptions
): ReportModel {
	const list = fixList(survey, assessment, order);
	const jobs = list.groups.flatMap((group) => group.jobs);
	const urgency = priorities(jobs);
	const room = roomFindings(survey, list.roundId);
	const roomDone = room.filter(({ done }) => done).length;
	const openCount = list.openCount + room.length - roomDone;
	return {
		title: words.title,
		language: documentLanguage(),
		site: survey.site.name,
		round: find(survey.rounds, list.roundId)?.name ?? '',
		printedOn: format.date(printedAt),
		printedAt,
		currency: list.currency,
		figures: headline(assessment, openCount, list.doneCount + roomDone, format),
		method: methodLine(survey, assessment, format),
		notes: [
			...assessment.missing.map(refusalSentence),
			...new Set(
				assessment.warnings.map((warning) => supplyWarningSentence(warning, partName, format))
			)
		],
		band: line(depressuriseFirst()),
		closing: line(localRulesFirst()),
		cautions: list.headline.map(line),
		walked: walkedLines(survey, list.roundId, format),
		groups: [
			...list.groups.map((group) => ({
				...jobGroup(survey, group, urgency, format),
				...(order === 'window' && { window: windowLine(group.window, format) })
			})),
			...roomGroup(room, format)
		],
		windows: windowsInOrder(survey).map(
			({ id, name, startsAt, minutes, people, overnightOff }) => ({
				id,
				name,
				startsAt,
				minutes,
				people,
				overnightOff
			})
		),
		...partsOfPlan(survey, format),
		plans: planPages(survey, list.roundId, pinsOf(jobs))
	};
}

function methodLine(survey: Survey, { method }: Assessment, format: PrintFormat): string {
	const quick = method === 'quick' ? survey.supply.quick : undefined;
	const how = METHOD_WORDS[method];
	return quick
		? words.methodQuick(
				how,
				format.significant(quick.specificPowerKwPerM3PerMin),
				sourceWords(quick.source)
			)
		: words.method(how);
}

/** The order of the work on a section. */
const STEPS = ['isolated', 'locked', 'vented', 'zeroProved', 'restored'] as const;

function jobGroup(
	survey: Survey,
	group: FixGroup,
	urgency: ReadonlyMap<string, Priority>,
	format: PrintFormat
): JobGroup {
	const { section, pressureBarGauge: pressure, storedEnergyJ: energy, costMinorPerYear } = group;
	const known = valveKnown(section);
	return {
		heading: section?.name ?? words.noSection,
		valve: known ? section.valve : words.findValve,
		valveKnown: known,
		facts: [
			...(pressure === undefined ? [] : [words.pressure(format.pressure(pressure))]),
			...(energy === undefined || section?.volumeL === undefined
				? []
				: [words.stored(format.significant(energy / 1000), format.significant(section.volumeL))]),
			...(section?.note ? [section.note] : [])
		],
		...(group.withoutAirToo.length > 0 && {
			withoutAirToo: words.withoutAirToo(group.withoutAirToo.map(({ name }) => name).join(', '))
		}),
		jobCount: jobCount(group, format),
		costPerYear: costMinorPerYear === undefined ? '' : format.money(costMinorPerYear),
		steps: STEPS.map((step) => ({ step, label: words.steps[step], ticked: false })),
		cautions: group.cautions.map(line),
		rows: group.jobs.map((job) => jobRow(survey, job, urgency.get(job.leakId) ?? 'normal', format))
	};
}

function jobCount({ jobs, openCount }: FixGroup, format: PrintFormat): string {
	const first = jobs.filter((job) => shapeOf(job) === 'first').length;
	const [open, all] = [format.count(openCount), format.count(jobs.length)];
	return first === 0 ? words.toDo(open, all) : words.toDoFirst(open, all, format.count(first));
}

function jobRow(survey: Survey, job: FixJob, priority: Priority, format: PrintFormat): JobRow {
	const { costMinorPerYear: cost, costOfWaitingMinorPerDay: waiting, ticks } = job;
	const flag = job.done ? words.done : job.pinnedFirst ? words.first : undefined;
	const photo = photoOf(survey, job);
	const pin = pinOf(survey, job.leakId);
	return {
		leakId: job.leakId,
		...(job.windowId !== undefined && { windowId: job.windowId }),
		priority,
		...(photo && { photo }),
		...(pin && { spot: leakSpot(job.leakId, pin.plan, pin.at) }),
		tag: String(job.tag),
		shape: shapeOf(job),
		place: job.place ?? '',
		plan: pin?.plan.name ?? '',
		part: PART_WORDS[job.part],
		action: ACTION_WORDS[job.action],
		state: STATE_WORDS[job.state],
		...(flag && { flag }),
		hazards: job.hazards.map((hazard) => HAZARD_WORDS[hazard]),
		takes: takesWords(survey, job, format),
		...(!job.done &&
			ticks.mendedAt !== undefined && { again: words.mendedBefore(format.date(ticks.mendedAt)) }),
		costPerYear: cost === undefined ? '' : format.money(cost),
		costOfWaiting: waiting === undefined ? '' : smallMoney(waiting, format),
		...(job.unweighed && { why: refusalSentence(job.unweighed) }),
		...(job.note && { note: job.note }),
		...(ticks.couldNot && { couldNot: ticks.couldNot }),
		cautions: jobCautions(job),
		ticks: ticksOf(job),
		values: valuesOf(job, survey.site.currency)
	};
}

function takesWords(survey: Survey, { leakId, work }: FixJob, format: PrintFormat): string {
	const leak = find(survey.leaks, leakId);
	const parts = leak ? partsMinor(leak, survey) : 0;
	return [
		words.takes.minutes(format.count(work.minutes)),
		...(parts > 0 ? [words.takes.parts(format.money(parts))] : []),
		work.skillName ?? SKILL_WORDS[work.skill],
		...(work.cureHours > 0 ? [words.takes.cure(format.hours(work.cureHours))] : [])
	].join(' · ');
}

function jobCautions(job: FixJob): [CautionLine, ...CautionLine[]] {
	const [first, ...rest] = job.cautions;
	if (first === undefined) throw new RangeError(`job ${String(job.tag)} has no caution`);
	return [line(first), ...rest.map(line)];
}

function ticksOf({ ticks }: FixJob): Tick[] {
	const box = (step: Step, ticked: boolean) => ({ step, label: words.steps[step], ticked });
	return [
		box('isolated', ticks.isolated ?? false),
		box('vented', ticks.vented ?? false),
		box('zeroProved', ticks.zeroProved ?? false),
		box('mended', ticks.mendedAt !== undefined),
		box('reSoaped', ticks.reSoaped === 'tight')
	];
}

function valuesOf(job: FixJob, currency: string): JobValues {
	const digits = minorDigits(currency);
	const major = (minor: number) => minor / 10 ** (digits.ok ? digits.value : 2);
	const { mendedAt, reSoaped, minutes, couldNot } = job.ticks;
	return {
		...(job.freeAirM3PerS !== undefined && { freeAirM3PerS: job.freeAirM3PerS }),
		...(job.energyKwhPerYear !== undefined && { energyKwhPerYear: job.energyKwhPerYear }),
		...(job.costMinorPerYear !== undefined && { costPerYear: major(job.costMinorPerYear) }),
		...(job.costOfWaitingMinorPerDay !== undefined && {
			costOfWaitingPerDay: major(job.costOfWaitingMinorPerDay)
		}),
		...(mendedAt !== undefined && { mendedOn: mendedAt.slice(0, 10) }),
		...(reSoaped && { reSoaped }),
		...(minutes !== undefined && { minutes }),
		plannedMinutes: job.work.minutes,
		partsCost: job.work.partsCost,
		...(couldNot && { couldNot })
	};
}

/** The newest picture of the leak while it is to be mended, of the mending once that is done; else of either. */
function photoOf(survey: Survey, job: FixJob): JobPhoto | undefined {
	const photos = Object.values(find(survey.leaks, job.leakId)?.photos ?? {})
		.filter(({ removed }) => !removed)
		.sort((a, b) => hoursBetween(b.takenAt, a.takenAt));
	const wanted = job.done ? 'mending' : 'leak';
	const image = (photos.find(({ of }) => of === wanted) ?? photos[0])?.image;
	return (
		image && {
			sha256: image.sha256,
			path: blobPath(image),
			widthPx: image.widthPx,
			heightPx: image.heightPx
		}
	);
}

function pinsOf(jobs: readonly FixJob[]): PinToPrint[] {
	return jobs.map((job) => ({ leakId: job.leakId, tag: String(job.tag), shape: shapeOf(job) }));
}

function shapeOf(job: FixJob): PinShape {
	return job.done ? 'done' : job.pinnedFirst ? 'first' : 'open';
}

/** Less than the smallest coin is said to be so, not printed as nothing. */
function smallMoney(minor: number, format: PrintFormat): string {
	return minor > 0 && minor < 1 ? words.under(format.moneyExact(1)) : format.money(minor);
}

function line(caution: Caution): CautionLine {
	return { id: caution.id, text: cautionText(caution) };
}
