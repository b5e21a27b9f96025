import type { SiteSummary } from '#lib/storage/port.ts';
import type { Format } from '#lib/words/format.ts';

/** What the list shows of a site, in words. */
export function rowOf(
	{ name, counts, updatedAt, lastFile, commandCount }: SiteSummary,
	format: Format
) {
	const standing = [
		{ count: counts.leaking, word: 'leaking', always: counts.leaks > 0 },
		{ count: counts.mended, word: 'mended', always: false },
		{ count: counts.tight, word: 'tight', always: false }
	];
	return {
		name,
		leaks: format.count(counts.leaks),
		standing: standing
			.filter(({ count, always }) => always || count > 0)
			.map(({ count, word }) => `${format.count(count)} ${word}`),
		changed: format.moment(updatedAt),
		saved: {
			at: lastFile && format.moment(lastFile.at),
			stale: !lastFile || commandCount > lastFile.commandCount
		}
	};
}
