import { z } from 'zod';
import { Amount } from './field-schema.ts';
import { Id } from './ids.ts';
import { SupplyStation } from './station-schema.ts';

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
		.optional(),
	/** The machines and their week; when it is there, the station model is used. */
	station: SupplyStation.optional()
});
export type Supply = z.infer<typeof Supply>;

/** What energy, air and carbon cost here. What is absent is asked for, never taken as zero. */
export const Prices = z.object({
	/** The price at all times that no period of the week names another for. */
	pricePerKwh: Amount.optional(),
	/** Further prices, for periods of the station's week. */
	periodPrices: z
		.array(z.object({ id: Id, name: z.string().max(100), pricePerKwh: Amount }))
		.max(50)
		.optional(),
	/** Paid on the peak, beside the energy. */
	demandCharge: z.object({ pricePerKw: Amount, per: z.enum(['month', 'year']) }).optional(),
	/** Water and service per cubic metre of free air (ISO 1217). */
	costPerM3: Amount.optional(),
	/** A factor never travels without its year and its source; both are printed. */
	carbon: z
		.object({
			kgCo2ePerKwh: Amount,
			source: z.string().min(1).max(300),
			year: z.int().min(1900).max(2200)
		})
		.optional(),
	/** For net present value: a yearly rate as a share, e.g. 0.08, and the years looked at. */
	discountRate: z.number().min(-0.5).max(2).optional(),
	horizonYears: z.number().positive().max(50).optional()
});
export type Prices = z.infer<typeof Prices>;
