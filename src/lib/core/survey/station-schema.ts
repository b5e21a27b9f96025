import { z } from 'zod';
import { Amount, Name, Share } from './field-schema.ts';
import { Id } from './ids.ts';

// Shapes of the station as `supply/` computes with them; `weigh/` passes them on as they are.

const Cycling = z.object({
	kind: z.literal('cycling'),
	unloadedFraction: Share,
	unloadStartFraction: Share,
	blowDownS: Amount,
	/** 0 stops at once, null never stops. */
	runOnS: Amount.nullable(),
	pressureBandBar: Amount
});

export const Control = z.discriminatedUnion('kind', [
	Cycling,
	z.object({
		kind: z.literal('throttled'),
		slope: Share,
		unloadsBelowFraction: Share,
		below: Cycling
	}),
	z.object({
		kind: z.literal('variable-speed'),
		minimumFraction: Share,
		minimumPowerFraction: Share,
		below: Cycling
	}),
	z.object({
		kind: z.literal('curve'),
		points: z
			.array(z.object({ flowFraction: Share, powerFraction: z.number().min(0).max(2) }))
			.max(50)
	})
]);
export type Control = z.infer<typeof Control>;

export const Compressor = z.object({
	id: Id,
	name: Name,
	build: z.enum(['piston', 'screw', 'vane', 'centrifugal']),
	capacityM3PerMin: Amount,
	loadedKw: Amount,
	ratedPressureBarGauge: Amount,
	control: Control
});
export type Compressor = z.infer<typeof Compressor>;

export const Air = z.discriminatedUnion('state', [
	z.object({ state: z.literal('off') }),
	z.object({ state: z.literal('on'), demandM3PerMin: Amount, setPressureBarGauge: Amount })
]);
export type Air = z.infer<typeof Air>;

const Minute = z.int().min(0).max(1440);
export const Period = z.object({
	id: Id,
	name: z.string().max(100),
	/** Monday is 0, Sunday 6: the days on which it begins. */
	days: z.array(z.int().min(0).max(6)).max(7),
	fromMin: Minute,
	/** At or before `fromMin` it ends on the next day. */
	toMin: Minute,
	air: Air,
	/** One of the further prices; null is the price at all other times. */
	priceId: Id.nullable()
});
export type Period = z.infer<typeof Period>;

export const SupplyStation = z.object({
	/** In the order in which they are started. */
	compressors: z.array(Compressor).max(50),
	/** The machine that takes the varying part; null is whichever was started last. */
	trimId: Id.nullable(),
	receiverVolumeM3: Amount,
	pipingVolumeM3: Amount,
	/** What the periods' demand is: all that is delivered, leaks included, or production alone. */
	demandIs: z.enum(['delivered', 'process']),
	schedule: z.object({
		periods: z.array(Period).max(500),
		weeksPerYear: z.number().min(0).max(53),
		closed: Air,
		closedPriceId: Id.nullable()
	}),
	purge: z.discriminatedUnion('kind', [
		z.object({ kind: z.literal('none') }),
		z.object({ kind: z.literal('share-of-capacity'), fraction: Share, ratedM3PerMin: Amount }),
		z.object({ kind: z.literal('share-of-flow'), fraction: Share })
	]),
	/** Heat of the compressors that replaces bought heat. */
	heatRecovery: z
		.object({
			recoveredFraction: Share,
			usefulFraction: Share,
			fuelPricePerKwh: Amount,
			boilerEfficiency: z.number().positive().max(1.1)
		})
		.optional()
});
export type SupplyStation = z.infer<typeof SupplyStation>;
