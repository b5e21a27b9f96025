import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import { MAX_JSON_DEPTH } from './limits.ts';

/** Reads bytes as UTF-8; a byte order mark at the front is left out. */
export function decodeText(bytes: Uint8Array, entry: string): Result<string> {
	try {
		return ok(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
	} catch {
		return refuse('json-unreadable', { entry });
	}
}

/**
 * Parses JSON that may come from anybody: its depth is measured before it is parsed.
 *
 * @returns a refusal `json-too-deep`, `file-truncated` (brackets left open at the end) or
 * `json-unreadable`
 */
export function parseJson(text: string, entry: string): Result<unknown> {
	const { deepest, open } = bracketDepth(text);
	if (deepest > MAX_JSON_DEPTH) return refuse('json-too-deep', { entry, most: MAX_JSON_DEPTH });
	if (open > 0) return refuse('file-truncated', { entry });
	try {
		return ok(JSON.parse(text) as unknown);
	} catch {
		return refuse('json-unreadable', { entry });
	}
}

function bracketDepth(text: string): { deepest: number; open: number } {
	let open = 0;
	let deepest = 0;
	let inString = false;
	for (let at = 0; at < text.length; at++) {
		const code = text.charCodeAt(at);
		if (inString) {
			if (code === 92) at++;
			else if (code === 34) inString = false;
		} else if (code === 34) inString = true;
		else if (code === 91 || code === 123) deepest = Math.max(deepest, ++open);
		else if (code === 93 || code === 125) open--;
	}
	return { deepest, open: inString ? open + 1 : open };
}

/** JSON with the members of every object in alphabetical order: equal content, equal text. */
export function orderedJson(value: unknown, indent?: string): string {
	return JSON.stringify(ordered(value), undefined, indent);
}

function ordered(value: unknown): unknown {
	if (Array.isArray(value)) return value.map(ordered);
	if (typeof value !== 'object' || value === null) return value;
	const members = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
	return Object.fromEntries(members.map(([key, member]) => [key, ordered(member)]));
}
