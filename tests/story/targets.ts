import type { Page } from 'playwright-core';

/**
 * What a gloved finger cannot tell apart on the place that is open: targets of less than 48 px either
 * way, and neighbours whose middle 48 px lie less than 8 px from each other.
 */
export function badTargets(page: Page): Promise<string[]> {
	return page.evaluate(() => {
		const [LEAST, GAP, SLACK] = [48, 8, 0.6];
		interface Target {
			readonly name: string;
			readonly box: DOMRect;
			readonly node: Element;
		}
		const targets: Target[] = [];
		const found: string[] = [];
		const all = document.querySelectorAll<HTMLElement>(
			'#place button, #place a[href], #place input, #place select, #place textarea, #place summary'
		);
		for (const element of all) {
			// A box to tick or a file to choose is touched by its label.
			const node = element.closest('label') ?? element;
			// The plan's own pins and marks are dense by nature; the list beside it is their twin.
			if (element.closest('.plan-map') || !node.checkVisibility({ visibilityProperty: true }))
				continue;
			const box = node.getBoundingClientRect();
			if (box.width < 2 || box.height < 2) continue;
			if (targets.some((other) => other.node === node)) continue;
			const said = (element.getAttribute('aria-label') ?? node.textContent).trim();
			const name = `${element.tagName} ${said.slice(0, 40)}`;
			targets.push({ name, box, node });
			if (box.width < LEAST - SLACK || box.height < LEAST - SLACK)
				found.push(`${name}: ${box.width.toFixed(0)} × ${box.height.toFixed(0)}`);
		}
		const spare = (length: number) => Math.max(0, (length - LEAST) / 2);
		const fixed = (node: Element) => node.closest('.confirm') !== null;
		for (const [index, a] of targets.entries()) {
			for (const b of targets.slice(index + 1)) {
				if (a.node.contains(b.node) || b.node.contains(a.node)) continue;
				// What stays at the foot of the screen passes over what is scrolled beneath it.
				if (fixed(a.node) !== fixed(b.node)) continue;
				const down = Math.max(b.box.top - a.box.bottom, a.box.top - b.box.bottom);
				const across = Math.max(b.box.left - a.box.right, a.box.left - b.box.right);
				const apart =
					across < 0
						? down + spare(a.box.height) + spare(b.box.height)
						: down < 0
							? across + spare(a.box.width) + spare(b.box.width)
							: GAP;
				if (apart < GAP - SLACK)
					found.push(`${a.name} and ${b.name}: ${apart.toFixed(0)} px apart`);
			}
		}
		return found;
	});
}

/** Text that does not fit where it stands: cut off, or sticking out of the screen. */
export function clipped(page: Page): Promise<string[]> {
	return page.evaluate(() => {
		const found: string[] = [];
		for (const node of document.querySelectorAll<HTMLElement>('body *')) {
			if (node.closest('.plan-map, .for-readers-only, svg, input, select, textarea')) continue;
			const box = node.getBoundingClientRect();
			// What is only read out is a pixel wide.
			if (!node.checkVisibility() || box.width < 2 || box.height < 2) continue;
			const text = [...node.childNodes].some(
				(child) => child.nodeType === Node.TEXT_NODE && child.textContent?.trim()
			);
			const { overflowX, overflowY, textOverflow } = getComputedStyle(node);
			// A name cut short by dots stands in full in the title of the page.
			if (textOverflow === 'ellipsis') continue;
			const cutX =
				['hidden', 'clip'].includes(overflowX) && node.scrollWidth > node.clientWidth + 1;
			const cutY =
				['hidden', 'clip'].includes(overflowY) && node.scrollHeight > node.clientHeight + 1;
			const out = text && box.width > 0 && !inScroller(node) && box.right > innerWidth + 1;
			if (cutX || cutY || out)
				found.push(`${node.tagName}.${node.className} ${node.textContent.trim().slice(0, 40)}`);
		}
		return found;

		/** Inside something that can be scrolled sideways, all of it can be reached. */
		function inScroller(node: HTMLElement): boolean {
			for (let at: HTMLElement | null = node; at; at = at.parentElement) {
				const { overflowX } = getComputedStyle(at);
				if (overflowX === 'auto' || overflowX === 'scroll') return true;
			}
			return false;
		}
	});
}

/** Goes on with the Tab key alone until something has the focus, as a person without a pointer does. */
export async function tabTo(
	page: Page,
	name: RegExp | string,
	role: 'button' | 'link' | 'radio' | 'combobox' | 'textbox' | 'application' | 'checkbox'
): Promise<void> {
	const wanted = page.getByRole(role, typeof name === 'string' ? { name, exact: true } : { name });
	for (let presses = 0; presses < 400; presses++) {
		await page.keyboard.press('Tab');
		const there = await wanted.evaluateAll((all) =>
			all.some((each) => each === document.activeElement)
		);
		if (there) return;
	}
	throw new Error(`the Tab key never comes to ${role} ${String(name)}`);
}
