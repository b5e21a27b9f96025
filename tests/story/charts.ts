import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/**
 * What every picture of figures owes its readers: a name, its figures as a table or beside it, a way by
 * keys, and marks that differ without colour on paper.
 * @returns how many charts and how many marks in rows were looked at
 */
export async function chartsAreSound(page: Page): Promise<{ charts: number; marks: number }> {
	const place = page.locator('#place');
	const figures = place.locator('figure:has(svg[role=img])');
	const charts = await figures.count();
	for (let at = 0; at < charts; at++) {
		const figure = figures.nth(at);
		const name = (await figure.locator('svg[role=img]').getAttribute('aria-label')) ?? '';
		expect(name.length, 'the name of a chart').toBeGreaterThan(10);
		for (const slider of await figure.locator('input[type=range]').all()) {
			const before = await slider.getAttribute('aria-valuetext');
			await slider.focus();
			await page.keyboard.press('End');
			await expect
				.poll(() => slider.getAttribute('aria-valuetext'), { message: name })
				.not.toBe(before);
		}
		const twin = figure.locator('details').last();
		if (!(await twin.locator('table').isVisible())) {
			await twin.locator('summary').focus();
			await page.keyboard.press('Enter');
		}
		await twin.locator('tbody tr').first().waitFor();
		expect(await twin.locator('thead th[scope=col]').count(), name).toBeGreaterThan(1);
		expect(await twin.locator('tbody th[scope=row]').count(), name).toBeGreaterThan(0);
	}
	await page.emulateMedia({ media: 'print' });
	const { faults, marks } = await page.evaluate(unlikeInGrey);
	await page.emulateMedia({ media: null });
	expect(faults).toEqual([]);
	return { charts, marks };
}

/** Runs in the page as it prints: marks in rows whose figures stand nowhere else, and what colour alone tells apart. */
function unlikeInGrey(): { faults: string[]; marks: number } {
	interface Ink {
		readonly name: string;
		readonly fill: string;
		readonly stroke: string;
		readonly dash: string;
		readonly width: number;
	}
	const NEAR = 25;
	const grey = (colour: string): number => {
		const [red = 0, green = 0, blue = 0] = (colour.match(/[\d.]+/g) ?? []).map(Number);
		return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
	};
	const isColour = (paint: string) => paint.startsWith('rgb');
	/** The same in grey, though not in colour; patterns and no paint differ from all else. */
	const alike = (a: string, b: string) =>
		a === b || (isColour(a) && isColour(b) && Math.abs(grey(a) - grey(b)) < NEAR);
	const faults: string[] = [];
	let marks = 0;
	for (const svg of document.querySelectorAll('#place svg[role=img]')) {
		const name = svg.getAttribute('aria-label') ?? '';
		if (!svg.closest('figure')) {
			marks++;
			const row = svg.closest('tr, dl > div') ?? svg.parentElement;
			const beside = (row?.textContent ?? '').replaceAll(/[^\d]+/g, ' ');
			const unsaid = (name.match(/\d+/g) ?? []).filter(
				(number) => number !== '90' && !beside.includes(number)
			);
			if (unsaid.length > 0) faults.push(`${name}: only drawn: ${unsaid.join(', ')}`);
		}
		const inks = new Map<string, Ink>();
		for (const shape of svg.querySelectorAll('path, rect, line')) {
			if (shape.closest('defs')) continue;
			const { fill, stroke, strokeDasharray, strokeWidth } = getComputedStyle(shape);
			const of = shape.closest('[class]')?.getAttribute('class') ?? '';
			const key = of.replaceAll(/\s?svelte-\w+/g, '');
			const width = stroke === 'none' ? 0 : Number.parseFloat(strokeWidth);
			inks.set(key, { name: key, fill, stroke, dash: strokeDasharray, width });
		}
		const all = [...inks.values()].filter(({ name: of }) => of !== 'grid' && of !== 'base');
		for (const [at, a] of all.entries())
			for (const b of all.slice(at + 1)) {
				const differ = a.fill !== b.fill || a.stroke !== b.stroke;
				const shown =
					!alike(a.fill, b.fill) ||
					a.dash !== b.dash ||
					Math.abs(a.width - b.width) >= 1 ||
					!alike(a.stroke, b.stroke);
				if (differ && !shown)
					faults.push(`${name}: ${a.name} and ${b.name} differ in colour alone`);
			}
	}
	return { faults, marks };
}
