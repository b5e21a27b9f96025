import type { BridgeBar } from '#lib/core/prove/bridge.ts';
import type { Routine } from '#lib/core/prove/conditions.ts';
import type { Agreement } from '#lib/core/prove/measured.ts';
import type { Fate } from '#lib/core/prove/fate.ts';
import type { Standing } from '#lib/core/survey/standing.ts';

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
	standings: {
		leaking: 'Leaking',
		claimed: 'Said to be mended',
		tight: 'Tight by soap',
		unknown: 'Not known yet'
	} satisfies Record<Standing['state'], string>,
	agreements: {
		agree: 'The two agree within their intervals.',
		'soap-more':
			'Walking found more saved than the system stopped losing. New leaks may not have been found yet, the sizes may be estimated too high, or something else was open during the later test.',
		'test-more':
			'The system stopped losing more than walking found saved. Leaks that nobody had pinned may have been mended, the sizes may be estimated too low, or something was open during the earlier test.'
	} satisfies Record<Agreement, string>,
	strengthsRule: 'Three strengths of the same saving. They are never added up.',
	bridge: {
		before: 'Before',
		mended: 'Mended',
		again: 'Again',
		new: 'New',
		changed: 'Sized anew',
		after: 'After'
	} satisfies Record<BridgeBar['term'], string>
};
