/**
 * Measures what the app promises and prints tables: `npm run bench`, or only some subjects by name,
 * `npm run bench -- weighing plans`. The tables are also written to test-results/bench.md.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { calculating } from './browser/calculating.ts';
import { plans } from './browser/plans.ts';
import { printing } from './browser/printing.ts';
import { walking } from './browser/walking.ts';
import { drawing } from './drawing.ts';
import { handingOver } from './handing-over.ts';
import { logging } from './logging.ts';
import { machine, table, type Subject } from './measure.ts';
import { opening } from './opening.ts';
import { planning } from './planning.ts';
import { portfolio } from './portfolio.ts';
import { supplyYear } from './supply-year.ts';
import { weighing } from './weighing.ts';

const SUBJECTS: Readonly<Record<string, Subject>> = {
	weighing: { heading: 'Weighing and comparing', measure: weighing },
	opening: { heading: 'Opening', measure: opening },
	supply: { heading: 'The station’s year', measure: supplyYear },
	drawing: { heading: 'How sure', measure: drawing },
	'handing-over': { heading: 'Printing, outside the browser', measure: handingOver },
	planning: { heading: 'Planning, outside the browser', measure: planning },
	logging: { heading: 'A logger’s file, outside the browser', measure: logging },
	portfolio: { heading: 'Many sites from the command line', measure: portfolio },
	walking: { heading: 'Walking, in Chromium with the processor slowed 4×', measure: walking },
	plans: { heading: 'Large plans, in Chromium', measure: plans },
	calculating: { heading: 'Long sums, in Chromium', measure: calculating },
	printing: { heading: 'Printing, in Chromium', measure: printing }
};

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !Object.hasOwn(SUBJECTS, name));
if (unknown.length > 0) {
	console.error(`Unknown: ${unknown.join(', ')}. There are: ${Object.keys(SUBJECTS).join(', ')}.`);
	process.exit(2);
}

const said: string[] = [];
let failed = 0;
say(`${machine(new Date())}. Medians; a ratio is to the version named beside it.`);
for (const [name, { heading, measure }] of Object.entries(SUBJECTS)) {
	if (asked.length > 0 && !asked.includes(name)) continue;
	try {
		say(`\n### ${heading}\n\n${table(await measure())}`);
	} catch (error) {
		failed++;
		say(`\n### ${heading}\n\nCould not be measured: ${String(error)}`);
	}
}
process.exitCode = failed > 0 ? 1 : 0;

function say(text: string): void {
	console.log(text);
	said.push(text);
	mkdirSync('test-results', { recursive: true });
	writeFileSync('test-results/bench.md', `${said.join('\n')}\n`);
}
