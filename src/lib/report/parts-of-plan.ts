import { plannedParts } from '../core/mend/plan/planned-parts.ts';
import { find } from '../core/survey/ids.ts';
import type { ShutdownWindow, Survey } from '../core/survey/schema.ts';
import { fixList as words } from '../words/fix-list.ts';
import { spendingWords } from '../words/planning.ts';
import type { PrintFormat, ReportModel } from './model.ts';

/** The parts of the plan beside its budget; nothing while no job is in a window. METHOD P11. */
export function partsOfPlan(survey: Survey, format: PrintFormat): Pick<ReportModel, 'parts'> {
	const { windows, ...spending } = plannedParts(survey);
	if (!windows.some(({ jobCount }) => jobCount > 0)) return {};
	return {
		parts: {
			rows: windows.map(({ windowId, jobCount, partsMinor }) => ({
				window: windowLine(find(survey.windows ?? {}, windowId), format),
				jobs: format.count(jobCount),
				parts: format.money(partsMinor)
			})),
			sum: `${spendingWords(spending, format)}.`
		}
	};
}

/** Which window, and when. */
export function windowLine(window: ShutdownWindow | undefined, format: PrintFormat): string {
	if (!window) return words.noWindow;
	const [starts, minutes] = [format.moment(window.startsAt), format.count(window.minutes)];
	return window.name.trim() === ''
		? words.unnamed(starts, minutes)
		: words.window(window.name, starts, minutes);
}
