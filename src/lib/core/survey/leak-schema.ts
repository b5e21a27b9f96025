import { z } from 'zod';
import { Evidence } from './evidence-schema.ts';
import { Amount, Instant, Name, Picture, removed, Text } from './field-schema.ts';
import { Id } from './ids.ts';
import { ACTIONS, HAZARDS, PARTS } from './parts.ts';
import { PlanPoint } from './plan-schema.ts';

/** What was seen of one leak in one round. */
export const Sighting = z.object({
	state: z.enum(['leaking', 'tight', 'not-reached']),
	evidence: Evidence.optional(),
	pressureBarGauge: Amount.optional(),
	/** Open for so many seconds in every so many: a timed drain, a cycling cylinder. */
	intermittent: z.object({ openSeconds: Amount, everySeconds: Amount }).optional(),
	seenAt: Instant,
	seenBy: Name.optional()
});
export type Sighting = z.infer<typeof Sighting>;

/** Work done on one leak in one round. What is absent has not been done. */
export const Mending = z.object({
	isolated: z.boolean().optional(),
	vented: z.boolean().optional(),
	zeroProved: z.boolean().optional(),
	mendedAt: Instant.optional(),
	/** What the soap said after the air came back. */
	reSoaped: z.enum(['tight', 'still-leaking']).optional(),
	couldNot: Text.optional(),
	minutes: Amount.optional(),
	/** Of parts and work together, in major units of the site's currency. */
	cost: Amount.optional(),
	mendedBy: Name.optional(),
	note: Text.optional()
});
export type Mending = z.infer<typeof Mending>;

/** A picture of a leak or of its mending, kept as bytes by hash. */
export const Photo = z.object({
	id: Id,
	image: Picture,
	roundId: Id,
	of: z.enum(['leak', 'mending']),
	takenAt: Instant,
	caption: Name.optional(),
	removed
});
export type Photo = z.infer<typeof Photo>;

/** What a planner needs of one repair; what is absent comes from the action's starting values. */
export const Job = z.object({
	minutes: Amount.optional(),
	/** In major units of the site's currency. */
	partsCost: Amount.optional(),
	/** Sealing compound sets with the air off. */
	cureHours: Amount.optional(),
	/** Some jobs need no venting, e.g. a plug-in coupling behind its own valve. */
	ventFirst: z.boolean().optional(),
	skill: Name.optional(),
	/** In the plan whatever it saves, or left out of it whatever it saves. */
	wish: z.enum(['always', 'never']).optional()
});
export type Job = z.infer<typeof Job>;

export const Leak = z.object({
	id: Id,
	/** The number on the tag that hangs on the joint. */
	tag: z.int().min(1).max(999_999),
	planId: Id.optional(),
	at: PlanPoint.optional(),
	sectionId: Id.optional(),
	part: z.enum(PARTS),
	action: z.enum(ACTIONS).optional(),
	place: Name.optional(),
	note: Text.optional(),
	hazards: z.array(z.enum(HAZARDS)).max(HAZARDS.length),
	sightings: z.record(Id, Sighting),
	mendings: z.record(Id, Mending),
	photos: z.record(Id, Photo).optional(),
	job: Job.optional(),
	removed
});
export type Leak = z.infer<typeof Leak>;
