import { z } from 'zod';
import { Amount } from './field-schema.ts';

const Edge = z.enum(['sharp', 'rounded', 'unknown']);
/** The user's own relative standard uncertainty in place of the method's starting value. */
const relativeUncertainty = z.number().positive().max(5).optional();
/** What the soap did at a leak whose flow was measured too: such pairs re-fit the soap bands. */
const soapResponse = z.string().max(40).optional();

export const ReferenceId = z.enum(['iso-1217', 'anr', 'normal', 'site']);
export type ReferenceId = z.infer<typeof ReferenceId>;

/** What was seen or measured of a leak; each kind has one function to an effective area in `air/`. */
export const Evidence = z.discriminatedUnion('kind', [
	z.object({
		kind: z.literal('hole'),
		diameterMm: Amount,
		edge: Edge,
		coefficient: z.number().positive().max(1).optional(),
		relativeUncertainty
	}),
	z.object({
		kind: z.literal('slit'),
		lengthMm: Amount,
		widthMm: Amount,
		edge: Edge,
		relativeUncertainty
	}),
	z.object({
		kind: z.literal('thread-gap'),
		threadDiameterMm: Amount,
		gapMm: Amount,
		edge: Edge,
		relativeUncertainty
	}),
	z.object({
		kind: z.literal('bubble-growth'),
		bubbleDiameterMm: Amount,
		seconds: Amount,
		soapResponse,
		relativeUncertainty
	}),
	z.object({
		kind: z.literal('soap-response'),
		response: z.string().max(40),
		relativeUncertainty
	}),
	z.object({
		kind: z.literal('bag'),
		volumeL: Amount,
		seconds: Amount,
		soapResponse,
		relativeUncertainty
	}),
	z.object({
		kind: z.literal('meter'),
		flowLPerS: Amount,
		reference: ReferenceId,
		soapResponse,
		relativeUncertainty
	}),
	z.object({
		kind: z.literal('catalogue'),
		cDm3PerSBar: Amount,
		b: z.number().min(0).max(1),
		relativeUncertainty
	})
]);
export type Evidence = z.infer<typeof Evidence>;
export type EvidenceKind = Evidence['kind'];
