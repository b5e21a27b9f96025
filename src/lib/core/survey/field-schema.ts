import { z } from 'zod';

/** A number that a person typed or a file gave; what is out of range is queried, not refused. */
export const Amount = z.number().min(0).max(1e9);
export const Name = z.string().max(200);
export const Text = z.string().max(4000);
export const Share = z.number().min(0).max(1);
/** An instant, ISO 8601 with its offset or Z. */
export const Instant = z.iso.datetime({ offset: true });
/** What is taken away is only marked, so that a log that names it still applies. */
export const removed = z.boolean().optional();

/** Bytes, kept beside the document under their digest. */
export const Blob = z.object({
	sha256: z.string().regex(/^[0-9a-f]{64}$/),
	mediaType: z.string().max(100),
	name: Name.optional()
});
export type Blob = z.infer<typeof Blob>;

export const Picture = Blob.extend({
	widthPx: z.int().positive(),
	heightPx: z.int().positive()
});
