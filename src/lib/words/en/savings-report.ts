import type { Otherwise } from '#lib/core/prove/sensitivity.ts';
import { pluralsOf } from '../plural.ts';

const many = pluralsOf('en');

/** The savings report, on the page and on paper. */
export const savingsReport = {
	title: 'Savings report',
	pageTitle: (site: string) => `Savings report: ${site}`,
	rounds: (before: string, beforeOn: string, after: string, afterOn: string) =>
		`${before} (${beforeOn}) to ${after} (${afterOn})`,
	printed: (day: string) => `Printed ${day}`,
	roundsPrinted: (rounds: string, day: string) => `${rounds}  ·  printed ${day}`,
	headline: (sum: string, interval: string) =>
		`Proved by soap: ${sum} a year, 90 % interval ${interval}.`,
	printPage: 'Print this page',
	backToProve: 'Back to Prove',
	toProve: 'To Prove',
	oneRound:
		'A savings report compares two rounds, and this site has one. Start the next round on Prove.',
	page: (page: string, pages: string) => `Page ${page} of ${pages}`,

	makePdf: 'Make the PDF',
	savePdf: 'Save the PDF',
	pdfReady: 'The PDF is ready.',
	noGlyphs: (characters: string) => `It cannot show ${characters}: empty boxes stand there.`,
	noPictures: (tags: string) =>
		`The pictures of tag ${tags} could not be drawn; the leaks are there without them.`,
	doing: {
		gathering: 'Gathering the evidence',
		drawing: 'Drawing the pictures',
		fetching: 'Fetching the letters',
		laying: 'Laying out the pages'
	},
	pictureNotHere: 'The picture is not on this device.',

	/** The strengths, and what they come to. */
	strengthsTitle: 'Three strengths',
	strengthsLead: 'Three strengths, never added up',
	strength: 'Strength',
	aYear: 'A year',
	interval: '90 % interval',
	within: (range: string) => `90 %: ${range}`,
	withInterval: (range: string) => `90 % interval ${range}`,
	notMeasured: 'Not measured',
	tests: (before: string, after: string) => `${before}; then ${after}`,
	/** What a system test found, when, and what was shut for it. */
	test: (flow: string, day: string, name: string) => `${flow} on ${day} (${name})`,
	noTest: (round: string) =>
		`${round} has no system test; a measured saving needs one in both rounds.`,
	notKnown: 'not known',
	agreement: (words: string) => `Found by walking, beside measured: ${words}`,
	bridge: 'From before to after, a year',
	lessTitle: 'Less than before, at the same conditions',
	lessEnergy: 'Less energy a year',
	lessMoney: 'Less money a year',
	lessCarbon: 'Less CO₂e a year',
	payback: 'Payback of the repairs',

	/** What would change the answer. */
	otherwiseTitle: 'What would change the answer',
	if: 'If',
	lessAYear: 'Less a year',
	againstThis: 'Against this report',
	otherwise: {
		'claims-hold': () => 'Every claim proves to hold',
		'not-reached-tight': () => 'What nobody reached is tight',
		'largest-smaller': (tag: string) =>
			`Leak ${tag}, the largest that is proved, was half as large as judged`,
		'method-smaller': (_tag: string, evidence: string) =>
			`All that was sized by “${evidence}” is a third smaller, in both rounds`
	} satisfies Record<Otherwise['what'], (tag: string, evidence: string) => string>,
	wouldMove: 'What would move it',
	soapClaimed: (sum: string) =>
		`Soaping what is claimed would move up to ${sum} a year from claimed to proved.`,
	restsOnUnseen: (sum: string) => `${sum} a year rests on leaks that nobody looked at again.`,
	testBoth: 'A system test in both rounds would measure the saving without any estimate of a size.',
	bothAlike:
		'A new price or new hours change both rounds alike, in proportion; a new reading of one leak changes its line alone.',

	/** Leak by leak. */
	evidenceTitle: 'Evidence by leak',
	group: (fate: string, count: string) => `${fate}: ${count}`,
	groupSum: (before: string, after: string) => `${before} before, ${after} after, a year`,
	leak: (tag: string) => `Leak ${tag}`,
	noneKnown: 'none known',
	tight: 'tight',
	seen: {
		mended: (day: string) => `mended ${day}`,
		soapedTight: 'soaped tight',
		soapedLeaking: 'soaped, still leaking',
		claimFailed: 'said to be mended, but it leaks',
		notReached: (day: string) => `${day} not reached`,
		tightBySoap: (day: string) => `${day} tight by soap`,
		leaking: (day: string) => `${day} leaking`,
		leakingBy: (day: string, evidence: string) =>
			`${day} leaking, ${evidence.charAt(0).toLowerCase()}${evidence.slice(1)}`
	},
	sides: { before: 'Before', after: 'After' },
	caption: (side: string, day: string) => `${side}, ${day}`,
	photo: (tag: number, caption: string, about: string) => `Leak ${tag} ${caption}: ${about}`,

	/** What was not looked at again. */
	notReachedTitle: 'Not looked at again',
	eachBelow: 'Each is named under “Not looked at again”.',
	notReached: (count: number, shown: string, sum: string) =>
		many(count, {
			one: `1 leak was not looked at again: ${sum} a year, counted as leaking.`,
			other: `${shown} leaks were not looked at again: ${sum} a year, counted as leaking.`
		}),
	leftOutToo: (count: number, shown: string) =>
		many(count, {
			one: '1 leak is left out on both sides.',
			other: `${shown} leaks are left out on both sides.`
		}),
	oneByOne: 'One by one',
	everyReached: 'Every stop was reached.',
	countedAsLeaking: (tag: string, place: string, sum: string, seen: string) =>
		`Leak ${tag}, ${place}: ${sum} a year, counted as leaking (${seen}).`,
	countedThoughClaimed: (tag: string, place: string, sum: string, seen: string) =>
		`Leak ${tag}, ${place}: ${sum} a year, counted as leaking although said to be mended (${seen}).`,
	leftOut: (tag: string, place: string, why: string) =>
		`Leak ${tag}, ${place}: left out on both sides. ${why}`,
	noPlace: 'place not written down',

	/** What both rounds were put to. */
	adjustedTitle: 'Made the same',
	adjusted: (what: string, size: string, reason: string) =>
		`${what}: ${size} a year on the round before (${reason}).`,
	nothingAdjusted: 'Nothing was adjusted.',
	routine: 'put to the later round’s',

	/** How fast it comes back. */
	ratesTitle: 'How fast it comes back',
	joints: 'Joints proved tight and looked at again',
	back: 'Back',
	each: 'A year, each (90 %)',
	leftAlone: (sum: string, range: string) =>
		`Left alone, ${sum} more a year (90 %: ${range}) comes back or opens with each year; a yearly round is worth about that much.`,
	nextRound: (day: string, from: string, to: string) =>
		`Next round by ${day} (${from} to ${to}): by then a quarter of what is held is lost again.`,
	kind: (part: string, action: string) => `${part}: ${action}`,

	/** What it rests on. */
	restsTitle: 'What this rests on',
	conditionsOf: (round: string) =>
		`Both rounds stand under the conditions of ${round}: pressure, hours, supply, demand and prices.`,
	conditionsKept: (round: string) => `The conditions of ${round} were kept when it was closed.`,
	conditionsNotKept: (round: string) =>
		`The conditions of ${round} were not kept, so no adjustment from them can be shown.`,
	energyBy: (method: string) => `Energy by the ${method}.`,
	assumptions: [
		'What nobody reached is counted as leaking by its last reading; a claim is not counted as saved.',
		'What one method or one gauge gets wrong is the same in both rounds and cancels in the difference.',
		'The interval is of the sizes of the leaks; prices and the supply are taken as known.',
		'Payback sets all that was written down as spent on repairs against what soap has proved, undiscounted.'
	] as readonly string[],
	carbon: (factor: string, source: string, year: string) =>
		`CO₂e: ${factor} kg for each kWh (${source}, ${year}).`,
	rules: 'Rules V1 to V10 of the method, which the app shows in full.'
};
