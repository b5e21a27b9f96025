import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readMethod, type Block, type Inlines } from './read-method.ts';

const markdown = readFileSync(new URL('../../core/METHOD.md', import.meta.url), 'utf8');

function textOf(inlines: Inlines): string {
	return inlines
		.map((each) => {
			if (each.kind === 'sub') return `_${each.text}`;
			if (each.kind === 'sup') return `^${each.text}`;
			return 'text' in each ? each.text : textOf(each.inlines);
		})
		.join('');
}

function blockText(block: Block): string {
	if (block.kind === 'paragraph') return textOf(block.inlines);
	if (block.kind === 'list') return block.items.map(textOf).join(' ');
	return [block.head, ...block.rows.map(({ cells }) => cells)]
		.map((row) => row.map(textOf).join(' '))
		.join(' ');
}

const words = (text: string): string[] => text.match(/[\p{L}\p{N}]+/gu) ?? [];

describe('reading METHOD.md', () => {
	const method = readMethod(markdown);

	it('loses no word of it', () => {
		const shown = [
			method.title,
			...method.opening.map(blockText),
			...method.parts.flatMap((part) => [
				part.title,
				...part.blocks.map(blockText),
				...part.rules.flatMap((rule) => [`${rule.id} ${rule.title}`, ...rule.blocks.map(blockText)])
			])
		];
		// The numbers of ordered lists are the list's own.
		const written = markdown.replaceAll(/^\d+\. /gm, '');
		expect(words(shown.join(' '))).toEqual(words(written));
	});

	it('finds the rules with their titles, and cautions as rows with an anchor', () => {
		const air = method.parts.find(({ anchor }) => anchor === 'A');
		expect(air?.rules[2]).toMatchObject({ id: 'A3', title: 'Flow through an opening' });
		const cautions = method.parts.find(({ anchor }) => anchor === 'C');
		const ids = cautions?.blocks.flatMap((block) =>
			block.kind === 'table' ? block.rows.map(({ id }) => id) : []
		);
		expect(ids?.slice(0, 2)).toEqual(['C1', 'C2']);
	});

	it('links the ids of rules that there are, and nothing else', () => {
		const { parts } = readMethod('# M\n\n## A. Air\n\n### A1 One\n\nAs A1 and A2 say, `A1` too.\n');
		expect(parts[0]?.rules[0]?.blocks).toEqual([
			{
				kind: 'paragraph',
				inlines: [
					{ kind: 'text', text: 'As ' },
					{ kind: 'rule', text: 'A1' },
					{ kind: 'text', text: ' and A2 say, ' },
					{ kind: 'code', text: 'A1' },
					{ kind: 'text', text: ' too.' }
				]
			}
		]);
	});

	it('sets what stands below and above the line', () => {
		const { opening } = readMethod('# M\n\nA_e = r^((γ+1)/γ)·x^2.5 at 7 bar, ṁ_L.\n');
		expect(opening).toEqual([
			{
				kind: 'paragraph',
				inlines: [
					{ kind: 'text', text: 'A' },
					{ kind: 'sub', text: 'e' },
					{ kind: 'text', text: ' = r' },
					{ kind: 'sup', text: '(γ+1)/γ' },
					{ kind: 'text', text: '·x' },
					{ kind: 'sup', text: '2.5' },
					{ kind: 'text', text: ' at 7\u00a0bar, ṁ' },
					{ kind: 'sub', text: 'L' },
					{ kind: 'text', text: '.' }
				]
			}
		]);
	});

	it('refuses what the page could not draw', () => {
		expect(() => readMethod('# M\n\n<b>bold</b>\n')).toThrow(RangeError);
		expect(() => readMethod('# M\n\n## A. Air\n\n### Not a rule\n')).toThrow(RangeError);
	});
});
