import type { PlanPage, ReportModel } from './model.ts';
import { PLAN_FOOT, PLAN_HEAD, type PageEdges, type PlanLayout } from './plan-sheets.ts';

/** Running head and cautions above, what everything defers to below: the same on every fix list. */
export const FIX_LIST_EDGES: PageEdges = {
	portrait: { top: 36.5 + PLAN_HEAD, bottom: 19 + PLAN_FOOT },
	landscape: { top: 31.5 + PLAN_HEAD, bottom: 15 + PLAN_FOOT }
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
				return name ? { ...row, plan: `${row.plan}, sheet ${name}` } : row;
			})
		}))
	};
}
