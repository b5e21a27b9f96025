import { z } from 'zod';
import { Evidence } from '#lib/core/survey/evidence-schema.ts';
import { Amount } from '#lib/core/survey/field-schema.ts';
import { Id } from '#lib/core/survey/ids.ts';
import { PARTS } from '#lib/core/survey/parts.ts';
import { PlanPoint } from '#lib/core/survey/schema.ts';

const Bytes = z.custom<Uint8Array<ArrayBuffer>>((value) => value instanceof Uint8Array);

/** A half-entered leak as it is kept; a newer version of the app may not know what an older one kept. */
export const KeptDraft = z.object({
	/** What the leak will be called once it is pinned. */
	leakId: Id.optional(),
	draft: z.object({
		planId: Id.optional(),
		at: PlanPoint.optional(),
		part: z.enum(PARTS),
		sectionId: Id.optional(),
		sectionDrawn: z.boolean().optional(),
		pressureBarGauge: Amount.optional(),
		evidence: Evidence.optional(),
		carriedFrom: z.int().optional(),
		elsewhere: z.boolean().optional()
	}),
	photos: z.array(
		z.object({
			bytes: Bytes,
			mediaType: z.literal('image/jpeg'),
			sha256: z.string().regex(/^[0-9a-f]{64}$/),
			widthPx: z.int().positive(),
			heightPx: z.int().positive()
		})
	)
});
