import { z } from 'zod';
import type { Command } from '#lib/core/survey/command.ts';
import { readLog, type Quarantined } from '#lib/core/survey/log.ts';
import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import { parseJson } from './json-text.ts';
import { MAX_LOGICAL_TIME } from './limits.ts';
import { checkFormat, checkSchemaVersion } from './manifest.ts';
import { migrate } from './migrations/migrate.ts';
import { startFromSurvey } from './plain-survey.ts';
import { salvageSurvey } from './salvage-survey.ts';

/** Commands as they were read, in no order yet, and what could not be read as one. */
export interface Records {
	readonly commands: readonly Command[];
	readonly quarantined: readonly Quarantined[];
}

/** Reads JSON lines; a line that is not JSON is set aside as its text. */
export function readLines(
	text: string,
	entry: string
): { entries: unknown[]; quarantined: Quarantined[] } {
	const entries: unknown[] = [];
	const quarantined: Quarantined[] = [];
	for (const line of text.split('\n')) {
		if (line.trim() === '') continue;
		const json = parseJson(line, entry);
		if (json.ok) entries.push(json.value);
		else quarantined.push({ entry: line, reason: json.error.code });
	}
	return { entries, quarantined };
}

/**
 * Reads entries of a log as commands, each name once. The command that starts a site carries a whole
 * survey: one bad record in there is set aside by itself, not the site with it.
 */
export function readRecords(entries: readonly unknown[], schemaVersion: number): Records {
	const read = readLog(migrate('command', entries, schemaVersion));
	const commands = new Map<string, Command>();
	const quarantined: Quarantined[] = [];
	const take = (command: Command): void => {
		if (command.time > MAX_LOGICAL_TIME) {
			quarantined.push({ entry: command, reason: 'time: too large' });
		} else if (commands.has(command.id)) {
			const known = JSON.stringify(commands.get(command.id));
			if (known !== JSON.stringify(command)) {
				quarantined.push({ entry: command, reason: 'id: used twice' });
			}
		} else commands.set(command.id, command);
	};
	read.commands.forEach(take);
	for (const bad of read.quarantined) {
		const salvaged = salvageStart(bad.entry);
		if (!salvaged) quarantined.push(bad);
		else {
			take(salvaged.command);
			quarantined.push(...salvaged.quarantined);
		}
	}
	return { commands: [...commands.values()], quarantined };
}

function salvageStart(
	entry: unknown
): { command: Command; quarantined: readonly Quarantined[] } | undefined {
	const start = z
		.looseObject({ body: z.looseObject({ kind: z.literal('start-site'), survey: z.unknown() }) })
		.safeParse(entry);
	if (!start.success) return undefined;
	const salvaged = salvageSurvey(start.data.body.survey);
	if (!salvaged.ok) return undefined;
	const { survey, quarantined } = salvaged.value;
	const [command] = readLog([{ ...start.data, body: { kind: 'start-site', survey } }]).commands;
	return command && { command, quarantined };
}

/** Reads the plain JSON of a survey: its `log` when it has one, else its `survey`. */
export async function readPlain(json: unknown, schemaVersion?: number): Promise<Result<Records>> {
	const format = checkFormat(json);
	if (!format.ok) return format;
	const parsed = z
		.object({
			schemaVersion: z.int().min(1).optional(),
			survey: z.unknown().optional(),
			log: z.array(z.unknown()).optional()
		})
		.safeParse(json);
	if (!parsed.success) return refuse('file-not-survey');
	const { survey, log } = parsed.data;
	const version = schemaVersion ?? parsed.data.schemaVersion ?? 1;
	if (log) return ok(readRecords(log, version));
	if (survey === undefined) return refuse('file-not-survey');
	const own = versionOf(survey) ?? version;
	const known = checkSchemaVersion(own);
	if (!known.ok) return known;
	const [migrated] = migrate('survey', [survey], own);
	const salvaged = salvageSurvey(migrated);
	if (!salvaged.ok) return salvaged;
	const start = await startFromSurvey(salvaged.value.survey);
	return ok({ commands: [start], quarantined: salvaged.value.quarantined });
}

function versionOf(survey: unknown): number | undefined {
	const parsed = z.object({ schemaVersion: z.int().min(1) }).safeParse(survey);
	return parsed.success ? parsed.data.schemaVersion : undefined;
}
