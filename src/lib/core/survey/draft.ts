import type { Entity, TableName } from './entities.ts';
import type { Survey } from './schema.ts';

/**
 * A survey that is being changed. The first change of a table copies it, later ones reuse the copy,
 * so that folding a log of ten thousand commands copies each table once and not ten thousand times.
 * The survey it was made from is never touched.
 */
export class Draft {
	#survey: Survey;
	readonly #owned = new Set<TableName>();

	constructor(survey: Survey) {
		this.#survey = survey;
	}

	get survey(): Survey {
		return this.#survey;
	}

	/** Hands the survey out; further changes copy again, so what was handed out stays as it is. */
	finish(): Survey {
		this.#owned.clear();
		return this.#survey;
	}

	replace(survey: Survey): void {
		this.#owned.clear();
		this.#survey = survey;
	}

	get<T extends TableName>(table: T, id: string): Entity<T> | undefined {
		const entities = this.#survey[table] as Record<string, Entity<T>> | undefined;
		return entities && Object.hasOwn(entities, id) ? entities[id] : undefined;
	}

	set<T extends TableName>(table: T, entity: Entity<T>): void {
		if (!this.#owned.has(table)) {
			this.#survey = { ...this.#survey, [table]: { ...this.#survey[table] } };
			this.#owned.add(table);
		}
		(this.#survey[table] as Record<string, Entity<T>>)[entity.id] = entity;
	}
}
