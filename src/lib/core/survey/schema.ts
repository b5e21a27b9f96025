import { z } from 'zod';
import { Amount, Evidence, ReferenceId } from './evidence-schema.ts';
import { Id } from './ids.ts';
import { ACTIONS, HAZARDS, PARTS } from './parts.ts';
import { ROOM_FINDINGS, ROOM_POINTS } from './room-points.ts';
import { Prices, Supply } from './supply-schema.ts';
import { SystemTest } from './system-test-schema.ts';

/** The version of the survey's shape that this code writes; older ones are migrated on opening. */
export const SCHEMA_VERSION = 1;

const Name = z.string().max(200);
const Text = z.string().max(4000);
/** An instant, ISO 8601 with its offset or Z. */
export const Instant = z.iso.datetime({ offset: true });
const removed = z.boolean().optional();

export const Site = z.object({
	id: Id,
	name: Name,
	note: Text.optional(),
	altitudeM: z.number().min(-1000).max(10_000).optional(),
	/** A barometer reading, when there is one, goes before the altitude. */
	barometerKPa: z.number().positive().max(200).optional(),
	airTemperatureC: z.number().min(-100).max(200),
	reference: ReferenceId,
	currency: z.string().regex(/^[A-Z]{3}$/),
	units: z.object({
		pressure: z.enum(['bar', 'kPa', 'MPa', 'psi']),
		flow: z.enum(['L/s', 'L/min', 'm3/min', 'm3/h', 'cfm']),
		length: z.enum(['mm', 'in'])
	})
});
export type Site = z.infer<typeof Site>;

/** One response of the soap film and the band of equivalent holes that it stands for. */
export const SoapBand = z.object({ lowMm: Amount, highMm: Amount });
export const StartingValues = z.object({
	/** Bands that differ from our starting ones, by soap response. */
	soapBands: z.record(z.string().max(40), SoapBand),
	/** Bands that were re-fitted to measured leaks: chosen, recorded, and undone by going back to `before`. */
	soapRefits: z
		.record(
			z.string().max(40),
			z.object({ before: SoapBand, after: SoapBand, leaks: z.int().min(1) })
		)
		.optional(),
	/** All estimates multiplied to meet a system test: chosen, recorded, and undone by clearing it. */
	scaling: z.object({ factor: z.number().positive().max(100), systemTestId: Id }).optional(),
	/** Minutes, parts cost and cure time by action, where they differ from ours. */
	jobs: z
		.record(z.string().max(40), z.object({ minutes: Amount, partsCost: Amount, cureHours: Amount }))
		.optional(),
	/** Columns of the work-order table: field by heading. */
	workOrderColumns: z
		.array(z.object({ heading: z.string().max(100), field: z.string().max(40) }))
		.max(60)
		.optional(),
	/** What the site's own list calls each priority. */
	workOrderPriorities: z.record(z.string().max(40), z.string().max(100)).optional()
});
export type StartingValues = z.infer<typeof StartingValues>;

export const Blob = z.object({
	sha256: z.string().regex(/^[0-9a-f]{64}$/),
	mediaType: z.string().max(100),
	name: Name.optional()
});
export type Blob = z.infer<typeof Blob>;

const Share = z.number().min(0).max(1);
/** A point on a plan: shares of its width and height, y downwards. */
export const PlanPoint = z.object({ x: Share, y: Share });
export type PlanPoint = z.infer<typeof PlanPoint>;

export const Plan = z.object({
	id: Id,
	name: Name,
	image: Blob.extend({ widthPx: z.int().positive(), heightPx: z.int().positive() }),
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
	image: Blob.extend({ widthPx: z.int().positive(), heightPx: z.int().positive() }),
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

/** What the sums of a round stand on; kept with it, so that a later tariff cannot rewrite it. */
export const RoundConditions = z.object({
	site: Site,
	supply: Supply,
	prices: Prices,
	sections: z.record(
		Id,
		z.object({
			pressureBarGauge: Amount.optional(),
			pressurisedHoursPerYear: Amount.optional()
		})
	)
});
export type RoundConditions = z.infer<typeof RoundConditions>;

/** One walk of the site. */
export const Round = z.object({
	id: Id,
	name: Name,
	startedAt: Instant,
	/** Set when the round is closed by the next one; absent, the survey's own hold. */
	conditions: RoundConditions.optional(),
	removed
});
export type Round = z.infer<typeof Round>;

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

/** One point of the short round through the compressor room. */
export const RoomCheck = z.object({
	id: Id,
	roundId: Id,
	/** Which machine or vessel, as people there call it. */
	machine: Name,
	point: z.enum(ROOM_POINTS),
	outcome: z.enum(['in-order', 'finding', 'not-done']),
	/** What was found, where it is one of the usual; else the note says it. */
	finding: z.enum(ROOM_FINDINGS).optional(),
	rotaryScrew: z.boolean().optional(),
	note: Text.optional(),
	checkedAt: Instant,
	mendedAt: Instant.optional(),
	/** Why what was found is not put right yet. */
	couldNot: Text.optional(),
	removed
});
export type RoomCheck = z.infer<typeof RoomCheck>;

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

/** A change between rounds that is not of the leaks' making, entered by hand with its reason. */
export const Adjustment = z.object({
	id: Id,
	roundId: Id,
	what: Name,
	reason: Text,
	/** Added to the baseline; negative where the change draws less. */
	energyKwhPerYear: z.number().min(-1e12).max(1e12),
	removed
});
export type Adjustment = z.infer<typeof Adjustment>;

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

/** The whole survey: plain, immutable data; it changes by commands only. */
export const Survey = z.object({
	schemaVersion: z.literal(SCHEMA_VERSION),
	site: Site,
	supply: Supply,
	prices: Prices,
	startingValues: StartingValues,
	plans: z.record(Id, Plan),
	sections: z.record(Id, Section),
	rounds: z.record(Id, Round),
	leaks: z.record(Id, Leak),
	systemTests: z.record(Id, SystemTest),
	// Tables and values that a survey of the first days does not have.
	areas: z.record(Id, Area).optional(),
	roomChecks: z.record(Id, RoomCheck).optional(),
	windows: z.record(Id, ShutdownWindow).optional(),
	adjustments: z.record(Id, Adjustment).optional(),
	mendPlan: MendPlan.optional()
});
export type Survey = z.infer<typeof Survey>;
