import { readFileSync } from 'node:fs';
import { strFromU8, unzipSync } from 'fflate';
import type { Page } from 'playwright-core';

/** Words that are the same in every language: units, and names of things outside the app. */
const OF_NO_LANGUAGE = [
	'Airtally',
	'English',
	'Deutsch',
	'bar',
	'EUR',
	'kPa',
	'kWh',
	'MWh',
	'psi',
	'cfm',
	'min',
	'dm',
	'EUR'
];

/** Every text that somebody entered into a demo site: longest first, so that none hides a part of another. */
export function textsOfDemo(demo = 'survey-examples/ceramics-works.airtally.zip'): string[] {
	const files = unzipSync(readFileSync(demo), {
		filter: ({ name }) => /\.json(l|nd)?$|\.ndjson$/.test(name)
	});
	const texts = new Set<string>();
	for (const bytes of Object.values(files))
		for (const [, text] of strFromU8(bytes).matchAll(/"((?:[^"\\]|\\.)*)"/g)) {
			const entered = JSON.parse(`"${text ?? ''}"`) as string;
			if (/[A-Za-z]{3}/.test(entered) && !/^[\w-]+$/.test(entered)) texts.add(entered);
			else if (/^[A-Z][a-z]+$/.test(entered)) texts.add(entered);
		}
	return [...texts].sort((one, other) => other.length - one.length);
}

/** What is seen or read out of the page, without what somebody entered. */
async function spoken(page: Page, entered: readonly string[]): Promise<string[]> {
	const texts = await page.evaluate(() => {
		const found = new Set([document.title]);
		const seen = (element: Element) =>
			element.checkVisibility() && !element.closest('[lang]:not(html), script, style');
		const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
		while (walker.nextNode()) {
			const node = walker.currentNode;
			if (node.parentElement && seen(node.parentElement)) found.add(node.textContent ?? '');
		}
		for (const name of ['aria-label', 'title', 'placeholder', 'alt', 'aria-valuetext'])
			for (const element of document.querySelectorAll(`[${name}]`))
				if (seen(element)) found.add(element.getAttribute(name) ?? '');
		return [...found];
	});
	return texts.map((text) => {
		let rest = text;
		for (const known of [...entered, ...OF_NO_LANGUAGE]) rest = rest.replaceAll(known, ' ');
		return rest;
	});
}

/** Texts that have a word with no accent on it: in the pseudo-language they did not come from the catalogue. */
export async function leftovers(page: Page, entered: readonly string[]): Promise<string[]> {
	return (await spoken(page, entered)).filter((text) => /[A-Za-z]{3}/.test(text));
}

/** Texts with words that only English has. */
export async function english(page: Page, entered: readonly string[]): Promise<string[]> {
	const words = /\b(the|of|and|with|from|not|this|leaks?|add|remove|pressure|year|what|which)\b/i;
	return (await spoken(page, entered)).filter((text) => words.test(text));
}
