import { z } from 'zod';
import { Amount, Instant, Name, removed } from './field-schema.ts';
import { Id } from './ids.ts';

/** A time when air can be off. */
export const ShutdownWindow = z.object({
	id: Id,
	name: Name,
	startsAt: Instant,
	minutes: Amount,
	people: z.int().min(1).max(1000),
	/** In major units of the site's currency. */
	downtimeCostPerHour: Amount.optional(),
	/** The air may stay off after it until the next morning, so that compound can cure. */
	overnightOff: z.boolean(),
	removed
});
export type ShutdownWindow = z.infer<typeof ShutdownWindow>;

/** What the planner is asked for, and which window each job was put into. */
export const MendPlan = z.object({
	/** In major units of the site's currency. */
	budget: Amount.optional(),
	horizonYears: z.number().positive().max(50).optional(),
	/** Parts are taken off what a repair is worth; absent, they are. The budget counts them anyway. */
	lessParts: z.boolean().optional(),
	/** Savings are taken at their mean over the uncertainty; absent, they are. */
	expected: z.boolean().optional(),
	/** Window by leak. */
	windows: z.record(Id, Id).optional(),
	/** How the plan was found, for whoever reads it later. */
	foundBy: z.enum(['exact', 'greedy', 'hand']).optional()
});
export type MendPlan = z.infer<typeof MendPlan>;
