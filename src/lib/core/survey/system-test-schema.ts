import { z } from 'zod';
import { Amount } from './evidence-schema.ts';
import { Id } from './ids.ts';

const base = {
	id: Id,
	name: z.string().max(200),
	doneAt: z.iso.datetime({ offset: true }),
	roundId: Id.optional(),
	removed: z.boolean().optional()
};

/** The whole system used as a flow meter, with production stopped: the readings as they were taken. */
export const SystemTest = z.discriminatedUnion('kind', [
	z.object({
		...base,
		kind: z.literal('load-time'),
		capacityM3PerMin: Amount,
		cycles: z.array(z.object({ loadedS: Amount, unloadedS: Amount })).max(10_000)
	}),
	z.object({
		...base,
		kind: z.literal('bleed-down'),
		volumeM3: Amount,
		readings: z.array(z.object({ seconds: Amount, barGauge: Amount })).max(10_000)
	}),
	z.object({
		...base,
		kind: z.literal('pump-up'),
		volumeM3: Amount,
		fromBarGauge: Amount,
		toBarGauge: Amount,
		seconds: Amount,
		tankTemperatureC: z.number().min(-100).max(200).optional()
	})
]);
export type SystemTest = z.infer<typeof SystemTest>;
