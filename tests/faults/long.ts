import { mkdirSync, writeFileSync } from 'node:fs';

/**
 * The long form, `npm run test:long`, is for a night; the short one runs with every `npm test`. The
 * share of the long form's counts that was asked for, or nothing in the short one.
 */
const SHARE = Number(process.env['AIRTALLY_LONG'] ?? NaN);

export const times = (short: number, long: number): number =>
	Number.isNaN(SHARE) ? short : Math.max(short, Math.round(long * SHARE));

/** Keeps how often something was done to the app and what it lost, for the table of the long form. */
export function tally(fault: string, count: number, lost: number): void {
	mkdirSync('test-results/faults', { recursive: true });
	const name = fault.toLowerCase().replace(/[^a-z0-9]+/g, '-');
	writeFileSync(`test-results/faults/${name}.json`, JSON.stringify({ fault, count, lost }));
}
