import { z } from 'zod';
import { Amount, Instant, Name, removed } from './field-schema.ts';
import { Id } from './ids.ts';

const base = {
	id: Id,
	name: Name,
	doneAt: Instant,
	roundId: Id.optional(),
	removed
};

const Share = z.number().positive().max(1);
/** Receivers and pipes as a measure; what is not said of the readings is taken from starting values. */
const vessel = {
	volumeM3: Amount,
	volumeRelativeUncertainty: Share.optional(),
	gaugeResolutionBar: Amount.optional(),
	clockResolutionS: Amount.optional()
};

/** The whole system used as a flow meter, with production stopped: the readings as they were taken. */
export const SystemTest = z.discriminatedUnion('kind', [
	z.object({
		...base,
		kind: z.literal('load-time'),
		/** What the machine delivers when loaded, at inlet conditions. */
		capacityM3PerMin: Amount,
		capacityRelativeUncertainty: Share.optional(),
		/** Between the unload and the load pressure, where the leaks blew during the test. */
		meanPressureBarGauge: Amount.optional(),
		clockResolutionS: Amount.optional(),
		cycles: z
			.array(z.object({ loadedS: Amount, unloadedS: Amount, offS: Amount.optional() }))
			.max(10_000)
	}),
	z.object({
		...base,
		kind: z.literal('bleed-down'),
		...vessel,
		readings: z.array(z.object({ seconds: Amount, barGauge: Amount })).max(10_000)
	}),
	z.object({
		...base,
		kind: z.literal('pump-up'),
		...vessel,
		fromBarGauge: Amount,
		toBarGauge: Amount,
		seconds: Amount,
		tankTemperatureC: z.number().min(-100).max(200).optional()
	})
]);
export type SystemTest = z.infer<typeof SystemTest>;
