import { cutSmall, openPlanToPrint, type PlanToPrint } from '#lib/plan/plan-print.ts';
import { FIX_LIST_EDGES } from '#lib/report/fix-list-sheets.ts';
import type { JobSpot, PlanPage, ReportModel } from '#lib/report/model.ts';
import { planSheets, type PageEdges } from '#lib/report/plan-sheets.ts';
import type { OpenSurvey } from '#lib/session/open-survey.svelte.ts';
import type { Paper } from '#lib/ui/mend/making.ts';
import { fixList } from '#lib/words/fix-list.ts';

export interface Picture {
	readonly bytes: Uint8Array;
	readonly kind: 'JPEG';
}

/** The pictures that the plans of a report are printed from. */
interface PlanPictures {
	/** By the key of the sheet. */
	readonly sheets: ReadonlyMap<string, Picture>;
	/** By the key of the spot. */
	readonly spots: ReadonlyMap<string, Picture>;
	/** Names of the plans that could not be drawn. */
	readonly missing: readonly string[];
}

/** How long a side of the cut beside a job is: 22 mm at some 250 dots to the inch. */
const SPOT_PX = 216;

/** Draws the plans of a fix list from what they were made from, as finely as the paper shows. */
export async function cutPlans(
	open: OpenSurvey,
	{ plans, groups, language }: ReportModel,
	paper: Paper,
	stop: AbortSignal,
	tell: (doing: string, done: number) => void
): Promise<PlanPictures> {
	const spots = new Map<string, Picture>();
	const jobSpots = groups.flatMap(({ rows }) => rows.flatMap(({ spot }) => (spot ? [spot] : [])));
	const { sheets, missing } = await cutSheets(
		open,
		plans,
		paper,
		FIX_LIST_EDGES[language],
		stop,
		tell,
		async (plan, page) => {
			const here = jobSpots.filter(({ planId }) => planId === page.planId);
			return cutSpots(plan, page, here, stop, spots);
		}
	);
	return { sheets, spots, missing };
}

/** Draws the sheets of some plans; `more` is done with each while it is open. */
export async function cutSheets(
	open: OpenSurvey,
	plans: readonly PlanPage[],
	paper: Paper,
	edges: PageEdges,
	stop: AbortSignal,
	tell: (doing: string, done: number) => void,
	more?: (plan: PlanToPrint, page: PlanPage) => Promise<boolean>
): Promise<Omit<PlanPictures, 'spots'>> {
	const sheets = new Map<string, Picture>();
	const missing: string[] = [];
	for (const [index, page] of plans.entries()) {
		const plan = open.survey.plans[page.planId];
		const opened =
			plan && (await openPlanToPrint(plan, async (sha256) => (await open.blob(sha256))?.bytes));
		if (!opened?.ok) {
			missing.push(page.name);
			continue;
		}
		const { overview, sheets: each } = planSheets(page, paper, edges);
		const wanted = overview ? [overview, ...each] : each;
		let whole = true;
		for (const [turn, { key, part, picture }] of wanted.entries()) {
			if (stop.aborted) break;
			tell(fixList.doing.plan(page.name), (index + turn / wanted.length) / plans.length);
			if (sheets.has(key)) continue;
			const jpeg = await opened.value.cut(part, picture);
			if (jpeg.ok) sheets.set(key, { bytes: jpeg.value, kind: 'JPEG' });
			else whole = false;
		}
		if (more && !stop.aborted && !(await more(opened.value, page))) whole = false;
		if (!whole) missing.push(page.name);
		opened.value.close();
	}
	return { sheets, missing };
}

async function cutSpots(
	plan: PlanToPrint,
	page: PlanPage,
	here: readonly JobSpot[],
	stop: AbortSignal,
	spots: Map<string, Picture>
): Promise<boolean> {
	if (here.length === 0) return true;
	const cut = await cutSmall(
		plan,
		page,
		here.map(({ part }) => part),
		SPOT_PX,
		(index, bytes) => {
			const spot = here[index];
			if (spot) spots.set(spot.key, { bytes, kind: 'JPEG' });
			return !stop.aborted;
		}
	);
	return cut.ok;
}
