import { z } from 'zod';

/**
 * Every identifier is a lower-case word, a hyphen and more: `leak-7f3a…`. No member that a
 * JavaScript object inherits has a hyphen in its name, so an identifier read from a hostile file
 * can never reach one.
 */
export const Id = z
	.string()
	.max(64)
	.regex(/^[a-z]+(-[a-z0-9]+)+$/);
export type Id = z.infer<typeof Id>;

/** Looks an entity up in a table of the survey; what is not there is `undefined`, never inherited. */
export function find<T>(table: Readonly<Record<string, T>>, id: string | undefined): T | undefined {
	return id !== undefined && Object.hasOwn(table, id) ? table[id] : undefined;
}
