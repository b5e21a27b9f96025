// The doors between the rooms of src/lib. Each rule says, to whoever trips it, what to do instead.
const core = '^src/lib/core';

/** @type {import('dependency-cruiser').IConfiguration} */
export default {
	forbidden: [
		{
			name: 'no-circles',
			severity: 'error',
			comment: 'Two files that need each other are one file, or hide a third: find it.',
			from: {},
			to: { circular: true }
		},
		{
			name: 'core-knows-nobody',
			severity: 'error',
			comment: 'The core is pure: hand it what it needs as a parameter.',
			from: { path: core, pathNot: '\\.test\\.ts$' },
			to: { pathNot: [core, '^node_modules/zod/'] }
		},
		{
			name: 'units-first',
			severity: 'error',
			comment: 'units/ is the ground floor: it knows no other room.',
			from: { path: `${core}/units`, pathNot: '\\.test\\.ts$' },
			to: { path: `${core}/(?!units)` }
		},
		{
			name: 'formulas-know-units-only',
			severity: 'error',
			comment:
				'air, supply, money and logger have never heard of a survey or of each other; what two of them share lives in units/.',
			from: { path: `${core}/(air|supply|money|logger)/`, pathNot: '\\.test\\.ts$' },
			to: { path: `${core}/`, pathNot: [`${core}/units/`, `${core}/$1/`] }
		},
		{
			name: 'survey-below-weigh',
			severity: 'error',
			comment: 'The document does not compute: formulas meet it in weigh/.',
			from: { path: `${core}/survey/`, pathNot: '\\.test\\.ts$' },
			to: { path: `${core}/(weigh|mend|prove)/` }
		},
		{
			name: 'weigh-below-mend-and-prove',
			severity: 'error',
			comment: 'mend/ and prove/ read the assessment; weigh/ does not know them.',
			from: { path: `${core}/weigh/`, pathNot: '\\.test\\.ts$' },
			to: { path: `${core}/(mend|prove)/` }
		},
		{
			name: 'mend-and-prove-apart',
			severity: 'error',
			comment: 'mend/ and prove/ stand side by side; what both need lives in weigh/ or survey/.',
			from: { path: `${core}/(mend|prove)/`, pathNot: '\\.test\\.ts$' },
			to: { path: `${core}/(mend|prove)/`, pathNot: `${core}/$1/` }
		},
		{
			name: 'words-know-core-only',
			severity: 'error',
			comment: 'words/ turns codes into sentences for screens, prints and the command line alike.',
			from: { path: '^src/lib/words/', pathNot: '\\.test\\.ts$' },
			to: { path: '^src/', pathNot: ['^src/lib/words/', core] }
		},
		{
			name: 'ui-takes-props',
			severity: 'error',
			comment: 'A component takes props and gives callbacks: pass it the data, not the session.',
			from: { path: '^src/lib/ui/', pathNot: '\\.test\\.ts$' },
			to: { path: '^src/', pathNot: ['^src/lib/ui/', '^src/lib/words/', core] }
		},
		{
			name: 'plan-shows-pins',
			severity: 'error',
			comment:
				'plan/ draws plans and pins; it may use components, and nothing that stores or prints.',
			from: { path: '^src/lib/plan/', pathNot: '\\.test\\.ts$' },
			to: { path: '^src/', pathNot: ['^src/lib/plan/', '^src/lib/ui/', '^src/lib/words/', core] }
		},
		{
			name: 'leaflet-lives-in-plan',
			severity: 'error',
			comment: 'Leaflet lives in src/lib/plan and nowhere else: use the components there.',
			from: { pathNot: '^src/lib/plan/' },
			to: { path: '^node_modules/(@types/)?leaflet/' }
		},
		{
			name: 'report-is-data-to-page',
			severity: 'error',
			comment:
				'report/ makes pages from an assessment and a survey: it opens nothing and shows nothing.',
			from: { path: '^src/lib/report/', pathNot: '\\.test\\.ts$' },
			to: { path: '^src/', pathNot: ['^src/lib/report/', '^src/lib/words/', core] }
		},
		{
			name: 'storage-is-a-port',
			severity: 'error',
			comment: 'storage/ keeps commands and bytes: it knows the document and nothing above it.',
			from: { path: '^src/lib/storage/', pathNot: '\\.test\\.ts$' },
			to: { path: '^src/', pathNot: ['^src/lib/storage/', core] }
		},
		{
			name: 'session-holds-the-survey',
			severity: 'error',
			comment:
				'session/ joins the core to storage and report; screens come to it, not the other way.',
			from: { path: '^src/lib/session/', pathNot: '\\.test\\.ts$' },
			to: {
				path: '^src/',
				pathNot: [
					'^src/lib/session/',
					'^src/lib/storage/',
					'^src/lib/report/',
					'^src/lib/words/',
					core
				]
			}
		},
		{
			name: 'command-line-beside-the-app',
			severity: 'error',
			comment:
				'The command line uses the same core, report and survey files as the app; no screens.',
			from: { path: '^src/cli/', pathNot: '\\.test\\.ts$' },
			to: {
				path: '^src/',
				pathNot: [
					'^src/cli/',
					'^src/lib/report/',
					'^src/lib/storage/file/',
					'^src/lib/words/',
					core
				]
			}
		},
		{
			name: 'routes-on-top',
			severity: 'error',
			comment: 'Nothing imports a route: a route finds the session and places components.',
			from: { path: '^src/lib/' },
			to: { path: '^src/(routes|cli)/' }
		}
	],
	options: {
		doNotFollow: { path: 'node_modules' },
		tsPreCompilationDeps: true,
		enhancedResolveOptions: {
			conditionNames: ['svelte', 'import', 'default', 'types'],
			extensions: ['.ts', '.mjs', '.js', '.svelte', '.d.ts']
		}
	}
};
