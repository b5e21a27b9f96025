import { apply } from '#lib/core/survey/apply.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { compareRounds } from '#lib/core/prove/compare.ts';
import { comparisonSpread } from '#lib/core/prove/intervals.ts';
import { assess } from '#lib/core/weigh/assess.ts';
import { median, type Row } from './measure.ts';
import {
	BENCH_ROUND,
	LATER_ROUND,
	syntheticLeak,
	syntheticSurvey,
	twoRounds
} from './synthetic.ts';

const LEAKS = 10_000;

/**
 * One pass over plain arrays that does the same sums on the same leaks: flow, energy, cost in whole
 * cents, and the order, sorted anew each time from the order of the tags.
 */
function plainPass(survey: Survey): () => number {
	const { leaks: found } = assess(survey, BENCH_ROUND);
	const byTag = found.toSorted((a, b) => a.tag - b.tag);
	const area = Float64Array.from(byTag, ({ effectiveAreaM2 }) => effectiveAreaM2);
	const pressure = Float64Array.from(byTag, (leak) => 1e5 * (0.99 + leak.pressureBarGauge));
	const hours = Float64Array.from(byTag, ({ hoursPerYear }) => hoursPerYear);
	const cost = new Float64Array(byTag.length);
	return () => {
		let total = 0;
		for (let i = 0; i < cost.length; i++) {
			const flow = (0.0404149 * area[i]! * pressure[i]!) / Math.sqrt(293.15);
			cost[i] = (flow / 1.1884) * 60 * 6.7 * hours[i]! * 0.2;
			total += cost[i]!;
		}
		let cents = 0;
		for (let i = 0; i < cost.length; i++) cents += Math.round(cost[i]! * 100);
		const order = Int32Array.from(cost.keys()).sort((a, b) => cost[b]! - cost[a]! || a - b);
		return total + cents + order[0]!;
	};
}

export async function weighing(): Promise<Row[]> {
	const survey = syntheticSurvey(LEAKS);
	const bare = { what: 'one pass over plain arrays', ms: await median(15, plainPass(survey)) };
	const fresh = await median(7, () => assess(structuredCloneOf(survey), BENCH_ROUND));
	const cloning = await median(7, () => structuredCloneOf(survey));
	let edited = survey;
	let size = 1;
	let editing = 0;
	const again = await median(25, () => {
		const started = performance.now();
		const leak = syntheticLeak(500);
		const sighting = leak.sightings[BENCH_ROUND];
		if (!sighting) throw new Error('the bench survey has no sighting');
		size += 0.1;
		const next = apply(edited, {
			kind: 'record-sighting',
			leakId: leak.id,
			roundId: BENCH_ROUND,
			sighting: { ...sighting, evidence: { kind: 'hole', diameterMm: size, edge: 'sharp' } }
		});
		if (!next.ok) throw new Error(next.error.code);
		edited = next.value;
		editing = performance.now() - started;
		return assess(edited, BENCH_ROUND);
	});
	return [
		{ what: `weigh ${LEAKS} leaks, nothing remembered`, ms: fresh - cloning, against: bare },
		{
			what: `weigh again after an edit of one of ${LEAKS}`,
			ms: again,
			beside: `of it ${editing.toFixed(1)} ms to make the edited survey`,
			against: bare,
			target: '≤ 3×, ≤ 16 ms'
		},
		...(await comparing())
	];
}

/** A survey of new objects, so that nothing is remembered of them; the numbers stay the same. */
function structuredCloneOf(survey: Survey): Survey {
	return {
		...survey,
		leaks: Object.fromEntries(Object.entries(survey.leaks).map(([id, leak]) => [id, { ...leak }]))
	};
}

async function comparing(): Promise<Row[]> {
	const survey = twoRounds(LEAKS);
	const compared = () => {
		const found = compareRounds(survey, BENCH_ROUND, LATER_ROUND);
		if (!found.ok) throw new Error(found.error.code);
		return found.value;
	};
	const comparison = compared();
	return [
		{
			what: `compare two rounds of ${LEAKS} leaks`,
			ms: await median(9, compared),
			target: '≤ 100 ms'
		},
		{
			what: 'its intervals, 1,000 draws',
			ms: await median(5, () => comparisonSpread(survey, comparison))
		}
	];
}
