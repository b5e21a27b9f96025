import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { BrowserContext } from 'playwright-core';
import { build, type Rolldown } from 'vite';

const CHUNKS = 'build/_app/immutable/chunks';
/** A text that only the German words have. */
const GERMAN = 'Jedes Zischen hat seinen Preis.';

let bundled: Promise<string> | undefined;

/** Gives a German browser the pseudo-language in place of German; the app itself is the built one. */
export async function speakPseudo(context: BrowserContext): Promise<void> {
	const words = await (bundled ??= pseudoModule());
	const chunk = readdirSync(CHUNKS).find((name) =>
		readFileSync(join(CHUNKS, name), 'utf8').includes(GERMAN)
	);
	if (chunk === undefined) throw new Error('the built app has no German words');
	await context.route(
		(url) => basename(url.pathname) === chunk,
		(route) => route.fulfill({ contentType: 'text/javascript', body: words })
	);
}

async function pseudoModule(): Promise<string> {
	const made = (await build({
		configFile: false,
		logLevel: 'error',
		build: {
			write: false,
			minify: false,
			lib: { entry: 'tests/story/pseudo/catalogue.ts', formats: ['es'] }
		}
	})) as Rolldown.RolldownOutput[];
	const [chunk] = made.flatMap(({ output }) => output).filter((each) => each.type === 'chunk');
	if (!chunk) throw new Error('the pseudo-language was not bundled');
	return chunk.code;
}
