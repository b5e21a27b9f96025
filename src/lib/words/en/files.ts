import { pluralsOf } from '../plural.ts';

const many = pluralsOf('en');

/** What opening a file did, what two copies changed, and what of a plan was walked. */
export const files = {
	isHere: (site: string) => `${site} is on this device now.`,
	nothingNew: (site: string) => `${site} was here already, and the file held nothing new.`,
	taken: (count: number, shown: string, site: string) =>
		many(count, {
			one: `One change was taken into ${site}; nothing here was overwritten.`,
			other: `${shown} changes were taken into ${site}; nothing here was overwritten.`
		}),
	moreClashes: (shown: string) => `${shown} more were changed on both sides.`,
	tagsTwice: (tags: string) =>
		`Tag numbers used twice: ${tags}. Walk offers a free number for each.`,
	conflicts: (count: number, shown: string) =>
		many(count, {
			one: 'One change no longer fitted: listed at the end of Set up.',
			other: `${shown} changes no longer fitted: listed at the end of Set up.`
		}),
	unreadable: (count: number, shown: string) =>
		many(count, {
			one: 'One record could not be read: set aside, not lost, and listed at the end of Set up.',
			other: `${shown} records could not be read: set aside, not lost, and listed at the end of Set up.`
		}),
	pictures: (count: number, shown: string) =>
		many(count, {
			one: 'One picture is missing from the file or damaged in it.',
			other: `${shown} pictures are missing from the file or damaged in it.`
		}),

	nouns: {
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
	},
	fields: {
		pin: 'where its pin is',
		tag: 'its tag number',
		sectionId: 'its section',
		planId: 'its floor plan',
		sighting: 'what was seen of it',
		mending: 'what was done about it'
	},
	/** A field that has no words of its own, by its name in the file. */
	field: (name: string) => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`),
	thing: (noun: string, name: string) => (name === '' ? noun : `${noun} ${name}`),
	staysRemoved: {
		file: (thing: string) =>
			`${thing} was removed in the file and changed on this device: it stays removed.`,
		here: (thing: string) =>
			`${thing} was removed on this device and changed in the file: it stays removed.`
	},
	staysInUse: {
		file: (thing: string) =>
			`${thing} was brought back in the file and removed on this device: it stays.`,
		here: (thing: string) =>
			`${thing} was brought back on this device and removed in the file: it stays.`
	},
	staysFrom: {
		file: (thing: string, what: string, stays: string, goes: string) =>
			`${thing}, ${what}, was changed on both sides: ${stays} from the file stays, ${goes} from this device does not.`,
		here: (thing: string, what: string, stays: string, goes: string) =>
			`${thing}, ${what}, was changed on both sides: ${stays} from this device stays, ${goes} from the file does not.`
	},
	oneValue: 'one value',
	another: 'another',
	theOne: 'the one',
	nothing: '“nothing”',
	yes: '“yes”',
	no: '“no”',
	quoted: (text: string) => `“${text}”`,

	pinned: (count: number, shown: string) =>
		many(count, { one: '1 leak pinned', other: `${shown} leaks pinned` }),
	notMarked: (plan: string, leaks: string) =>
		`${plan}: no part marked as walked and tight; ${leaks}.`,
	marked: (plan: string, share: string, areas: string, leaks: string) =>
		`${plan}: ${share} marked as walked and tight${areas === '' ? '' : ` (${areas})`}; ${leaks}.`,
	underOne: 'under 1%',
	about: (share: string) => `about ${share}`,
	elsewhere: 'Elsewhere nobody has said that it was walked.'
};
