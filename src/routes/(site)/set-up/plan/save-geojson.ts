import type { Plan } from '#lib/core/survey/schema.ts';
import { refusalSentence } from '#lib/words/refusals.ts';
import { fileStem, handOut } from '../../download.ts';
import type { SiteContext } from '../../site-context.ts';

/**
 * Offers what is on a plan as GeoJSON in local metres, under a name that says so.
 * @returns why it could not be, in words
 */
export async function saveGeoJson(
	{ open, assessment }: SiteContext,
	plan: Plan
): Promise<string | undefined> {
	const { geoJsonText, LOCAL_METRES, planGeoJson } = await import('#lib/report/plan-geojson.ts');
	const made = planGeoJson(open.survey, assessment, plan);
	if (!made.ok) return refusalSentence(made.error);
	const name = `${fileStem(open.survey.site.name)}-${fileStem(plan.name)}-${LOCAL_METRES}.geojson`;
	handOut(new File([geoJsonText(made.value)], name, { type: 'application/geo+json' }), name);
	return undefined;
}
