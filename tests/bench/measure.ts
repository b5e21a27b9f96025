import { cpus, totalmem } from 'node:os';

/** One row of the table: a median, and how it compares with a bare version of the same work. */
export interface Row {
	readonly what: string;
	readonly ms: number;
	/** What was measured beside the time: a longest block, a peak of memory. */
	readonly beside?: string;
	readonly against?: { readonly what: string; readonly ms: number };
	readonly target?: string;
}

/** What `npm run bench` measures under one heading. */
export interface Subject {
	readonly heading: string;
	readonly measure: () => Promise<readonly Row[]>;
}

export function medianOf(values: readonly number[]): number {
	return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
}

/** Median time of a task over several runs, after one that is not counted. */
export async function median(runs: number, task: () => unknown): Promise<number> {
	await task();
	const times: number[] = [];
	for (let run = 0; run < runs; run++) {
		const started = performance.now();
		await task();
		times.push(performance.now() - started);
	}
	return medianOf(times);
}

export function table(rows: readonly Row[]): string {
	const lines = rows.map(({ what, ms, beside = '', against, target = '' }) => {
		const ratio = against ? `${(ms / against.ms).toFixed(2)}× ${against.what}` : '';
		return `| ${what} | ${ms < 10 ? ms.toFixed(2) : ms.toFixed(0)} | ${beside} | ${ratio} | ${target} |`;
	});
	return [
		'| work | ms, median | beside it | against | target |',
		'| --- | ---: | --- | --- | --- |',
		...lines
	].join('\n');
}

/** The machine that the figures are of, and the day. */
export function machine(today: Date): string {
	const cores = cpus();
	const memory = Math.round(totalmem() / 2 ** 30);
	const model = cores[0]?.model ?? 'unknown processor';
	const day = today.toISOString().slice(0, 10);
	return `${model}, ${cores.length} cores, ${memory} GiB, Node ${process.version}, ${day}`;
}
