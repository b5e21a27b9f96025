import { z } from 'zod';
import { Amount, Evidence, ReferenceId } from './evidence-schema.ts';
import { Id } from './ids.ts';
import { ACTIONS, HAZARDS, PARTS } from './parts.ts';
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
	soapBands: z.record(z.string().max(40), SoapBand)
});
export type StartingValues = z.infer<typeof StartingValues>;

export const Blob = z.object({
	sha256: z.string().regex(/^[0-9a-f]{64}$/),
	mediaType: z.string().max(100),
	name: Name.optional()
});
export type Blob = z.infer<typeof Blob>;

/** A point on a plan: shares of its width and height, y downwards. */
export const PlanPoint = z.object({ x: z.number().min(0).max(1), y: z.number().min(0).max(1) });
export type PlanPoint = z.infer<typeof PlanPoint>;

export const Plan = z.object({
	id: Id,
	name: Name,
	image: Blob.extend({ widthPx: z.int().positive(), heightPx: z.int().positive() }),
	/** Where the walk starts and ends, as shares of the plan's width and height. */
	compressorRoom: PlanPoint.optional(),
	removed
});
export type Plan = z.infer<typeof Plan>;

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
	mendedBy: Name.optional(),
	note: Text.optional()
});
export type Mending = z.infer<typeof Mending>;

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
	removed
});
export type Leak = z.infer<typeof Leak>;

/** One walk of the site. */
export const Round = z.object({ id: Id, name: Name, startedAt: Instant, removed });
export type Round = z.infer<typeof Round>;

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
	systemTests: z.record(Id, SystemTest)
});
export type Survey = z.infer<typeof Survey>;
