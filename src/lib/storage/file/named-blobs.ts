import type { Command } from '#lib/core/survey/command.ts';

/** A picture that a command names by the hash of its bytes. */
export interface NamedBlob {
	readonly sha256: string;
	readonly mediaType: string;
}

/** The pictures that commands name, each once: also replaced ones, since undo brings them back. */
export function blobsNamedBy(commands: readonly Command[]): NamedBlob[] {
	const named = new Map<string, NamedBlob>();
	const add = (image: NamedBlob | null | undefined): void => {
		if (image) named.set(image.sha256, { sha256: image.sha256, mediaType: image.mediaType });
	};
	for (const { body } of commands) {
		if (body.kind === 'add-plan') add(body.plan.image);
		else if (body.kind === 'set-plan') add(body.changes.image);
		else if (body.kind === 'start-site') {
			for (const plan of Object.values(body.survey.plans)) add(plan.image);
		}
	}
	return [...named.values()];
}
