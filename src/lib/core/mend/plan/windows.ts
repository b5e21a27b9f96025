import { find } from '../../survey/ids.ts';
import { hoursBetween } from '../../survey/instants.ts';
import type { ShutdownWindow, Survey } from '../../survey/schema.ts';

/** The windows of a survey by their start. */
export function windowsInOrder(survey: Survey): ShutdownWindow[] {
	return Object.values(survey.windows ?? {})
		.filter(({ removed }) => !removed)
		.sort((a, b) => hoursBetween(b.startsAt, a.startsAt) || (a.id < b.id ? -1 : 1));
}

/** Window by leak, as the survey's plan has it; leaks and windows that are gone are left out. */
export function plannedWindows(survey: Survey): ReadonlyMap<string, string> {
	return new Map(
		Object.entries(survey.mendPlan?.windows ?? {}).filter(([leakId, windowId]) => {
			const window = find(survey.windows ?? {}, windowId);
			const leak = find(survey.leaks, leakId);
			return leak && !leak.removed && window && !window.removed;
		})
	);
}
