import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { openDB } from 'idb';
import { expect, test } from 'vitest';
import type { Command } from '#lib/core/survey/command.ts';
import type { Result } from '#lib/core/units/result.ts';
import { asCommands, startCommand, startedSurvey } from '../../../../tests/arbitrary/commands.ts';
import { times } from '../../../../tests/faults/long.ts';
import { blobsNamedBy } from '../file/named-blobs.ts';
import { IndexedDbStore } from './indexed-db-store.ts';

const SITES = ['site-1', 'site-2'] as const;
const HASHES = ['a', 'b', 'c', 'd', 'e'].map((digit) => digit.repeat(64));
const about = {
	name: 'Tonwerk Nord',
	currency: 'EUR',
	counts: { leaks: 0, leaking: 0, mended: 0, tight: 0 },
	updatedAt: '2026-03-02T08:15:00Z'
};
const image = (sha256: string) => ({ sha256, mediaType: 'image/png', widthPx: 8, heightPx: 6 });
const blob = (sha256: string) => ({ sha256, mediaType: 'image/png', bytes: new Uint8Array([1]) });

type Deed =
	| {
			readonly does: 'shows' | 'brings a stray' | 'sets aside';
			readonly site: number;
			readonly of: number;
	  }
	| { readonly does: 'sweeps'; readonly daysLater: number }
	| { readonly does: 'loses its references' };

const deed: fc.Arbitrary<Deed> = fc.oneof(
	fc.record({
		does: fc.constantFrom('shows' as const, 'brings a stray' as const, 'sets aside' as const),
		site: fc.nat(SITES.length - 1),
		of: fc.nat(HASHES.length - 1)
	}),
	fc.record({ does: fc.constant('sweeps' as const), daysLater: fc.integer({ min: -3, max: 12 }) }),
	fc.record({ does: fc.constant('loses its references' as const) })
);

async function given<T>(result: Promise<Result<T>>): Promise<T> {
	const settled = await result;
	if (!settled.ok) throw new Error(settled.error.code);
	return settled.value;
}

/** A store with two sites, and what is done to it; the clock moves on with each sweep. */
class Shelf {
	readonly store = new IndexedDbStore([0]);
	readonly named = new Set<string>();
	#time = 1;
	#day = 0;

	async begin(): Promise<void> {
		globalThis.indexedDB = new IDBFactory();
		for (const siteId of SITES) {
			const start = startCommand({
				...startedSurvey(),
				site: { ...startedSurvey().site, id: siteId }
			});
			await this.#write(siteId, [start], []);
		}
	}

	async do(done: Deed): Promise<void> {
		if (done.does === 'sweeps') {
			this.#day += done.daysLater;
			const at = new Date(Date.UTC(2026, 2, 2 + this.#day)).toISOString();
			await given(this.store.sweepStrays(at));
			return;
		}
		if (done.does === 'loses its references') {
			// As a fault of the program would: the records themselves are what counts.
			const database = await openDB('airtally');
			await database.clear('blobRefs');
			database.close();
			return;
		}
		const [site, sha256] = [SITES[done.site] ?? SITES[0], HASHES[done.of] ?? ''];
		if (done.does === 'brings a stray') {
			await this.#write(site, [], [sha256]);
			return;
		}
		this.named.add(sha256);
		if (done.does === 'shows') {
			const plan = { id: `plan-${this.#time}`, name: 'Ground floor', image: image(sha256) };
			const commands = asCommands([{ kind: 'add-plan', plan }], 'device-a', this.#time++);
			await this.#write(site, commands, [sha256]);
		} else await this.#write(site, [], [sha256], [{ entry: { of: image(sha256) }, reason: 'x' }]);
	}

	async has(sha256: string): Promise<boolean> {
		return (await given(this.store.readBlob(sha256))) !== undefined;
	}

	#write(
		siteId: string,
		commands: readonly Command[],
		sha256s: readonly string[],
		quarantined: readonly { entry: unknown; reason: string }[] = []
	): Promise<null> {
		return given(
			this.store.write(siteId, { commands, blobs: sha256s.map(blob), quarantined, about })
		);
	}
}

test(
	'law: whatever is done and swept, no picture that a record names is deleted, and strays go in the end',
	async () => {
		await fc.assert(
			fc.asyncProperty(fc.array(deed, { minLength: 4, maxLength: 24 }), async (deeds) => {
				const shelf = new Shelf();
				await shelf.begin();
				try {
					for (const each of deeds) {
						await shelf.do(each);
						for (const sha256 of shelf.named) expect(await shelf.has(sha256)).toBe(true);
					}
					await shelf.do({ does: 'sweeps', daysLater: 40 });
					await shelf.do({ does: 'sweeps', daysLater: 8 });
					for (const sha256 of HASHES)
						expect(await shelf.has(sha256)).toBe(shelf.named.has(sha256));
				} finally {
					shelf.store.close();
				}
			}),
			{ numRuns: times(60, 600) }
		);
	},
	times(30_000, 600_000)
);

test('a stray is left alone for a week, counted from the first sweep that saw it', async () => {
	const shelf = new Shelf();
	await shelf.begin();
	await shelf.do({ does: 'brings a stray', site: 0, of: 0 });
	const there: boolean[] = [];
	for (const daysLater of [0, 3, 3, 1]) {
		await shelf.do({ does: 'sweeps', daysLater });
		there.push(await shelf.has(HASHES[0] ?? ''));
	}
	expect(there).toEqual([true, true, true, false]);
	shelf.store.close();
});

test('pictures are released only from what is in a file as it stands, and never those of another site', async () => {
	const shelf = new Shelf();
	await shelf.begin();
	const { store } = shelf;
	await shelf.do({ does: 'shows', site: 0, of: 0 });
	await shelf.do({ does: 'shows', site: 0, of: 1 });
	await shelf.do({ does: 'shows', site: 1, of: 1 });
	const [a = '', b = ''] = HASHES;
	const release = (count: number) => given(store.releasePictures('site-1', [a, b], count));
	expect(await release(3)).toBeUndefined();
	await given(
		store.markSite('site-1', { lastFile: { at: '2026-03-02T08:15:00Z', commandCount: 2 } })
	);
	expect(await release(3)).toBeUndefined();
	await given(
		store.markSite('site-1', { lastFile: { at: '2026-03-02T08:15:00Z', commandCount: 3 } })
	);
	// Another tab has gone on meanwhile.
	expect(await release(2)).toBeUndefined();
	expect([await shelf.has(a), await shelf.has(b)]).toEqual([true, true]);
	expect(await release(3)).toBe(1);
	expect([await shelf.has(a), await shelf.has(b)]).toEqual([false, true]);
	const log = await given(store.readLog('site-1'));
	expect(blobsNamedBy(log).map(({ sha256 }) => sha256)).toContain(a);
	store.close();
});
