import type { TestProject } from 'vitest/node';
import { build } from '../../src/setup/build.mjs';
import { startServer } from './server.ts';

declare module 'vitest' {
	interface ProvidedContext {
		appUrl: string;
	}
}

/** Builds the app when it is older than its sources, and serves it for all stories. */
export default async function serve(project: TestProject): Promise<() => Promise<void>> {
	if (!build()) throw new Error('the app does not build');
	const server = await startServer();
	project.provide('appUrl', server.url);
	return () => server.kill();
}
