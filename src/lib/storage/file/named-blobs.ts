import type { Command } from '#lib/core/survey/command.ts';
import type { Survey } from '#lib/core/survey/schema.ts';

/** A picture that a command names by the hash of its bytes. */
export interface NamedBlob {
	readonly sha256: string;
	readonly mediaType: string;
}

const HASH = /^[0-9a-f]{64}$/;

/**
 * The pictures that commands name, each once: also replaced ones, since undo brings them back. They
 * are found by their shape wherever they stand, so that no new kind of command can be forgotten.
 */
export function blobsNamedBy(commands: readonly Command[]): NamedBlob[] {
	return namedIn(commands.map(({ body }) => body));
}

/** The pictures that a survey shows, each once: not those of what was removed. */
export function shownIn(survey: Survey): NamedBlob[] {
	return namedIn(survey, ({ removed }) => removed === true);
}

/** The pictures that any part of a survey names, each once. */
export function namedIn(
	part: unknown,
	passedOver: (member: { readonly removed?: unknown }) => boolean = () => false
): NamedBlob[] {
	const named = new Map<string, NamedBlob>();
	const visit = (value: unknown): void => {
		if (typeof value !== 'object' || value === null || passedOver(value)) return;
		const { sha256, mediaType } = value as { sha256?: unknown; mediaType?: unknown };
		if (typeof sha256 === 'string' && HASH.test(sha256) && typeof mediaType === 'string') {
			named.set(sha256, { sha256, mediaType });
		}
		for (const member of Object.values(value)) visit(member);
	};
	visit(part);
	return [...named.values()];
}
