import type { Command } from '#lib/core/survey/command.ts';
import type { Survey } from '#lib/core/survey/schema.ts';
import { FORMAT, FORMAT_VERSION } from './manifest.ts';
import { orderedJson } from './json-text.ts';
import { sha256Hex } from './sha256.ts';

/** Sorts after every `device-…`, so that the start of a site that is here already stays its start. */
const DEVICE = 'file-plain';

/**
 * A survey without its log, as the one command that starts its site. The command's name comes from
 * the content, so that opening the same survey twice gives the same command, which merges to one.
 */
export async function startFromSurvey(survey: Survey): Promise<Command> {
	const hash = await sha256Hex(new TextEncoder().encode(orderedJson(survey)));
	const first = Object.values(survey.rounds)
		.map((round) => round.startedAt)
		.sort()[0];
	return {
		id: `command-${hash.slice(0, 40)}`,
		device: DEVICE,
		time: 0,
		at: first ?? '1970-01-01T00:00:00Z',
		body: { kind: 'start-site', survey }
	};
}

/** A survey as plain JSON that people can read and that opens like a survey file. */
export function writeSurveyJson(survey: Survey): string {
	return `${orderedJson({ format: FORMAT, formatVersion: FORMAT_VERSION, survey }, '\t')}\n`;
}
