import { cpus } from 'node:os';
import { jsPDF } from 'jspdf';
import { apply } from '#lib/core/survey/apply.ts';
import { fold, foldOnto } from '#lib/core/survey/log.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { readyYear } from '#lib/core/supply/supply-year.ts';
import { yearWithLeaks } from '#lib/core/supply/year.ts';
import { STARTING_CONTROL } from '#lib/core/supply/starting-values.ts';
import { as } from '#lib/core/units/quantity.ts';
import { assess } from '#lib/core/weigh/assess.ts';
import { fixListModel } from '#lib/report/fix-list-model.ts';
import { readPdfFonts } from '#lib/report/node-fonts.ts';
import { buildFixListPdf } from '#lib/report/pdf/fix-list-pdf.ts';
import { readSurveyFile } from '#lib/storage/file/read-survey-file.ts';
import { writeSurveyFile } from '#lib/storage/file/write-survey-file.ts';
import { createFormat } from '#lib/words/format.ts';
import { drawing } from './drawing.ts';
import { handingOver } from './handing-over.ts';
import { median, table, type Row } from './measure.ts';
import { logging } from './logging.ts';
import { planning } from './planning.ts';
import { BENCH_ROUND, syntheticLeak, syntheticLog, syntheticSurvey } from './synthetic.ts';

const LEAKS = 10_000;
const rows: Row[] = [];

rows.push(...(await weighing()));
rows.push(...(await opening()));
rows.push(...(await year()));
rows.push(...(await drawing()));
rows.push(...(await printing()));
rows.push(...(await handingOver()));
rows.push(...(await planning()));
rows.push(...(await logging()));

console.log(
	`${cpus()[0]?.model ?? 'unknown processor'}, ${cpus().length} cores, Node ${process.version}\n`
);
console.log(table(rows));

/** One pass over plain arrays that does the same sums: flow, energy, cost, order. */
function plainPass(leaks: number): () => number {
	const area = Float64Array.from({ length: leaks }, (_, i) => 1e-7 * (1 + (i % 31)));
	const pressure = Float64Array.from({ length: leaks }, (_, i) => 7e5 + 1e4 * (i % 10));
	const hours = Float64Array.from({ length: leaks }, (_, i) => 5000 + 90 * (i % 40));
	const cost = new Float64Array(leaks);
	const order = Array.from({ length: leaks }, (_, i) => i);
	return () => {
		let total = 0;
		for (let i = 0; i < leaks; i++) {
			const flow = (0.0404149 * (area[i] ?? 0) * (pressure[i] ?? 0)) / Math.sqrt(293.15);
			const energy = (flow / 1.1884) * 60 * 6.7 * (hours[i] ?? 0);
			cost[i] = energy * 0.2;
			total += cost[i] ?? 0;
		}
		let cents = 0;
		for (let i = 0; i < leaks; i++) cents += Math.round((cost[i] ?? 0) * 100);
		order.sort((a, b) => (cost[b] ?? 0) - (cost[a] ?? 0));
		return total + cents;
	};
}

async function weighing(): Promise<Row[]> {
	const survey = syntheticSurvey(LEAKS);
	const bare = { what: 'one pass over plain arrays', ms: await median(15, plainPass(LEAKS)) };
	const fresh = await median(7, () => assess(structuredCloneOf(survey), BENCH_ROUND));
	const cloning = await median(7, () => structuredCloneOf(survey));
	let edited = survey;
	let size = 1;
	const again = await median(15, () => {
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
		return assess(edited, BENCH_ROUND);
	});
	return [
		{ what: `weigh ${LEAKS} leaks, nothing remembered`, ms: fresh - cloning, against: bare },
		{
			what: `weigh again after an edit of one of ${LEAKS}`,
			ms: again,
			against: bare,
			target: '≤ 3×, ≤ 16 ms'
		}
	];
}

