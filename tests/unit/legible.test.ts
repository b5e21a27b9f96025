import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { OUTLINES } from '#lib/plan/pin.ts';
import { PIN_INKS } from '#lib/plan/pin-paint.ts';

const css = readFileSync('src/lib/ui/look/tokens.css', 'utf8');
const [day = '', night = ''] = css.split("data-look='dark'");

/** The colours of a look by token. */
function coloursOf(part: string): Record<string, string> {
	return Object.fromEntries(
		[...part.matchAll(/--([a-z-]+): (#[0-9a-f]{6});/g)].map(([, name = '', hex = '']) => [
			name,
			hex
		])
	);
}
const light = coloursOf(day);
const dark = coloursOf(night);

/** WCAG 2.2, definitions of relative luminance and contrast ratio (from memory). */
function luminance(hex: string): number {
	const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
		const share = parseInt(hex.slice(at, at + 2), 16) / 255;
		return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
	});
	return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(a: string, b: string): number {
	const [lighter = 0, darker = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
	return (lighter + 0.05) / (darker + 0.05);
}

const TEXTS = ['ink', 'ink-soft', 'deep', 'deep-dark', 'rust', 'moss', 'straw'];
const GROUNDS = ['paper', 'sheet', 'sunk', 'deep-pale', 'rust-pale', 'moss-pale', 'straw-pale'];

describe('text can be read', () => {
	test('black on white is 21 to 1', () => {
		expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
	});

	test.each([
		['by day, in glare, at 7 to 1 or more', light, 7],
		['by night at 4.5 to 1 or more', dark, 4.5]
	])('%s, every colour of text on every ground', (_, colours, least) => {
		for (const text of TEXTS)
			for (const ground of GROUNDS)
				expect(
					contrast(colours[text] ?? '', colours[ground] ?? ''),
					`${text} on ${ground}`
				).toBeGreaterThanOrEqual(least);
		for (const fill of ['deep', 'rust', 'moss', 'straw'])
			expect(
				contrast(colours['on-fill'] ?? light['on-fill'] ?? '', colours[fill] ?? ''),
				`on ${fill}`
			).toBeGreaterThanOrEqual(least);
	});
});

describe('pins', () => {
	const of = (name: string) => (name === 'white' ? '#ffffff' : (light[name] ?? ''));

	test.each([
		['white', '#ffffff'],
		['black', '#000000'],
		['blueprint blue', '#1f4e8c'],
		['a grey scan', '#8a8a8a']
	])('stand out from a plan that is %s, by 3 to 1 or more', (_, plan) => {
		for (const [state, { fill, line }] of Object.entries(PIN_INKS)) {
			const out = Math.max(contrast(of(fill), plan), contrast(of(line), plan));
			expect(out, state).toBeGreaterThanOrEqual(3);
			expect(contrast(of(fill), of(line)), `${state}: line on fill`).toBeGreaterThanOrEqual(3);
		}
	});

	test('carry a number at 7 to 1, and differ by shape where they differ by colour', () => {
		for (const { fill, text } of Object.values(PIN_INKS))
			expect(contrast(of(fill), of(text))).toBeGreaterThanOrEqual(7);
		const shapes = (['leaking', 'mended', 'tight'] as const).map((state) => OUTLINES[state]);
		expect(new Set([...shapes, OUTLINES.unseen]).size).toBe(4);
	});

	test('sort by severity without any colour: what leaks is the darkest, what is tight the lightest', () => {
		const [leaking, mended, tight] = (['leaking', 'mended', 'tight'] as const).map((state) =>
			luminance(of(PIN_INKS[state].fill))
		);
		expect(leaking).toBeLessThan(mended ?? 0);
		expect(mended).toBeLessThan(tight ?? 0);
	});
});
