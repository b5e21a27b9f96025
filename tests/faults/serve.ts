import type { TestProject } from 'vitest/node';
import { build } from '../../src/setup/build.mjs';
import { SiteServer } from './site-server.ts';

declare module 'vitest' {
	interface ProvidedContext {
		/** Where the built app lies, for tests that serve it themselves. */
		buildFolder: string;
	}
}

/** Builds the app when it is older than its sources, and serves it for all faults. */
export default async function serve(project: TestProject): Promise<() => Promise<void>> {
	const given = process.env['AIRTALLY_BUILD'];
	if (given === undefined && !build()) throw new Error('the app does not build');
	const buildFolder = given ?? 'build';
	const server = new SiteServer(buildFolder);
	project.provide('appUrl', await server.start());
	project.provide('buildFolder', buildFolder);
	return () => server.stop();
}