/** A survey of new objects, so that nothing is remembered of them; the numbers stay the same. */
function structuredCloneOf(survey: Survey): Survey {
	return {
		...survey,
		leaks: Object.fromEntries(Object.entries(survey.leaks).map(([id, leak]) => [id, { ...leak }]))
	};
}

async function opening(): Promise<Row[]> {
	const log = syntheticLog(LEAKS);
	const folded = fold(log);
	if (!folded.ok) throw new Error(folded.error.code);
	const { survey } = folded.value;
	const text = JSON.stringify(survey);
	const parse = { what: 'JSON.parse of the survey', ms: await median(9, () => JSON.parse(text)) };
	const replay = await median(5, () => fold(log));
	const tail = log.slice(-50);
	const checkpoint = await median(5, () =>
		foldOnto(
			structuredClone(survey),
			tail.filter(({ body }) => body.kind !== 'add-leak')
		)
	);
	const bytes = await writeSurveyFile({
		commands: log,
		survey,
		blobs: [],
		savedAt: '2026-01-05T08:00:00Z'
	});
	const file = await median(3, () => readSurveyFile(bytes));
	return [
		{ what: `open ${LEAKS} leaks from a checkpoint`, ms: checkpoint, against: parse },
		{ what: `replay the whole log of ${LEAKS} leaks`, ms: replay, against: parse },
		{ what: `open the survey file of ${LEAKS} leaks, checksums and all`, ms: file, against: parse }
	];
}

async function year(): Promise<Row[]> {
	const ready = readyYear(
		{
			station: {
				compressors: Array.from({ length: 6 }, (_, index) => ({
					id: `machine-${index}`,
					name: '',
					build: 'screw' as const,
					capacityM3PerMin: 10,
					loadedKw: 65,
					ratedPressureBarGauge: 7,
					control: STARTING_CONTROL['load-unload'].control
				})),
				trimId: null,
				receiverVolumeM3: 5,
				pipingVolumeM3: 2
			},
			schedule: {
				periods: Array.from({ length: 40 }, (_, index) => ({
					id: `period-${index}`,
					name: '',
					days: [Math.floor(index / 6)],
					fromMin: (index % 6) * 240,
					toMin: ((index % 6) + 1) * 240,
					air: { state: 'on' as const, demandM3PerMin: 5 + index, setPressureBarGauge: 7 },
					priceId: null
				})),
				weeksPerYear: 50,
				closed: { state: 'off' },
				closedPriceId: null
			},
			demandIs: 'delivered',
			purge: { kind: 'none' }
		},
		as<'Pa absolute'>(100_000)
	);
	if (!ready.ok) throw new Error(ready.error.code);
	const leaks = Float64Array.from(ready.value.year.parts, ({ air }) =>
		air.state === 'on' ? 3 : 0
	);
	const ms = await median(201, () => yearWithLeaks(ready.value, leaks));
	return [
		{ what: 'a year of 6 machines × 40 periods, with and without leaks', ms, target: '≤ 1 ms' }
	];
}

async function printing(): Promise<Row[]> {
	const survey = syntheticSurvey(300);
	const format = createFormat({ locale: 'en-GB', currency: 'EUR', units: survey.site.units });
	const model = fixListModel(survey, assess(survey, BENCH_ROUND), {
		format,
		printedAt: '2026-01-05T08:00:00Z'
	});
	const fonts = readPdfFonts();
	const ms = await median(3, () =>
		buildFixListPdf(model, { fonts, paper: 'a4', planImages: new Map() })
	);
	const bare = await median(3, () => {
		const doc = new jsPDF({ unit: 'mm', format: 'a4', compress: true });
		for (const [index, job] of model.groups.flatMap((group) => group.rows).entries()) {
			if (index > 0 && index % 6 === 0) doc.addPage();
			doc.text(JSON.stringify(job.values).slice(0, 900), 14, 20 + (index % 6) * 40, {
				maxWidth: 180
			});
		}
		return doc.output('arraybuffer');
	});
	return [
		{ what: 'print 300 jobs', ms, against: { what: 'the same text by bare calls', ms: bare } }
	];
}
