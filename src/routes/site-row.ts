import type { SiteSummary } from '#lib/storage/port.ts';
import type { Format } from '#lib/words/format.ts';
import { siteList } from '#lib/words/site-list.ts';

/** What the list shows of a site, in words. */
export function rowOf(
	{ name, counts, updatedAt, lastFile, commandCount }: SiteSummary,
	format: Format
) {
	const standing = [
		{ count: counts.leaking, say: siteList.standing.leaking, always: counts.leaks > 0 },
		{ count: counts.mended, say: siteList.standing.mended, always: false },
		{ count: counts.tight, say: siteList.standing.tight, always: false }
	];
	return {
		name,
		leaks: { count: counts.leaks, shown: format.count(counts.leaks) },
		standing: standing
			.filter(({ count, always }) => always || count > 0)
			.map(({ count, say }) => say(format.count(count))),
		changed: format.moment(updatedAt),
		saved: {
			at: lastFile && format.moment(lastFile.at),
			stale: !lastFile || commandCount > lastFile.commandCount
		}
	};
}
