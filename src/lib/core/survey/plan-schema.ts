import { z } from 'zod';
import { Amount, Blob, Instant, Name, Picture, removed, Share, Text } from './field-schema.ts';
import { Id } from './ids.ts';

/** A point on a plan: shares of its width and height, y downwards. */
export const PlanPoint = z.object({ x: Share, y: Share });
export type PlanPoint = z.infer<typeof PlanPoint>;

export const Plan = z.object({
	id: Id,
	name: Name,
	image: Picture,
	/** Where the walk starts and ends. */
	compressorRoom: PlanPoint.optional(),
	/** A distance that is known on the plan. */
	scale: z.object({ from: PlanPoint, to: PlanPoint, metres: z.number().positive() }).optional(),
	/** Degrees clockwise from the top of the plan to north. */
	northDegrees: z.number().min(0).max(360).optional(),
	/** Building or floor, to sort plans by. */
	level: Name.optional(),
	/** The file it was made from, kept for print, and how the plan was cut from it. */
	original: Blob.extend({
		/** Counts from 1. */
		page: z.int().min(1).optional(),
		/** Quarter turns clockwise that set it upright: before anything else is cut. */
		quarterTurns: z.int().min(1).max(3).optional(),
		/** What was kept of it, in shares of the page once it is upright. */
		crop: z
			.object({
				x: Share,
				y: Share,
				width: z.number().positive().max(1),
				height: z.number().positive().max(1)
			})
			.optional(),
		/** A photograph straightened: where the plan's corners are in it, clockwise from top left. */
		corners: z.array(PlanPoint).length(4).optional()
	}).optional(),
	removed
});
export type Plan = z.infer<typeof Plan>;

/** What a section's air comes from: the station's own line, or another section. */
export const Feed = z.discriminatedUnion('kind', [
	z.object({ kind: z.literal('station') }),
	z.object({ kind: z.literal('section'), sectionId: Id })
]);
export type Feed = z.infer<typeof Feed>;

/** What one isolating valve shuts. */
export const Section = z.object({
	id: Id,
	name: Name,
	/** Which valve, and where it is: the first thing a fitter needs. */
	valve: Name.optional(),
	pressureBarGauge: Amount.optional(),
	/** Hours a year under pressure: a leak leaks at night too. */
	pressurisedHoursPerYear: Amount.optional(),
	volumeL: Amount.optional(),
	isolateMinutes: Amount.optional(),
	ventMinutes: Amount.optional(),
	restoreMinutes: Amount.optional(),
	/** Where its isolating valve is. */
	valveAt: z.object({ planId: Id, at: PlanPoint }).optional(),
	/** What its air comes from: several on a ring. Absent, nobody said. */
	fedFrom: z.array(Feed).min(1).max(20).optional(),
	/** The way of its air on a plan: from the line that feeds it to where it goes in. */
	feedAt: z.object({ planId: Id, from: PlanPoint, to: PlanPoint }).optional(),
	note: Text.optional(),
	removed
});
export type Section = z.infer<typeof Section>;

/** An outline on a plan: what was walked and found tight, or where a section lies. */
export const Area = z.object({
	id: Id,
	planId: Id,
	outline: z.array(PlanPoint).min(3).max(500),
	name: Name.optional(),
	use: z.discriminatedUnion('kind', [
		z.object({ kind: z.literal('walked-tight'), roundId: Id, walkedAt: Instant }),
		z.object({ kind: z.literal('section'), sectionId: Id })
	]),
	removed
});
export type Area = z.infer<typeof Area>;
