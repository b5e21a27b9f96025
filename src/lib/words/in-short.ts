import type { Caution } from '#lib/core/mend/cautions.ts';
import { cautionText } from './cautions.ts';
import { mend } from './mend.ts';

const inShort: Readonly<Record<string, string>> = mend.inShort;

/** What a caution is about; a caution without short words is said whole, never left out. */
export function cautionInShort(caution: Pick<Caution, 'id' | 'text'>): string {
	return inShort[caution.id] ?? cautionText(caution);
}
