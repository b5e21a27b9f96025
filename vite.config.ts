import adapterStatic from '@sveltejs/adapter-static';
import { sveltekit } from '@sveltejs/kit/vite';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { chromiumArgs, findChromium } from './src/setup/chromium.mjs';
import { versionName } from './src/setup/version.mjs';

/** Stories that ask how long the page is held or what it keeps in memory: no other work beside them. */
const ALONE = ['tests/story/big-plans.test.ts', 'tests/story/page-free.test.ts'];

export default defineConfig(({ command }) => ({
	plugins: [
		sveltekit({
			compilerOptions: {
				runes: ({ filename }) =>
					filename.split(/[/\\]/).includes('node_modules') ? undefined : true
			},
			// Absolute addresses: the offline shell answers at every depth of path.
			paths: { relative: false },
			// Read from all sources, so only where something is built.
			version: { name: command === 'build' ? versionName() : 'not-built' },
			adapter: adapterStatic({ pages: 'build', fallback: '200.html' }),
			csp: {
				mode: 'hash',
				directives: {
					'default-src': ['self'],
					'script-src': ['self', 'wasm-unsafe-eval'],
					'style-src': ['self'],
					// The one style attribute that SvelteKit writes: it hides what it reads out.
					'style-src-attr': [
						'unsafe-hashes',
						'sha256-S8qMpvofolR8Mpjy4kQvEm7m1q8clzU4dfDH0AmvZjo='
					],
					'img-src': ['self', 'blob:', 'data:'],
					'connect-src': ['self', 'blob:'],
					'worker-src': ['self', 'blob:'],
					'object-src': ['none'],
					'base-uri': ['none'],
					'form-action': ['none']
				}
			}
		})
	],
	assetsInclude: ['**/*.airtally.zip'],
	// One file each: what a worker imports late would not be among the files kept for use offline.
	worker: { format: 'es', rolldownOptions: { output: { codeSplitting: false } } },
	build: { assetsInlineLimit: 0 },
	// Everything imported lazily or from a worker is listed: a dependency that Vite discovers late
	// reloads the page, which hangs browser tests on a cold cache (every fresh clone).
	optimizeDeps: {
		include: [
			'd3-array',
			'd3-scale',
			'd3-shape',
			'fflate',
			'highs',
			'ical-generator',
			'idb',
			'jspdf',
			'leaflet',
			'marked',
			'papaparse',
			'pdfjs-dist',
			'qrcode-generator',
			'write-excel-file/browser',
			'zod'
		]
	},
	test: {
		// One group after the other; within one, as many files at once as the smallest machine has cores.
		maxWorkers: 2,
		projects: [
			{
				extends: './vite.config.ts',
				test: {
					name: 'unit',
					environment: 'node',
					// A machine that is busy takes longer over a thousand drawn cases: no speed is asked here.
					testTimeout: 30_000,
					sequence: { groupOrder: 2 },
					include: ['src/**/*.test.ts', 'tests/unit/**/*.test.ts'],
					exclude: ['src/**/*.svelte.test.ts']
				}
			},
			{
				extends: './vite.config.ts',
				test: {
					name: 'component',
					// One file at a time, which leaves a core for the rest of the checks.
					sequence: { groupOrder: 1 },
					fileParallelism: false,
					include: ['src/**/*.svelte.test.ts'],
					browser: {
						enabled: true,
						headless: true,
						screenshotFailures: false,
						provider: playwright({
							launchOptions: { executablePath: findChromium() ?? '', args: chromiumArgs }
						}),
						instances: [{ browser: 'chromium' }]
					}
				}
			},
			{
				extends: './vite.config.ts',
				test: {
					name: 'story',
					environment: 'node',
					include: ['tests/story/**/*.test.ts'],
					exclude: ALONE,
					sequence: { groupOrder: 3 },
					globalSetup: ['tests/story/serve.ts'],
					testTimeout: 90_000,
					hookTimeout: 90_000
				}
			},
			{
				extends: './vite.config.ts',
				test: {
					name: 'story-alone',
					environment: 'node',
					include: ALONE,
					sequence: { groupOrder: 4 },
					globalSetup: ['tests/story/serve.ts'],
					testTimeout: 90_000,
					hookTimeout: 90_000,
					fileParallelism: false
				}
			},
			{
				extends: './vite.config.ts',
				test: {
					name: 'faults',
					environment: 'node',
					include: ['tests/faults/**/*.test.ts'],
					sequence: { groupOrder: 0 },
					globalSetup: ['tests/faults/serve.ts'],
					testTimeout: 90_000,
					hookTimeout: 90_000
				}
			}
		]
	}
}));
