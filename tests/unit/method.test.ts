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
	/** As they are named; `undefined` where one is taken apart in its place. */
	readonly parameters: readonly (string | undefined)[];
}

/** Exported functions with the comment that stands over them, empty where none does. */
function formulasIn({ file, text }: Source): Formula[] {
	const found = text.matchAll(/(?:\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*)?^export function (\w+)\(/gm);
	return [...found].map(({ 0: head, 1: comment = '', 2: name = '', index }) => ({
		name: `${name} in ${file}`,
		comment: comment.replaceAll(/\n\s*\*/g, ' '),
		parameters: parametersFrom(text, index + head.length)
	}));
}

function parametersFrom(text: string, start: number): (string | undefined)[] {
	const parameters = [''];
	let depth = 1;
	for (let at = start; ; at++) {
		const character = text.charAt(at);
		if ('([{<'.includes(character)) depth++;
		else if (')]}'.includes(character) || (character === '>' && text[at - 1] !== '=')) depth--;
		if (depth === 0) break;
		if (depth === 1 && character === ',') parameters.push('');
		else parameters[parameters.length - 1] += character;
	}
	return parameters
		.map((parameter) => parameter.trim())
		.filter((parameter) => parameter !== '')
		.map((parameter) => /^\w+/.exec(parameter)?.[0]);
}

const parametersNamedIn = (comment: string): string[] =>
	[...comment.matchAll(/@param (\w+)/g)].map(([, name = '']) => name);

describe('formulas', () => {
	/** What only passes or refuses a reading computes nothing; it says what it passes. */
	const guard = ({ name, comment }: Formula): boolean =>
		name.startsWith('check') && /\bPasses\b/.test(comment);
	const formulas = core
		.filter(({ file }) => /core[/\\](air|supply|money)[/\\]/.test(file))
		.flatMap(formulasIn)
		.filter((formula) => !guard(formula));

	it.each([
		['their METHOD id', /\bMETHOD\s+[A-Z]\d/],
		['what they return', /@returns \S/],
		['where they are valid', /@validity \S/],
		['where they come from', /@source \S/]
	])('each says %s', (_what, pattern) => {
		expect(formulas.length).toBeGreaterThan(100);
		const wanting = formulas.filter(({ comment }) => !pattern.test(comment));
		expect(wanting.map(({ name }) => name)).toEqual([]);
	});

	it('each says what it takes, in the order in which it takes it', () => {
		const wanting = formulas.filter(({ comment, parameters }) => {
			const said = parametersNamedIn(comment);
			return (
				said.length !== parameters.length ||
				parameters.some((name, place) => name !== undefined && name !== said[place])
			);
		});
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

	it('reads what a function takes, and sees one that nothing is said of', () => {
		const text = [
			'/** A sum. */',
			'export function sum(a: number, { b }: B, c: (x: number) => Map<A, B>): number {',
			'}',
			'',
			'export function bare(): void {}'
		].join('\n');
		expect(formulasIn({ file: 'f', text })).toEqual([
			{ name: 'sum in f', comment: ' A sum. ', parameters: ['a', undefined, 'c'] },
			{ name: 'bare in f', comment: '', parameters: [] }
		]);
	});
});
