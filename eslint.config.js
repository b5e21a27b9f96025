import js from '@eslint/js';
import prettier from 'eslint-config-prettier';
import svelte from 'eslint-plugin-svelte';
import { defineConfig, globalIgnores } from 'eslint/config';
import globals from 'globals';
import ts from 'typescript-eslint';

/** The core is pure: what it needs of the outside is handed to it. */
const ambient = [
	{ name: 'Date', message: 'The core has no clock: take the instant as a parameter.' },
	{ name: 'Intl', message: 'The core does not format: that is done at the edge, by locale.' },
	{ name: 'crypto', message: 'The core has no dice: take ids and random numbers as parameters.' },
	{ name: 'performance', message: 'The core has no clock.' },
	{ name: 'fetch', message: 'The core has no network.' },
	{ name: 'console', message: 'The core says nothing: return a Result.' },
	{ name: 'process', message: 'The core runs anywhere.' },
	{ name: 'setTimeout', message: 'The core has no clock.' }
];

export default defineConfig(
	globalIgnores(['build/', '.svelte-kit/', 'static/', 'test-results/']),
	js.configs.recommended,
	ts.configs.recommendedTypeChecked,
	svelte.configs.recommended,
	prettier,
	svelte.configs.prettier,
	{
		languageOptions: {
			globals: { ...globals.browser, ...globals.node },
			parserOptions: {
				projectService: true,
				tsconfigRootDir: import.meta.dirname,
				extraFileExtensions: ['.svelte']
			}
		},
		rules: {
			'no-undef': 'off', // TypeScript does this, and knows the types too.
			'@typescript-eslint/no-unused-vars': [
				'error',
				{ argsIgnorePattern: '^_', varsIgnorePattern: '^_' }
			],
			'@typescript-eslint/consistent-type-imports': 'error',
			'@typescript-eslint/switch-exhaustiveness-check': [
				'error',
				{ considerDefaultExhaustiveForUnions: true }
			],
			eqeqeq: 'error',
			'no-restricted-syntax': [
				'error',
				{
					selector: 'SvelteMustacheTag[kind="raw"]',
					message: 'Text from users or files must never become HTML.'
				}
			]
		}
	},
	{
		files: ['**/*.svelte', '**/*.svelte.ts'],
		languageOptions: {
			parserOptions: { parser: ts.parser, svelteConfig: { compilerOptions: { runes: true } } }
		},
		// Addresses carry the site in the query, which resolve() cannot type.
		rules: { 'svelte/no-navigation-without-resolve': ['error', { ignoreLinks: true }] }
	},
	{
		// To this parser every imported component is `any`; svelte-check knows what they take and give.
		files: ['**/*.svelte'],
		rules: {
			'@typescript-eslint/no-unsafe-argument': 'off',
			'@typescript-eslint/no-unsafe-assignment': 'off',
			'@typescript-eslint/no-unsafe-call': 'off',
			'@typescript-eslint/no-unsafe-member-access': 'off',
			'@typescript-eslint/no-unsafe-return': 'off'
		}
	},
	{
		files: ['src/lib/core/**/*.ts'],
		ignores: ['**/*.test.ts'],
		rules: {
			'no-restricted-globals': ['error', ...ambient],
			'no-restricted-properties': [
				'error',
				{ object: 'Math', property: 'random', message: 'The core has no dice.' }
			],
			'no-restricted-syntax': [
				'error',
				{
					selector: 'MemberExpression[property.name=/^toLocale/]',
					message: 'The core does not format: that is done at the edge, by locale.'
				}
			]
		}
	},
	// Type-only imports inside components are invisible to the dependency rules, so lint holds the doors.
	{
		files: ['src/lib/ui/**/*.svelte'],
		rules: {
			'no-restricted-imports': [
				'error',
				{
					patterns: [
						{
							regex: '#lib/(storage|session|plan|report)|/routes/',
							message:
								'A component takes props and gives callbacks; it knows the core and the words only.'
						}
					]
				}
			]
		}
	},
	{
		files: ['**/*.js', '**/*.mjs'],
		...ts.configs.disableTypeChecked
	}
);
