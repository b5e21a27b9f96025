import { z } from 'zod';
import { Amount } from './evidence-schema.ts';

/** How the air is made, and which method turns flow into power. */
export const Supply = z.object({
	/** The pressure that sections without one of their own stand at. */
	setPressureBarGauge: Amount.optional(),
	/** The quick method: one specific power for all flow. */
	quick: z
		.object({
			specificPowerKwPerM3PerMin: Amount,
			/** Where the figure came from, as printed beside it. */
			source: z.string().max(300)
		})
		.optional()
});
export type Supply = z.infer<typeof Supply>;

/** What energy, air and carbon cost here. What is absent is asked for, never taken as zero. */
export const Prices = z.object({
	pricePerKwh: Amount.optional(),
	/** Water and service per cubic metre of free air, at the site's reference. */
	costPerM3: Amount.optional(),
	demandChargePerKwYear: Amount.optional(),
	carbon: z
		.object({
			kgCo2PerKwh: Amount,
			source: z.string().max(300),
			year: z.int().min(1900).max(2200).optional()
		})
		.optional(),
	/** For net present value: yearly rate as a share, e.g. 0.08, and years looked at. */
	discountRate: z.number().min(-0.5).max(2).optional(),
	horizonYears: z.number().positive().max(50).optional()
});
export type Prices = z.infer<typeof Prices>;
