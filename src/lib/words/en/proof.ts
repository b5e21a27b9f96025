import type { BridgeBar } from '#lib/core/prove/bridge.ts';
import type { Routine } from '#lib/core/prove/conditions.ts';
import type { Agreement } from '#lib/core/prove/measured.ts';
import type { Fate } from '#lib/core/prove/fate.ts';
import type { StopOutcome } from '#lib/core/prove/stops.ts';
import type { Standing } from '#lib/core/survey/standing.ts';
import { pluralsOf } from '../plural.ts';

const many = pluralsOf('en');

/** What became of the leaks, and of the saving. */
export const proof = {
	fates: {
		held: 'Mended and tight',
		claimed: 'Said to be mended, not soaped',
		still: 'Still leaking',
		'not-reached': 'Not reached, taken as before',
		again: 'Leaking again',
		new: 'New'
	} satisfies Record<Fate, string>,
	routines: {
		site: 'Air at the site',
		pressure: 'Pressure',
		hours: 'Hours under pressure',
		supply: 'Supply',
		demand: 'Demand',
		tariff: 'Prices'
	} satisfies Record<Routine, string>,
	/** What was known of a leak at a moment, within a sentence. */
	standingsWithin: {
		leaking: 'leaking',
		claimed: 'said to be mended',
		tight: 'tight by soap',
		unknown: 'not known yet'
	} satisfies Record<Standing['state'], string>,
	agreements: {
		agree: 'The two agree within their intervals.',
		'soap-more':
			'Walking found more saved than the system stopped losing. New leaks may not have been found yet, the sizes may be estimated too high, or something else was open during the later test.',
		'test-more':
			'The system stopped losing more than walking found saved. Leaks that nobody had pinned may have been mended, the sizes may be estimated too low, or something was open during the earlier test.'
	} satisfies Record<Agreement, string>,
	strengthsRule: 'Three strengths of the same saving. They are never added up.',
	strengths: {
		claimed: 'Claimed',
		proved: 'Proved by soap',
		measured: 'Measured by system test'
	},
	claimedNote: (count: number, shown: string) =>
		many(count, {
			one: '1 leak said to be mended, not soaped since',
			other: `${shown} leaks said to be mended, not soaped since`
		}),
	provedNote: (count: number, shown: string) =>
		many(count, {
			one: '1 leak tight when last looked at',
			other: `${shown} leaks tight when last looked at`
		}),
	notMeasured: (why: string) => `Not measured. ${why}`,
	strengthsNote: 'A year, with the 90 % interval under each figure.',
	range: (low: string, high: string) => `${low} to ${high}`,
	bridge: {
		before: 'Before',
		mended: 'Mended',
		again: 'Again',
		new: 'New',
		changed: 'Sized anew',
		after: 'After'
	} satisfies Record<BridgeBar['term'], string>,
	bridgeSummary: (steps: string) => `From before to after, a year: ${steps}`,
	step: 'Step',
	aYear: 'A year',

	/** The page, and the start of a round. */
	pageTitle: (site: string) => `Prove: ${site}`,
	roundOfSite: (round: string, number: number) => `${round}, round ${number} of this site`,
	startTitle: 'Start the next round',
	startAbout:
		'A new round keeps what the last one found and the prices it stood under. Every known leak becomes a stop to soap again.',
	roundName: 'Name of the round',
	roundNumber: (number: number) => `Round ${number}`,
	roundNameHint: (number: number) => `Round ${number}, until you name it.`,
	show: 'Show',
	showStops: 'Soap again',
	showSaved: 'What was saved',

	/** The stops of a round. */
	stopsTitle: 'Stops of this round',
	lookedAt: (looked: string, stops: string) => `${looked} of ${stops} looked at,`,
	otherStops: (notReached: string, left: string, newLeaks: string) =>
		`${notReached} not reached, ${left} left, ${newLeaks} new.`,
	stopsAnswered: 'Stops answered',
	onlyLeft: 'Only those left',
	pinNew: 'Pin a new leak on Walk',
	allAnswered: 'Every stop has its answer.',
	seeSaved: 'See what was saved',
	empty: 'Nothing to prove yet',
	emptyAbout:
		'Proving is looking again: pin the leaks on Walk, have them mended, and begin the next round here.',
	goToWalk: 'Go to Walk',
	noneKnown: 'No leak was known when this round began.',
	showMore: (shown: string) => `Show ${shown} more`,
	outcomes: { tight: 'Tight', leaking: 'Leaking', 'not-reached': 'Not reached' } satisfies Record<
		StopOutcome,
		string
	>,
	noPlace: 'Place not written down',
	beforeRound: (standing: string) => `Before this round: ${standing}.`,
	leaksAgain: 'It leaks again.',
	leakNow: (tag: number) => `Leak ${tag} now`,
	sizeAgain: (tag: number) => `Size leak ${tag} again`,
	historyOf: (tag: number) => `History of leak ${tag}`,
	history: {
		notReached: (day: string) => `${day}: not reached`,
		seen: (day: string, standing: string) => `${day}: ${standing}`,
		seenBy: (day: string, standing: string, evidence: string) =>
			`${day}: ${standing}, by ${lowerFirst(evidence)}`,
		couldNot: (why: string) => `Could not be mended: ${why}`,
		mended: (day: string) => `${day}: mended`,
		mendedBy: (day: string, who: string) => `${day}: mended by ${who}`,
		soapedTight: 'Soaped after mending: tight',
		soapedLeaking: 'Soaped after mending: still leaking',
		notLookedAt: (standing: string) => `Not looked at; ${standing} before`
	},

	/** What was saved. */
	compareWith: 'Compare with',
	fromTo: (before: string, after: string) => `From ${before} to ${after}`,
	lessWasted: (sum: string) => `Less wasted than before: ${sum} a year.`,
	lessWastedBetween: (sum: string, range: string) =>
		`Less wasted than before: ${sum} a year, ${range}.`,
	countedAsLeaking: (count: number, shown: string) =>
		many(count, {
			one: 'What nobody looked at again is counted as leaking still: 1 leak.',
			other: `What nobody looked at again is counted as leaking still: ${shown} leaks.`
		}),
	/** Why the step “Mended” is larger than what is proved. */
	mendedHolds: (proved: string, cameBack: string) =>
		`“Mended” is the ${proved} that soap proves and the ${cameBack} that the leaks took before which came back since.`,
	leftOut: (tags: string, count: number) =>
		many(count, {
			one: `Left out on both sides, because it could not be weighed: leak ${tags}.`,
			other: `Left out on both sides, because they could not be weighed: leaks ${tags}.`
		}),
	onPlan: 'On the plan',
	sameTitle: 'Made the same',
	rateTitle: 'How fast it comes back',
	reportLink: 'Savings report, to read and print',
	asFound: 'As the walk found it',
	pin: (tag: number, standing: string) => `Leak ${tag}, ${standing}`,
	pictureNotHere: (plan: string) => `The picture of ${plan} is not on this device.`,
	noPlan: 'There is no plan yet.',
	pinShapes:
		'Round pins are tight, pointed ones leak, dashed ones were not looked at in that round.',

	/** The conditions that both rounds are put under. */
	adjust: {
		about: (round: string) =>
			`Both rounds stand under the conditions of ${round}. Routine changes are priced one after another; a sum is what a change adds to the round before.`,
		change: 'Change',
		energy: 'Energy a year',
		money: 'Money a year',
		takeBack: 'Take back',
		remove: 'Remove',
		removeThat: (what: string) => `Remove ${what}`,
		nothing: 'Nothing changed that touches these leaks.',
		notKept: (round: string) =>
			`The conditions of ${round} were not kept when it was closed, so there is nothing to adjust from.`,
		byHand: 'Add a change by hand',
		what: 'What changed',
		whatHint: 'A machine removed, a line added.',
		reason: 'Reason',
		size: 'Energy added to the baseline a year',
		sizeHint: 'Below zero where the site draws less.',
		lacking: 'Please fill in all three.',
		add: 'Add the change'
	},

	/** How fast leaks come back. */
	rates: {
		moreAYear: (value: string, low: string, high: string) =>
			`${value} more a year (${low} to ${high})`,
		growth: (more: string) =>
			`What came back and what opened would cost ${more} with every year that passes. A yearly round is worth about that much.`,
		nextBy: (day: string) => `Next round by ${day}`,
		next: (by: string, between: string) =>
			`${by} (${between}): by then a quarter of what is held is lost again.`,
		caption: 'Joints that were proved tight and leak again, for each joint and year',
		kind: 'Part and action',
		back: 'Back',
		each: 'A year (90 %)',
		ofWatched: (returned: string, watched: string) => `${returned} of ${watched}`,
		perYear: (rate: string, low: string, high: string) => `${rate} (${low} to ${high})`,
		all: 'All',
		none: 'No joint has been proved tight and looked at again yet.',
		noRate: (months: string) =>
			`Nothing came back and nothing opened in ${months}: there is no rate yet.`,
		grounds: (leaks: number, shown: string, months: string) =>
			many(leaks, {
				one: `This rests on 1 leak that came back or opened in ${months}.`,
				other: `This rests on ${shown} leaks that came back or opened in ${months}.`
			}),
		few: 'That is few: the interval is wide, and each round makes it narrower.'
	},

	/** When what was spent is earned back. */
	payback: {
		unknown: 'What the repairs cost has not been written down, so there is no payback yet.',
		write: 'What the repairs cost',
		writeAbout:
			'Bills come after the repair: what each cost, parts and work together. Empty is not known; 0 cost nothing.',
		repair: (tag: number, part: string) => `Leak ${tag}: ${part}`,
		missing: (missing: number, shown: string, repairs: string) =>
			many(missing, {
				one: `1 of ${repairs} repairs has no cost written down, so it is longer than that.`,
				other: `${shown} of ${repairs} repairs have no cost written down, so it is longer than that.`
			}),
		nothingProved: (spent: string) =>
			`Repairs cost ${spent}; nothing is proved yet that would pay for it.`,
		paysIn: (spent: string, time: string, low: string, high: string) =>
			`Repairs cost ${spent}. What is proved by soap pays for it in ${time} (90 %: ${low} to ${high}).`,
		never: 'never',
		days: 'less than three days',
		/** The same after “in”. */
		inDays: 'less than three days',
		months: (count: number, shown: string) =>
			many(count, { one: `${shown} month`, other: `${shown} months` }),
		years: (count: number, shown: string) =>
			many(count, { one: `${shown} year`, other: `${shown} years` }),
		/** The same after “in”. */
		inMonths: (count: number, shown: string) =>
			many(count, { one: `${shown} month`, other: `${shown} months` }),
		inYears: (count: number, shown: string) =>
			many(count, { one: `${shown} year`, other: `${shown} years` })
	}
};

function lowerFirst(text: string): string {
	return text.charAt(0).toLowerCase() + text.slice(1);
}
