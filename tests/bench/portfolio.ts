import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { writeSurveyFile } from '#lib/storage/file/write-survey-file.ts';
import { median, type Row } from './measure.ts';
import { logOf, twoRounds } from './synthetic.ts';

const run = promisify(execFile);
const LEAKS = 200;
/** Said by the program itself as it ends: the most memory it ever had, in kilobytes. */
const SAY_MEMORY =
	'data:text/javascript,process.on("exit",()=>process.stderr.write(`peak ${process.resourceUsage().maxRSS}`))';

/** Many survey files from the command line: twice, so that what grows with their number shows. */
export async function portfolio(): Promise<Row[]> {
	const folder = mkdtempSync(join(tmpdir(), 'airtally-portfolio-'));
	const rows: Row[] = [];
	const files: string[] = [];
	for (let index = 0; index < 200; index++) {
		const survey = twoRounds(LEAKS);
		const site = { ...survey.site, id: `site-${index}`, name: `Works ${index}` };
		const content = {
			commands: logOf({ ...survey, site }),
			survey: { ...survey, site },
			blobs: []
		};
		const path = join(folder, `works-${index}.airtally.zip`);
		writeFileSync(path, await writeSurveyFile({ ...content, savedAt: '2026-01-05T08:00:00Z' }));
		files.push(path);
	}
	for (const count of [20, 200]) {
		let peak = 0;
		const ms = await median(3, async () => {
			const command = ['--import', SAY_MEMORY, 'src/cli/airtally.ts', 'portfolio'];
			const { stderr } = await run(process.execPath, [...command, ...files.slice(0, count)]);
			peak = Number(/peak (\d+)$/.exec(stderr)?.[1] ?? NaN) / 1024;
		});
		rows.push({
			what: `portfolio of ${count} files of two rounds of ${LEAKS} leaks`,
			ms,
			beside: `peak memory ${peak.toFixed(0)} MB`,
			...(count === 200 && { target: '≤ 10 s, memory as for 20' })
		});
	}
	rmSync(folder, { recursive: true });
	return rows;
}
