/** The outcome of something that is expected to fail at times: a value, or a refusal. */
export type Result<T, E = Refusal> =
	{ readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: E };

/**
 * Why something was refused: a code that never changes, and the quantities that offended.
 * It holds no sentence; `ui/` and `cli/` share the one table that turns codes into words.
 */
export interface Refusal {
	/** Kebab-case and stable, e.g. `pressure-out-of-range`. */
	readonly code: string;
	/** The offending and the accepted quantities, by name; units are in the names. */
	readonly detail?: Readonly<Record<string, string | number>>;
}

/** Wraps a value as a success. */
export function ok<T>(value: T): { readonly ok: true; readonly value: T } {
	return { ok: true, value };
}

/** Wraps a refusal; `code` is kebab-case, `detail` names the quantities that offended. */
export function refuse(
	code: string,
	detail?: Readonly<Record<string, string | number>>
): { readonly ok: false; readonly error: Refusal } {
	return { ok: false, error: detail === undefined ? { code } : { code, detail } };
}
