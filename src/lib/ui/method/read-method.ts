import { lexer, type Token, type Tokens } from 'marked';

/** A run of text within a paragraph. */
export type Inline =
	| { readonly kind: 'text'; readonly text: string }
	| { readonly kind: 'code'; readonly text: string }
	/** The id of a rule, to be linked. */
	| { readonly kind: 'rule'; readonly text: string }
	/** Below and above the line: `A_e`, `r^(2/γ)`. */
	| { readonly kind: 'sub' | 'sup'; readonly text: string }
	| { readonly kind: 'strong'; readonly inlines: readonly Inline[] }
	| { readonly kind: 'em'; readonly inlines: readonly Inline[] };

export type Inlines = readonly Inline[];

export type Block =
	| { readonly kind: 'paragraph'; readonly inlines: Inlines }
	| { readonly kind: 'list'; readonly ordered: boolean; readonly items: readonly Inlines[] }
	| {
			readonly kind: 'table';
			readonly head: readonly Inlines[];
			/** A row that is a rule of its own, such as a caution, has its id. */
			readonly rows: readonly { readonly id?: string; readonly cells: readonly Inlines[] }[];
	  };

/** A rule: what stands under a heading such as `A3 Flow through an opening`. */
export interface Rule {
	readonly id: string;
	readonly title: string;
	readonly blocks: readonly Block[];
}

/** A part of the text; its anchor is its letter, or words of its heading. */
export interface Part {
	readonly anchor: string;
	readonly title: string;
	readonly blocks: readonly Block[];
	readonly rules: readonly Rule[];
}

export interface MethodText {
	readonly title: string;
	readonly opening: readonly Block[];
	readonly parts: readonly Part[];
}

const RULE_HEADING = /^([A-Z]\d+) (.+)$/;
const PART_HEADING = /^([A-Z])\. /;
const RULE_ROW = /^[A-Z]\d+$/;

/**
 * Reads METHOD.md into plain data to be drawn by components: no HTML is made of it.
 * @throws RangeError for Markdown that the page has no way to draw
 */
export function readMethod(markdown: string): MethodText {
	const known = new Set(
		[...markdown.matchAll(/^(?:### ([A-Z]\d+) |\| ([A-Z]\d+) +\|)/gm)].map(
			([, heading, row]) => heading ?? row ?? ''
		)
	);
	let title = '';
	const opening: Block[] = [];
	const parts: { anchor: string; title: string; blocks: Block[]; rules: OpenRule[] }[] = [];
	for (const token of lexer(markdown) as Tokens.Generic[]) {
		if (token.type === 'space') continue;
		const part = parts.at(-1);
		if (!isHeading(token)) {
			const block = readBlock(token, known);
			(part?.rules.at(-1)?.blocks ?? part?.blocks ?? opening).push(block);
		} else if (token.depth === 1) title = token.text;
		else if (token.depth === 2) {
			const anchor = PART_HEADING.exec(token.text)?.[1] ?? slug(token.text);
			parts.push({ anchor, title: token.text, blocks: [], rules: [] });
		} else {
			const [, id, name] = RULE_HEADING.exec(token.text) ?? [];
			if (!part || id === undefined || name === undefined)
				throw new RangeError(`a heading that is no rule: ${token.text}`);
			part.rules.push({ id, title: name, blocks: [] });
		}
	}
	return { title, opening, parts };
}

interface OpenRule extends Rule {
	readonly blocks: Block[];
}

function isHeading(token: Token): token is Tokens.Heading {
	return token.type === 'heading';
}

function readBlock(token: Token, known: ReadonlySet<string>): Block {
	switch (token.type) {
		case 'paragraph':
			return { kind: 'paragraph', inlines: readInlines(token.tokens, known) };
		case 'list': {
			const { ordered, items } = token as Tokens.List;
			return { kind: 'list', ordered, items: items.map((item) => readInlines(item.tokens, known)) };
		}
		case 'table': {
			const { header, rows } = token as Tokens.Table;
			return {
				kind: 'table',
				head: header.map((cell) => readInlines(cell.tokens, known)),
				rows: rows.map((row) => {
					const id = row[0]?.text ?? '';
					const cells = row.map((cell) => readInlines(cell.tokens, known));
					return RULE_ROW.test(id) ? { id, cells } : { cells };
				})
			};
		}
		default:
			throw new RangeError(`no way to draw ${token.type}: ${token.raw}`);
	}
}

function readInlines(tokens: readonly Token[] | undefined, known: ReadonlySet<string>): Inline[] {
	return (tokens ?? []).flatMap((token): Inline[] => {
		switch (token.type) {
			case 'text': {
				const { tokens: inner, text } = token as Tokens.Text;
				return inner ? readInlines(inner, known) : setApart(text, known);
			}
			case 'escape':
				return [{ kind: 'text', text: (token as Tokens.Escape).text }];
			case 'codespan':
				return [{ kind: 'code', text: (token as Tokens.Codespan).text }];
			case 'strong':
			case 'em':
				return [{ kind: token.type, inlines: readInlines(token.tokens, known) }];
			case 'paragraph':
				return readInlines(token.tokens, known);
			default:
				throw new RangeError(`no way to draw ${token.type}: ${token.raw}`);
		}
	});
}

const RULE_ID = /\b(?<rule>[A-Z]\d{1,2})\b/;
const BELOW = /(?<=\p{L}\u0307?)_(?<sub>[\p{L}\d]+)/u;
/** A power: a number, or brackets with at most one more pair inside. */
const ABOVE = /\^(?:\((?<sum>(?:[^()]|\([^()]*\))*)\)|(?<power>\d+(?:\.\d+)?))/;
const SET_APART = new RegExp([RULE_ID, BELOW, ABOVE].map(({ source }) => source).join('|'), 'gu');
/** A number and its unit stay on one line. */
const BEFORE_UNIT = /(?<=\d) (?=%|°C|bar\b|kPa\b|psig?\b|mm\b|in\b|kg\/|m³|L\/|kW|J\/)/g;

/** Text with rules to link, and what stands below or above the line, set apart. */
function setApart(text: string, known: ReadonlySet<string>): Inline[] {
	const inlines: Inline[] = [];
	let from = 0;
	for (const { 0: whole, index, groups = {} } of text.matchAll(SET_APART)) {
		const { rule, sub, sum, power } = groups;
		if (rule !== undefined && !known.has(rule)) continue;
		if (index > from) inlines.push(plain(text.slice(from, index)));
		if (rule !== undefined) inlines.push({ kind: 'rule', text: rule });
		else if (sub !== undefined) inlines.push({ kind: 'sub', text: sub });
		else inlines.push({ kind: 'sup', text: sum ?? power ?? '' });
		from = index + whole.length;
	}
	if (from < text.length) inlines.push(plain(text.slice(from)));
	return inlines;
}

function plain(text: string): Inline {
	return { kind: 'text', text: text.replaceAll(BEFORE_UNIT, '\u00a0') };
}

function slug(heading: string): string {
	return heading.toLowerCase().replaceAll(/[^a-z]+/g, '-');
}
