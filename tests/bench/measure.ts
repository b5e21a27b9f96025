/** One row of the table: a median, and how it compares with a bare version of the same work. */
export interface Row {
	readonly what: string;
	readonly ms: number;
	readonly against?: { readonly what: string; readonly ms: number };
	readonly target?: string;
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
	return times.sort((a, b) => a - b)[Math.floor(runs / 2)] ?? NaN;
}

export function table(rows: readonly Row[]): string {
	const lines = rows.map(({ what, ms, against, target }) => {
		const ratio = against ? `${(ms / against.ms).toFixed(2)}× ${against.what}` : '';
		return `| ${what} | ${ms < 10 ? ms.toFixed(3) : ms.toFixed(0)} | ${ratio} | ${target ?? ''} |`;
	});
	return ['| work | ms, median | ratio | target |', '| --- | ---: | --- | --- |', ...lines].join(
		'\n'
	);
}
