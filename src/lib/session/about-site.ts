import { latestRound, leaksInOrder, leakState } from '#lib/core/survey/leak-state.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import type { SiteBatch } from '#lib/storage/port.ts';

/** What the list of sites shows of a survey. */
export function aboutSite(survey: Survey, updatedAt: string): SiteBatch['about'] {
	const round = latestRound(survey);
	const leaks = leaksInOrder(survey);
	const states = leaks.map((leak) => (round ? leakState(leak, round.id) : 'unseen'));
	const count = (wanted: string): number => states.filter((state) => state === wanted).length;
	return {
		name: survey.site.name,
		currency: survey.site.currency,
		roundName: round?.name,
		counts: {
			leaks: leaks.length,
			leaking: count('leaking'),
			mended: count('mended'),
			tight: count('tight')
		},
		updatedAt
	};
}
