import { mkdirSync, writeFileSync } from 'node:fs';

/** The long form, `npm run test:long`, is for a night; the short one runs with every `npm test`. */
export const LONG = process.env['AIRTALLY_LONG'] === '1';

export const times = (short: number, long: number): number => (LONG ? long : short);

/** Keeps how often something was done to the app and what it lost, for the table of the long form. */
export function tally(fault: string, count: number, lost: number): void {
	mkdirSync('test-results/faults', { recursive: true });
	const name = fault.toLowerCase().replace(/[^a-z0-9]+/g, '-');
	writeFileSync(`test-results/faults/${name}.json`, JSON.stringify({ fault, count, lost }));
}
