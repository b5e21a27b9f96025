import { z } from 'zod';
import { ReferenceId } from './evidence-schema.ts';
import { Amount, Instant, Name, removed, Text } from './field-schema.ts';
import { Id } from './ids.ts';
import { Leak } from './leak-schema.ts';
import { MendPlan, ShutdownWindow } from './mend-plan-schema.ts';
import { Area, Plan, Section } from './plan-schema.ts';
import { ROOM_FINDINGS, ROOM_POINTS } from './room-points.ts';
import { Prices, Supply } from './supply-schema.ts';
import { SystemTest } from './system-test-schema.ts';

// The document has one door, whatever file says the shape of its parts.
export * from './leak-schema.ts';
export * from './mend-plan-schema.ts';
export * from './plan-schema.ts';

/** The version of the survey's shape that this code writes; older ones are migrated on opening. */
export const SCHEMA_VERSION = 1;

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
