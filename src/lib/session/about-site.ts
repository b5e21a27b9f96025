import { latestRound, leaksInOrder } from '#lib/core/survey/leak-state.ts';
import { knownLeak, roundsUntil } from '#lib/core/survey/standing.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import type { SiteBatch } from '#lib/storage/port.ts';

/** What the list of sites shows of a survey. */
export function aboutSite(survey: Survey, updatedAt: string): SiteBatch['about'] {
	const round = latestRound(survey);
	const leaks = leaksInOrder(survey);
	const rounds = round ? roundsUntil(survey, round.id) : [];
	const states = leaks.map((leak) => knownLeak(leak, rounds).state);
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
