import type { Plan } from '#lib/core/survey/schema.ts';
import type { PlanTiles } from '#lib/plan/tile-layer.ts';

/**
 * Finer pictures of a plan for closer looks, where its original has more to show; what cuts them is
 * loaded only then.
 */
export async function planTiles(
	plan: Plan,
	blobUrl: (sha256: string) => Promise<string | undefined>
): Promise<PlanTiles | undefined> {
	const { original } = plan;
	if (!original) return undefined;
	const { openTiles } = await import('#lib/plan/open-tiles.ts');
	return openTiles(plan, async () => {
		const address = await blobUrl(original.sha256);
		if (address === undefined) return undefined;
		return new Uint8Array(await (await fetch(address)).arrayBuffer());
	});
}
