import type { cautions } from './en/cautions.ts';
import type { charts } from './en/charts.ts';
import type { compressorRoom } from './en/compressor-room.ts';
import type { controls } from './en/controls.ts';
import type { doubts } from './en/doubts.ts';
import type { files } from './en/files.ts';
import type { fixList } from './en/fix-list.ts';
import type { frame } from './en/frame.ts';
import type { helpLink } from './en/help-link.ts';
import type { help } from './en/help.ts';
import type { leak } from './en/leak.ts';
import type { mend } from './en/mend.ts';
import type { mendPlan } from './en/mend-plan.ts';
import type { mending } from './en/mending.ts';
import type { method } from './en/method.ts';
import type { photos } from './en/photos.ts';
import type { planDesk } from './en/plan-desk.ts';
import type { planMap } from './en/plan-map.ts';
import type { proof } from './en/proof.ts';
import type { refusalParts } from './en/refusal-parts.ts';
import type { refusals } from './en/refusals.ts';
import type { savingsReport } from './en/savings-report.ts';
import type { setUp } from './en/set-up.ts';
import type { siteList } from './en/site-list.ts';
import type { sources } from './en/sources.ts';
import type { steps } from './en/steps.ts';
import type { sums } from './en/sums.ts';
import type { supply } from './en/supply.ts';
import type { systemCheck } from './en/system-check.ts';
import type { tag } from './en/tag.ts';
import type { underway } from './en/underway.ts';
import type { walk } from './en/walk.ts';
import type { weigh } from './en/weigh.ts';

/**
 * All words of the app, room by room. English is the shape: another language satisfies this type, so
 * the compiler names each word that it lacks, has too many of, or fills with other values.
 */
export interface Catalogue {
	readonly cautions: typeof cautions;
	readonly charts: typeof charts;
	readonly compressorRoom: typeof compressorRoom;
	readonly controls: typeof controls;
	readonly doubts: typeof doubts;
	readonly files: typeof files;
	readonly fixList: typeof fixList;
	readonly frame: typeof frame;
	readonly helpLink: typeof helpLink;
	readonly help: typeof help;
	readonly leak: typeof leak;
	readonly mend: typeof mend;
	readonly mendPlan: typeof mendPlan;
	readonly mending: typeof mending;
	readonly method: typeof method;
	readonly photos: typeof photos;
	readonly planDesk: typeof planDesk;
	readonly planMap: typeof planMap;
	readonly proof: typeof proof;
	readonly refusalParts: typeof refusalParts;
	readonly refusals: typeof refusals;
	readonly savingsReport: typeof savingsReport;
	readonly setUp: typeof setUp;
	readonly siteList: typeof siteList;
	readonly sources: typeof sources;
	readonly steps: typeof steps;
	readonly sums: typeof sums;
	readonly supply: typeof supply;
	readonly systemCheck: typeof systemCheck;
	readonly tag: typeof tag;
	readonly underway: typeof underway;
	readonly walk: typeof walk;
	readonly weigh: typeof weigh;
}
