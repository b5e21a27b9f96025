/**
 * Gives each thing a place when it is first seen and keeps it there: a job that was just ticked must
 * not jump away from under the finger. What comes later is put at the end.
 */
export class StandingOrder {
	readonly #places = new Map<string, number>();

	arrange<T>(items: readonly T[], idOf: (item: T) => string): T[] {
		for (const item of items)
			if (!this.#places.has(idOf(item))) this.#places.set(idOf(item), this.#places.size);
		const place = (item: T) => this.#places.get(idOf(item)) ?? 0;
		return items.toSorted((a, b) => place(a) - place(b));
	}
}
