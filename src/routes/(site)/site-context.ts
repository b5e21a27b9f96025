import { createContext } from 'svelte';
import type { Assessment } from '#lib/core/weigh/assessment.ts';
import type { OpenSurvey } from '#lib/session/open-survey.svelte.ts';
import type { Format } from '#lib/words/format.ts';

/** What every place of a site works with; the members are live, so read them where they are used. */
export interface SiteContext {
	readonly open: OpenSurvey;
	readonly format: Format;
	/** What the leaks of the latest round waste now. */
	readonly assessment: Assessment;
}

export const [getSite, setSite] = createContext<SiteContext>();
