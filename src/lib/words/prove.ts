import type { BridgeBar } from '#lib/core/prove/bridge.ts';
import type { Routine } from '#lib/core/prove/conditions.ts';
import type { Agreement } from '#lib/core/prove/measured.ts';
import type { Fate } from '#lib/core/prove/fate.ts';
import type { Standing } from '#lib/core/survey/standing.ts';

/** What became of a leak between two rounds, in words. */
export const FATE_WORDS: Readonly<Record<Fate, string>> = {
	held: 'Mended and tight',
	claimed: 'Said to be mended, not soaped',
	still: 'Still leaking',
	'not-reached': 'Not reached, taken as before',
	again: 'Leaking again',
	new: 'New'
};

/** The conditions that both rounds are put under, in words. */
export const ROUTINE_WORDS: Readonly<Record<Routine, string>> = {
	site: 'Air at the site',
	pressure: 'Pressure',
	hours: 'Hours under pressure',
	supply: 'Supply',
	demand: 'Demand',
	tariff: 'Prices'
};

/** What was known of a leak at a moment, in words. */
export const STANDING_WORDS: Readonly<Record<Standing['state'], string>> = {
	leaking: 'Leaking',
	claimed: 'Said to be mended',
	tight: 'Tight by soap',
	unknown: 'Not known yet'
};

/** Whether what was found by walking and what the system shows belong together. */
export const AGREEMENT_WORDS: Readonly<Record<Agreement, string>> = {
	agree: 'The two agree within their intervals.',
	'soap-more':
		'Walking found more saved than the system stopped losing. New leaks may not have been found yet, the sizes may be estimated too high, or something else was open during the later test.',
	'test-more':
		'The system stopped losing more than walking found saved. Leaks that nobody had pinned may have been mended, the sizes may be estimated too low, or something was open during the earlier test.'
};

/** The rule of the three strengths, wherever they are shown. */
export const STRENGTHS_RULE = 'Three strengths of the same saving. They are never added up.';

/** The steps of the bridge, in words. */
export const BRIDGE_WORDS: Readonly<Record<BridgeBar['term'], string>> = {
	before: 'Before',
	mended: 'Mended',
	again: 'Again',
	new: 'New',
	changed: 'Sized anew',
	after: 'After'
};
