import type { Clash } from '#lib/core/survey/clashes.ts';
import type { Format } from './format.ts';

const NOUNS: Readonly<Record<string, string>> = {
	leak: 'Leak',
	plan: 'Floor plan',
	section: 'Section',
	round: 'Round',
	'system-test': 'System test',
	area: 'Area',
	'room-check': 'Check in the compressor room',
	window: 'Shutdown',
	adjustment: 'Adjustment',
	photo: 'A photo',
	site: 'The site',
	supply: 'The supply',
	prices: 'The prices',
	'starting-values': 'The starting values',
	'mend-plan': 'The mending plan'
};

const FIELDS: Readonly<Record<string, string>> = {
	pin: 'where its pin is',
	tag: 'its tag number',
	sectionId: 'its section',
	planId: 'its floor plan',
	sighting: 'what was seen of it',
	mending: 'what was done about it'
};

/** What two copies changed each in its own way, in a sentence: which value stays and which does not. */
export function clashSentence(clash: Clash, count: Format['count']): string {
	const { noun, name, field, kept, lost, lostFrom } = clash;
	const thing = [NOUNS[noun] ?? noun, name].filter((word) => word !== '').join(' ');
	const [from, to] =
		lostFrom === 'here' ? ['the file', 'this device'] : ['this device', 'the file'];
	if (field === 'removed') {
		return kept === true
			? `${thing} was removed ${at(from)} and changed ${at(to)}: it stays removed.`
			: `${thing} was brought back ${at(from)} and removed ${at(to)}: it stays.`;
	}
	const [first = field] = field.split(' ');
	const what = FIELDS[first] ?? first.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
	const shown = [kept, lost].map((value) => shownValue(value, count));
	const [stays, goes] = shown[0] === shown[1] ? ['one value', 'another'] : shown;
	return `${thing}, ${what}, was changed on both sides: ${stays} from ${from} stays, ${goes} from ${to} does not.`;
}

function at(place: string): string {
	return place === 'the file' ? 'in the file' : 'on this device';
}

function shownValue(value: unknown, count: Format['count']): string {
	if (value === null || value === undefined) return '“nothing”';
	if (typeof value === 'string')
		return `“${value.length > 80 ? `${value.slice(0, 80)} …` : value}”`;
	if (typeof value === 'number') return Number.isInteger(value) ? count(value) : String(value);
	if (typeof value === 'boolean') return value ? '“yes”' : '“no”';
	return 'the one';
}
