import { MIGRATIONS, type Json, type Migration } from './list.ts';

/**
 * Brings the records of an older schema version up to the newest, step by step. A record is JSON as
 * it was read; it is checked against the current shape afterwards, by whoever asked.
 *
 * @param version the schema version that the records were written with
 */
export function migrate(
	kind: 'survey' | 'command',
	records: readonly Json[],
	version: number,
	migrations: readonly Migration[] = MIGRATIONS
): readonly Json[] {
	const steps = migrations.filter((migration) => migration.to > version);
	return steps.reduce((migrated, step) => migrated.map((record) => step[kind](record)), records);
}
