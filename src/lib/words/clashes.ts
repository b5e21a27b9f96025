import type { Clash } from '#lib/core/survey/clashes.ts';
import { files } from './files.ts';
import type { Format } from './format.ts';

const nouns: Readonly<Record<string, string>> = files.nouns;
const fields: Readonly<Record<string, string>> = files.fields;

/** What two copies changed each in its own way, in a sentence: which value stays and which does not. */
export function clashSentence(clash: Clash, count: Format['count']): string {
	const { noun, name, field, kept, lost, lostFrom } = clash;
	const thing = files.thing(nouns[noun] ?? noun, name);
	/** Where what stays comes from. */
	const from = lostFrom === 'here' ? 'file' : 'here';
	if (field === 'removed')
		return kept === true ? files.staysRemoved[from](thing) : files.staysInUse[from](thing);
	const [first = field] = field.split(' ');
	const what = fields[first] ?? files.field(first);
	const [keptText, lostText] = [shownValue(kept, count), shownValue(lost, count)];
	return keptText === lostText
		? files.staysFrom[from](thing, what, files.oneValue, files.another)
		: files.staysFrom[from](thing, what, keptText, lostText);
}

function shownValue(value: unknown, count: Format['count']): string {
	if (value === null || value === undefined) return files.nothing;
	if (typeof value === 'string')
		return files.quoted(value.length > 80 ? `${value.slice(0, 80)} …` : value);
	if (typeof value === 'number') return Number.isInteger(value) ? count(value) : String(value);
	if (typeof value === 'boolean') return value ? files.yes : files.no;
	return files.theOne;
}
