import type { LeakState } from '#lib/core/survey/leak-state.ts';
import type { Action } from '#lib/core/survey/parts.ts';
import type { SupplyMethod } from '#lib/core/weigh/assessment.ts';

/** What is done about a leak, in words. */
export const ACTION_WORDS: Readonly<Record<Action, string>> = {
	'nip-up': 'Nip up',
	'remake-thread': 'Remake the thread',
	'replace-fitting': 'Replace the fitting',
	'replace-coupling': 'Replace the coupling',
	'replace-hose': 'Replace the hose',
	'replace-clip': 'Replace the clip',
	'replace-seal': 'Replace the seal',
	'replace-gasket': 'Replace the gasket',
	'replace-valve': 'Replace the valve',
	'replace-bowl': 'Replace the bowl',
	'replace-gauge': 'Replace the gauge',
	'mend-drain': 'Mend the drain',
	'close-off': 'Close off',
	'service-engineer': 'Call the service engineer',
	'out-of-service': 'Take out of service',
	other: 'Agree what to do'
};

/** Where a leak stands in a round, in words. */
export const STATE_WORDS: Readonly<Record<LeakState, string>> = {
	leaking: 'Leaking',
	mended: 'Mended, to be re-soaped',
	tight: 'Tight',
	'not-reached': 'Not reached this round',
	unseen: 'Not looked at this round'
};

/** How flow was turned into power, in words. */
export const METHOD_WORDS: Readonly<Record<SupplyMethod, string>> = {
	quick: 'quick method: one specific power for all flow',
	supply: 'supply model: the station at part load, hour by hour of the week',
	none: 'air only: the survey does not say yet what the air takes to make'
};
