import type { Priority } from '../core/mend/priority.ts';
import type { PlanArea, PlanFlow, PlanMark } from '../core/survey/plan-shapes.ts';
import type { PlanPoint } from '../core/survey/schema.ts';
import type { DocumentLanguage } from '../words/document-language.ts';
import type { Format } from '../words/format.ts';
import type { SureFormat } from '../words/sure.ts';
import type { Box } from './paper.ts';

/** What a report needs of a `Format`; numbers become text here, once, for every kind of output. */
export type PrintFormat = Pick<
	Format,
	| 'money'
	| 'moneyExact'
	| 'energy'
	| 'flow'
	| 'pressure'
	| 'hours'
	| 'carbon'
	| 'significant'
	| 'count'
	| 'percent'
	| 'date'
	| 'moment'
> &
	SureFormat;

/** A caution as it is printed: its METHOD id and its whole text. */
export interface CautionLine {
	readonly id: string;
	readonly text: string;
}

/** One figure of the headline. */
export interface Figure {
	readonly label: string;
	readonly value: string;
	readonly note?: string;
	/** Of what it is a total, where its interval can be told. */
	readonly of?: 'flow' | 'energy' | 'money';
}

/** What a box is for, whatever the reader's language calls it. */
export type Step =
	| 'isolated'
	| 'locked'
	| 'vented'
	| 'zeroProved'
	| 'restored'
	| 'mainsLocked'
	| 'lockedOff'
	| 'cooled'
	| 'mended'
	| 'reSoaped'
	| 'putRight';

/** A box to tick by hand, or one that was ticked on the screen already. */
export interface Tick {
	readonly step: Step;
	readonly label: string;
	readonly ticked: boolean;
}

/** How a pin looks: work to do, work that comes first whatever it costs, or work that is done. */
export type PinShape = 'open' | 'first' | 'done';

export interface PlanPin {
	readonly leakId: string;
	readonly tag: string;
	readonly shape: PinShape;
	/** Shares of the plan's width and height, y downwards. */
	readonly x: number;
	readonly y: number;
}

export interface PlanPage {
	readonly planId: string;
	readonly name: string;
	readonly sha256: string;
	readonly widthPx: number;
	readonly heightPx: number;
	/** How many metres the plan is wide, where its scale is known. */
	readonly widthM?: number;
	/** Degrees clockwise from the top of the plan to north, where that is known. */
	readonly northDegrees?: number;
	readonly areas: readonly PlanArea[];
	readonly valves: readonly PlanMark[];
	/** The ways of the air into the sections. */
	readonly flows: readonly PlanFlow[];
	readonly pins: readonly PlanPin[];
}

/** Plain values of a job, for spreadsheets: SI or major units of money, dates as ISO days. */
export interface JobValues {
	readonly freeAirM3PerS?: number;
	readonly energyKwhPerYear?: number;
	readonly costPerYear?: number;
	readonly costOfWaitingPerDay?: number;
	readonly mendedOn?: string;
	readonly reSoaped?: 'tight' | 'still-leaking';
	readonly minutes?: number;
	/** What it is reckoned to take, where `minutes` is what it took. */
	readonly plannedMinutes?: number;
	/** Major units. */
	readonly partsCost?: number;
	readonly couldNot?: string;
}

/** The picture of a job, as it is named in the survey and drawn beside it. */
export interface JobPhoto {
	readonly sha256: string;
	/** What it is called in the survey file, and in a pack of work orders. */
	readonly path: string;
	readonly widthPx: number;
	readonly heightPx: number;
}

/** Where a job is on its plan: a small cut of it, and the leak in that. */
export interface JobSpot {
	/** Names its picture among those of the jobs. */
	readonly key: string;
	readonly planId: string;
	/** In shares of the plan. */
	readonly part: Box;
	/** In shares of the cut. */
	readonly at: PlanPoint;
}

/** A time when air can be off, as a calendar needs it. */
export interface ReportWindow {
	readonly id: string;
	readonly name: string;
	/** ISO instant. */
	readonly startsAt: string;
	readonly minutes: number;
	readonly people: number;
	readonly overnightOff: boolean;
}

