import type { EvidenceKind, ReferenceId } from '#lib/core/survey/evidence-schema.ts';
import { pluralsOf } from '../plural.ts';

const many = pluralsOf('en');

interface CarriedFrom {
	readonly sectionDrawn?: boolean | undefined;
	readonly elsewhere?: boolean | undefined;
}

/** Walk: the plan, the leak that is entered, and the leak that is open. */
export const walk = {
	heading: 'Walk',
	pageTitle: (site: string) => `Walk – ${site} – Airtally`,
	leaks: (count: number, shown: string) =>
		count === 0 ? 'No leak pinned yet' : many(count, { one: '1 leak', other: `${shown} leaks` }),
	leak: 'Leak',
	leakTitle: (tag: number) => `Leak ${tag}`,
	/** A pin, read out: what stands there. */
	pin: (tag: number, state: string, part: string, place: string) =>
		`Leak ${tag}, ${state}, ${part}${place === '' ? '' : `, ${place}`}`,
	wastes: (flow: string, yearly: string) => `${flow} of free air, ${yearly} a year`,
	wastesFlow: (flow: string) => `${flow} of free air`,
	placed: (plan: string, left: string, top: string) =>
		`${plan}: ${left} from the left, ${top} from the top`,
	pinned: (tag: number) => `Leak ${tag} is pinned.`,
	pinnedToSize: (tag: number) => `Leak ${tag} is pinned, to be sized.`,
	areaMarked: 'The area is marked as walked and tight.',

	plan: {
		missing: 'The picture of this plan is missing from this device. The list still works.',
		none: 'There is no floor plan yet.',
		/** The words that lead there, and the sentence they stand in. */
		add: 'Add a plan in Set up',
		addOr: (add: string) => `${add}, or list the leaks without one.`
	},

	start: {
		eachTapPins: 'Each tap on the plan pins a leak at once, to be sized later.',
		tapNext: 'Tap the plan where the next one is.',
		pinsNow: 'Pins now, sizes later',
		walkedTight: 'Walked and tight',
		addWithout: 'Add a leak without the plan',
		room: 'Compressor room',
		plan: 'Plan'
	},

	list: {
		find: 'Find a leak',
		findBy: 'Tag, part or place',
		toSize: 'To size',
		toCheck: 'To check',
		none: 'No leak matches.',
		more: (count: number) => `Show ${count} more`,
		latest: 'Latest leaks',
		toSizeShort: 'to size'
	},

	coverage: {
		title: 'Walked and tight',
		done: 'Done',
		oneCorner: 'Tap one corner of what you walked.',
		cornerAcross: 'Now tap the corner across.',
		about: 'Where nobody looked is also a result: mark only what you walked and found tight.',
		whole: 'Mark the whole plan',
		area: (place: number) => `Area ${place}`,
		/** Of an area in which leaks are pinned. */
		butFor: (count: number, tags: string) =>
			many(count, {
				one: `Leak ${tags} is pinned in it. It stays: the rest of the area counts as tight.`,
				other: `Leaks ${tags} are pinned in it. They stay: the rest of the area counts as tight.`
			}),
		removeArea: (place: number) => `Remove area ${place}`,
		remove: 'Remove'
	},

	capture: {
		notOnPlan: 'Not on a plan',
		leaveIt: 'Leave it',
		restored:
			'This leak was not pinned yet when the page closed; what you had entered is here. If you were taking a photo, take it again.',
		notKept:
			'This browser cannot keep a leak before it is pinned. Pin it first, then take its photo.',
		sameAgain: (tag: number) => `Same again as leak ${tag}`,
		/** What came from the last leak, and what did not. */
		carried: (tag: number, { sectionDrawn, elsewhere }: CarriedFrom) => {
			const drawn = sectionDrawn ? '; the section is the one drawn here' : '';
			if (elsewhere) return `The part is that of leak ${tag}${drawn}.`;
			return sectionDrawn
				? `Part and pressure are those of leak ${tag}${drawn}.`
				: `Part, section and pressure are those of leak ${tag}.`;
		},
		clearCarried: 'Clear them',
		pin: (tag: number) => `Pin leak ${tag}`,
		pinUnsized: (tag: number) => `Pin leak ${tag}, size it later`
	},

	basics: {
		part: 'Part',
		section: 'Section',
		sectionUnknown: 'Not known yet',
		sectionNew: 'A new one …',
		sectionName: 'Name of the new section',
		sectionNameHint:
			'What one isolating valve shuts. Its valve, pressure and hours are entered in Set up.',
		pressure: 'Pressure read',
		asOn: (tag: number) => `As on leak ${tag}.`,
		drawnHere: 'As drawn on the plan.',
		noPressure: 'No pressure is set for this section.',
		fromSupply: (pressure: string) => `Empty: ${pressure} from the supply.`,
		fromSection: (pressure: string) => `Empty: ${pressure} from the section.`
	},

	form: {
		allLeaks: 'All leaks',
		inThisRound: 'In this round',
		answers: { tight: 'Tight', leaking: 'Leaking', 'not-reached': 'Not reached' },
		place: 'Place',
		placeHint: 'So that a stranger finds it: machine, side, height.',
		note: 'Note',
		action: 'What to do',
		usualAction: 'The usual for this part, until you choose.',
		atThisPlace: 'At this place',
		partOfTime: 'Open only part of the time',
		openFor: 'Open for',
		inEvery: 'In every',
		tagAndPlace: 'Tag and place on the plan',
		tag: 'Tag number',
		fromLeft: 'From the left',
		fromTop: 'From the top',
		remove: (tag: number) => `Delete leak ${tag}`
	},

	movePin: {
		notPlaced: 'Not on a plan yet.',
		putOn: 'Put it on',
		tapNew:
			'Tap the new place on the plan. With keys: go to the plan, bring the place under the cross with the arrows, press Enter.',
		tapOrDrag:
			'Tap the new place on the plan, or drag the pin. With keys: go to the plan, bring the place under the cross with the arrows, press Enter.',
		leave: 'Leave it where it is',
		move: 'Move the pin',
		put: 'Put it on the plan'
	},

	evidence: {
		sizedBy: 'Sized by',
		whatSoapDoes: 'What does the soap do?',
		numbers: {
			'soap-response': {},
			hole: { diameterMm: 'Diameter' },
			slit: { lengthMm: 'Length', widthMm: 'Width' },
			'thread-gap': { threadDiameterMm: 'Thread diameter', gapMm: 'Gap' },
			'bubble-growth': { bubbleDiameterMm: 'Bubble reached', seconds: 'Time' },
			bag: { volumeL: 'Bag volume', seconds: 'Time to fill' },
			meter: { flowLPerS: 'Flow read' },
			catalogue: { cDm3PerSBar: 'Sonic conductance C', b: 'Critical ratio b' }
		} satisfies Record<EvidenceKind, Record<string, string>>,
		edge: 'Edge',
		meterAt: "The meter's litres are stated at",
		references: {
			'iso-1217': 'ISO 1217: 20 °C, 100 kPa, dry',
			anr: 'ANR (ISO 8778): 20 °C, 100 kPa, 65 % RH',
			normal: 'Normal: 0 °C, 101.325 kPa',
			site: 'As it is here, at the site'
		} satisfies Record<ReferenceId, string>,
		soapThere: 'What the soap did there',
		soapThereHint: 'Three or more such leaks re-fit what the soap says on this site: see Weigh.',
		notLooked: 'Not looked at'
	}
};
