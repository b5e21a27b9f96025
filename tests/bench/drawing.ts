import { assess } from '#lib/core/weigh/assess.ts';
import { uncertaintyModel } from '#lib/core/weigh/uncertainty/model.ts';
import { randomFrom } from '#lib/core/weigh/uncertainty/random.ts';
import { startRun } from '#lib/core/weigh/uncertainty/run.ts';
import { whatIf } from '#lib/core/weigh/what-if.ts';
import { median, type Row } from './measure.ts';
import { BENCH_ROUND, syntheticSurvey } from './synthetic.ts';

const LEAKS = 1000;
const DRAWS = 10_000;

/** How sure: all leaks drawn, ranked and added up, against a bare loop and against plain objects. */
export async function drawing(): Promise<Row[]> {
	const survey = syntheticSurvey(LEAKS);
	const model = uncertaintyModel(survey, BENCH_ROUND);
	if (!model.ok) throw new Error(model.error.code);
	const { massFlow, own } = model.value;
	const ms = await median(3, () => {
		// Not one draw fewer: the tolerance can not be met before.
		const run = startRun(model.value, { leastDraws: DRAWS, mostDraws: DRAWS });
		if (!run.ok) throw new Error(run.error.code);
		while (!run.value.finished) run.value.step(500);
		return run.value.draws;
	});
	const bare = await median(3, () => {
		const normals = new Float64Array(LEAKS);
		const totals = new Float64Array(DRAWS);
		const random = randomFrom(1);
		for (let draw = 0; draw < DRAWS; draw++) {
			random.fillNormals(normals, LEAKS);
			let total = 0;
			for (let leak = 0; leak < LEAKS; leak++)
				total += (massFlow[leak] ?? 0) * Math.exp((own[leak] ?? 0) * (normals[leak] ?? 0));
			totals[draw] = total;
		}
		return totals.sort()[DRAWS / 20];
	});
	const objects = Array.from({ length: LEAKS }, (_, leak) => ({
		tag: leak,
		flow: massFlow[leak] ?? 0,
		spread: own[leak] ?? 0
	}));
	const plain = await median(1, () => {
		const random = randomFrom(1);
		const one = new Float64Array(1);
		const ranks = objects.map((): number[] => []);
		const totals: number[] = [];
		for (let draw = 0; draw < DRAWS / 10; draw++) {
			const drawn = objects.map(({ tag, flow, spread }) => {
				random.fillNormals(one, 1);
				return { tag, flow: flow * Math.exp(spread * (one[0] ?? 0)) };
			});
			totals.push(drawn.reduce((sum, { flow }) => sum + flow, 0));
			drawn.sort((a, b) => b.flow - a.flow);
			for (const [rank, { tag }] of drawn.entries()) ranks[tag]?.push(rank);
		}
		for (const each of ranks) each.sort((a, b) => a - b);
		return totals.sort((a, b) => a - b);
	});
	const found = assess(survey, BENCH_ROUND);
	const mended = found.leaks.slice(0, 10).map(({ leakId }) => leakId);
	return [
		{
			what: `${LEAKS} leaks × ${DRAWS} draws, ranks and all`,
			ms,
			against: { what: 'a bare loop over arrays, no ranks', ms: bare },
			target: '≤ 3× or ≤ 1 s'
		},
		{
			what: 'the same',
			ms,
			against: { what: 'plain objects, sorted (a tenth of the draws, × 10)', ms: plain * 10 }
		},
		{
			what: `what if, tried on ${LEAKS} leaks`,
			ms: await median(9, () =>
				whatIf(survey, BENCH_ROUND, { pricePerKwh: 0.3, hoursShare: 0.8, mended })
			),
			target: '≤ 50 ms'
		}
	];
}
