import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '../..');
const methodText = readFileSync(join(root, 'src/lib/core/METHOD.md'), 'utf8');

interface Source {
	readonly file: string;
	readonly text: string;
}

function sources(folder: string, wanted: (file: string) => boolean): Source[] {
	return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
		.filter(wanted)
		.map((name) => join(folder, name))
		.map((file) => ({ file, text: readFileSync(join(root, file), 'utf8') }));
}

const isTest = (file: string): boolean => file.endsWith('.test.ts');
const core = sources('src/lib/core', (file) => file.endsWith('.ts') && !isTest(file));
const tests = [...sources('src', isTest), ...sources('tests', isTest)];

/** Rules are headings, `### A3 Flow through an opening`; cautions are rows of a table, `| C7  |`. */
const rules = [...methodText.matchAll(/^(?:### ([A-Z]\d+) \S|\| ([A-Z]\d+) +\|)/gm)].map(
	([, heading, row]) => heading ?? row ?? ''
);

/** `METHOD A3`, `METHOD S10, S11`, `METHOD A7 to A12`, `METHOD S10–S14`, over line breaks too. */
const CITED = /\bMETHOD\s+([A-Z]\d+(?:(?:\s*,\s*|\s+and\s+|\s+to\s+|\s*–\s*)[A-Z]\d+)*)/g;

function expanded(list: string): string[] {
	const ids: string[] = [];
	for (const [, joint, letter = '', number] of list.matchAll(/(to |–)?\s*([A-Z])(\d+)/g)) {
		const before = ids.at(-1);
		const first =
			joint && before?.startsWith(letter) ? Number(before.slice(1)) + 1 : Number(number);
		for (let at = first; at <= Number(number); at++) ids.push(`${letter}${at}`);
	}
	return ids;
}

/** A citation in a comment, with the comment's own line starts taken out. */
function citedIn(text: string): string[] {
	const flowing = text.replaceAll(/\n\s*(?:\*(?!\/)|\/\/)\s?/g, ' ');
	return [...flowing.matchAll(CITED)].flatMap(([, list = '']) => expanded(list));
}

/** Ids that the titles of tests lead with: `'[A3][A5] flow …'`. */
function testedIn(text: string): string[] {
	return [...text.matchAll(/['"`]((?:\[[A-Z]\d+\] ?)+)/g)].flatMap(([, lead = '']) =>
		[...lead.matchAll(/[A-Z]\d+/g)].map(([id]) => id)
	);
}

describe('METHOD.md', () => {
	it('gives each id once, in the order A, T, S, M, W, C, P, V', () => {
		expect(rules.length).toBeGreaterThan(80);
		expect(rules.filter((id, index) => rules.indexOf(id) !== index)).toEqual([]);
		const letters = [...new Set(rules.map((id) => id.charAt(0)))].join('');
		expect('ATSMWCPV'.startsWith(letters), letters).toBe(true);
		for (const letter of letters) {
			const numbers = rules.filter((id) => id.startsWith(letter)).map((id) => Number(id.slice(1)));
			expect(numbers, letter).toEqual(numbers.map((_, index) => index + 1));
		}
	});

	it('is one text, with no part left lying beside it', () => {
		const folder = readdirSync(join(root, 'src/lib/core'));
		expect(folder.filter((name) => name.endsWith('.md'))).toEqual(['METHOD.md']);
	});

	it('names a source under every rule', () => {
		const sections = methodText.split(/^### /m).slice(1);
		const wanting = sections.filter((text) => !/_Source:[^_]/.test(text.split(/^## /m)[0] ?? ''));
		expect(wanting.map((text) => text.split('\n')[0])).toEqual([]);
	});

	it('has an entry for every id that the code cites', () => {
		const wanting = core.flatMap(({ file, text }) =>
			citedIn(text)
				.filter((id) => !rules.includes(id))
				.map((id) => `${id} in ${file}`)
		);
		expect([...new Set(wanting)]).toEqual([]);
	});

	it('has no rule that no formula cites', () => {
		const cited = new Set(core.flatMap(({ text }) => citedIn(text)));
		expect(cited.size).toBeGreaterThan(50);
		expect(rules.filter((id) => !cited.has(id))).toEqual([]);
	});

	it('has a test for every rule, and no test leads with an id that is not a rule', () => {
		const tested = new Set(tests.flatMap(({ text }) => testedIn(text)));
		expect(rules.filter((id) => !tested.has(id))).toEqual([]);
		expect([...tested].filter((id) => !rules.includes(id))).toEqual([]);
	});
});

interface Formula {
	readonly name: string;
	readonly comment: string;
}

/** Exported functions with the comment that stands over them. */
function formulasIn({ file, text }: Source): Formula[] {
	const found = text.matchAll(/\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*export function (\w+)/g);
	return [...found].map(([, comment = '', name = '']) => ({ name: `${name} in ${file}`, comment }));
}

describe('formulas', () => {
	const formulas = core
		.filter(({ file }) => /core[/\\](air|supply|money)[/\\]/.test(file))
		.flatMap(formulasIn)
		.filter(({ comment }) => comment.includes('@source'));

	it.each([
		['their METHOD id', /\bMETHOD\s+[A-Z]\d/],
		['what they return', /@returns/],
		['where they are valid', /@validity/]
	])('each says %s', (_what, pattern) => {
		expect(formulas.length).toBeGreaterThan(40);
		const wanting = formulas.filter(
			({ comment }) => !pattern.test(comment.replaceAll(/\n\s*\*/g, ' '))
		);
		expect(wanting.map(({ name }) => name)).toEqual([]);
	});
});

describe('the gate itself', () => {
	it('reads lists, ranges and broken lines of citations', () => {
		expect(citedIn('METHOD A7 to A9, W1')).toEqual(['A7', 'A8', 'A9', 'W1']);
		expect(citedIn('METHOD S10–S12')).toEqual(['S10', 'S11', 'S12']);
		expect(citedIn('money. METHOD W5,\n * M2 to M4, M10.')).toEqual([
			'W5',
			'M2',
			'M3',
			'M4',
			'M10'
		]);
		expect(citedIn('METHOD C1 and C3')).toEqual(['C1', 'C3']);
		expect(testedIn("it('[A3][T5] law', () => {")).toEqual(['A3', 'T5']);
		expect(testedIn("it('[C1] [C2] law', () => {")).toEqual(['C1', 'C2']);
	});
});