export interface JobRow {
	/** The leak's own name in the survey; absent for findings of the compressor room. */
	readonly leakId?: string;
	/** The window that it is planned into. */
	readonly windowId?: string;
	readonly priority: Priority;
	readonly photo?: JobPhoto;
	readonly spot?: JobSpot;
	/** The tag on the leak; `R1` and so on for findings of the compressor room. */
	readonly tag: string;
	readonly shape: PinShape;
	readonly place: string;
	/** Name of the plan that its pin is on; empty when it is on none. */
	readonly plan: string;
	readonly part: string;
	readonly action: string;
	readonly state: string;
	/** Shown large where there is something to shout, e.g. "Do this first". */
	readonly flag?: string;
	readonly hazards: readonly string[];
	/** Minutes, parts, cure and who does it; empty for findings of the compressor room. */
	readonly takes: string;
	/** That it was mended before and leaks again or still. */
	readonly again?: string;
	/** Empty when it could not be priced; `why` then says why. */
	readonly costPerYear: string;
	readonly costOfWaiting: string;
	readonly why?: string;
	readonly note?: string;
	readonly couldNot?: string;
	/** Never empty: no row can be made without its cautions. */
	readonly cautions: readonly [CautionLine, ...CautionLine[]];
	readonly ticks: readonly Tick[];
	readonly values: JobValues;
}

export interface JobGroup {
	readonly heading: string;
	/** When the list goes by windows: which one, or that these jobs are in none. */
	readonly window?: string;
	/** The valve to close, or that it is still to be found. */
	readonly valve: string;
	readonly valveKnown: boolean;
	readonly facts: readonly string[];
	/** Which sections lose their air while the valve is shut, as a sentence; where that is known. */
	readonly withoutAirToo?: string;
	readonly jobCount: string;
	readonly costPerYear: string;
	readonly steps: readonly Tick[];
	readonly cautions: readonly CautionLine[];
	readonly rows: readonly JobRow[];
}

/** What a plan's parts cost: by window, and in all against the budget. */
export interface ReportParts {
	readonly rows: readonly {
		readonly window: string;
		readonly jobs: string;
		readonly parts: string;
	}[];
	readonly sum: string;
}

/**
 * The boxes of a job on paper. What is still to do begins with empty ones: that a line was isolated and vented on
 * another day says nothing of the air in it now.
 */
export function boxesOnPaper({ shape, ticks }: JobRow): readonly Tick[] {
	return shape === 'done' ? ticks : ticks.map((tick) => ({ ...tick, ticked: false }));
}

/** A report as plain data: every number is text already, and every sentence is whole. */
export interface ReportModel {
	readonly title: string;
	/** BCP 47, of the words. */
	readonly language: DocumentLanguage;
	readonly site: string;
	readonly round: string;
	readonly printedOn: string;
	/** ISO instant, for the file's own record. */
	readonly printedAt: string;
	readonly currency: string;
	readonly figures: readonly Figure[];
	readonly method: string;
	readonly notes: readonly string[];
	/** On every page, whole. */
	readonly band: CautionLine;
	/** At the foot of every page, whole. */
	readonly closing: CautionLine;
	readonly cautions: readonly CautionLine[];
	/** What was and was not walked. */
	readonly walked: readonly string[];
	readonly groups: readonly JobGroup[];
	/** By their start. */
	readonly windows: readonly ReportWindow[];
	/** Where jobs are planned into windows. */
	readonly parts?: ReportParts;
	readonly plans: readonly PlanPage[];
}

/** Every text of a report that came from the survey or the words, for the check of glyphs. */
export function textsOf(model: object): string[] {
	const texts: string[] = [];
	const gather = (value: unknown): void => {
		if (typeof value === 'string') texts.push(value);
		else if (typeof value === 'object' && value !== null) Object.values(value).forEach(gather);
	};
	gather(model);
	return texts;
}
