import type { DocumentLanguage } from '../words/document-language.ts';
import { fixList } from '../words/fix-list.ts';
import type { PlanPage, ReportModel } from './model.ts';
import { PLAN_FOOT, PLAN_HEAD, type PageEdges, type PlanLayout } from './plan-sheets.ts';

/** Running head and cautions above, what everything defers to below: as long as the language makes them. */
export const FIX_LIST_EDGES: Readonly<Record<DocumentLanguage, PageEdges>> = {
	'en-GB': {
		portrait: { top: 36.5 + PLAN_HEAD, bottom: 19 + PLAN_FOOT },
		landscape: { top: 31.5 + PLAN_HEAD, bottom: 15 + PLAN_FOOT }
	},
	de: {
		portrait: { top: 41.5 + PLAN_HEAD, bottom: 22.5 + PLAN_FOOT },
		landscape: { top: 36.5 + PLAN_HEAD, bottom: 19 + PLAN_FOOT }
	}
};

/** Says beside each job on which sheet of its plan its number stands. */
export function withSheets(
	model: ReportModel,
	plans: readonly { readonly plan: PlanPage; readonly layout: PlanLayout }[]
): ReportModel {
	const sheetOf = new Map(
		plans.flatMap(({ plan, layout }) =>
			plan.pins.map(({ leakId, tag }) => [leakId, layout.sheetOf.get(tag)] as const)
		)
	);
	return {
		...model,
		groups: model.groups.map((group) => ({
			...group,
			rows: group.rows.map((row) => {
				const name = row.leakId !== undefined && sheetOf.get(row.leakId);
				return name ? { ...row, plan: fixList.planSheet(row.plan, name) } : row;
			})
		}))
	};
}
