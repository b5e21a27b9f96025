import type { Result } from '#lib/core/units/result.ts';

/** What a command may touch of the world outside; a test hands in its own. */
export interface Io {
	readonly out: (text: string) => void;
	readonly err: (text: string) => void;
	/**
	 * Reads a file, its path as it was typed.
	 * @returns `file-not-found`, `file-is-folder`, `file-not-allowed`, `file-too-large` or
	 * `file-unreadable`
	 */
	readonly readFile: (path: string) => Promise<Result<Uint8Array>>;
	readonly version: string;
}
