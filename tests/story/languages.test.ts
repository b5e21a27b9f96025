import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { CAUTION_RULES } from '../../src/lib/core/mend/caution-rules.ts';
import { german } from '../../src/lib/words/de/index.ts';
import { siteList } from '../../src/lib/words/en/site-list.ts';
import { walk } from '../../src/lib/words/en/walk.ts';
import { readPdf } from '../report/read-pdf.ts';
import { AUTUMN, DESK, largeLetters, overflow, PHONE, picture } from './browser.ts';
import { freshPages } from './fresh-pages.ts';
import { english, leftovers, textsOfDemo } from './pseudo/leftovers.ts';
import { pseudoText } from './pseudo/pseudo.ts';
import { speakPseudo } from './pseudo/served.ts';

const appUrl = inject('appUrl');
const freshPage = freshPages();

const inGerman = (viewport = PHONE) => freshPage({ locale: 'de-DE', viewport });

/** A German browser that is given the pseudo-language in place of German. */
async function inPseudo(): Promise<Page> {
	const page = await freshPage({ locale: 'de', viewport: PHONE });
	await speakPseudo(page.context());
	return page;
}

async function openDemoInGerman(page: Page): Promise<void> {
	await page.goto(appUrl);
	await page.getByRole('button', { name: 'Beispielstandort öffnen' }).click();
	await page.getByRole('navigation', { name: 'Bereiche' }).waitFor();
}

test('a German browser gets German; the choice is kept on the device and can be taken back', async () => {
	const page = await inGerman(DESK);
	await page.goto(appUrl);
	await page.getByText('Jedes Zischen hat seinen Preis.').waitFor();
	expect(await page.getAttribute('html', 'lang')).toBe('de');
	await picture(page, 'german-list-empty');
	await page.getByRole('button', { name: 'English' }).click();
	await page.getByText('Every hiss has a price.').waitFor();
	expect(await page.getAttribute('html', 'lang')).toBe('en');
	await page.reload();
	await page.getByRole('button', { name: 'Deutsch', pressed: false }).click();
	await page.getByText('Jedes Zischen hat seinen Preis.').waitFor();
});

test('the demo opens in German on a phone, and the list says how it stands', async () => {
	const page = await inGerman();
	await openDemoInGerman(page);
	await picture(page, 'german-walk');
	await page.goto(appUrl);
	await page.getByText(/^geändert /).waitFor();
	await picture(page, 'german-list');
});

/** The address of another place of the site that is open. */
function placeOf(page: Page, path: string): string {
	const url = new URL(page.url());
	return `${url.origin}${path}?site=${url.searchParams.get('site') ?? ''}`;
}

test('a leak is entered in German: a comma is taken, and a number that reads two ways is asked about', async () => {
	const page = await inGerman();
	await openDemoInGerman(page);
	await page.getByRole('button', { name: 'Leckage ohne Plan hinzufügen' }).click();
	await page.getByLabel('Bemessen nach').selectOption('Rundes Loch');
	const diameter = page.getByLabel('Durchmesser');
	await diameter.fill('1.234');
	await diameter.press('Tab');
	await page.getByText('lässt sich auf zwei Arten lesen').waitFor();
	await diameter.fill('6,5');
	await diameter.press('Tab');
	await page.getByText(/ freie Luft, .* im Jahr$/).waitFor();
	await page.getByRole('button', { name: /^Leckage \d+ markieren$/ }).click();
	await page.getByText(/^Leckage \d+ ist markiert\.$/).waitFor();
	await page.getByRole('region', { name: 'Neueste Leckagen' }).getByRole('button').first().click();
	await page.getByRole('heading', { name: /^Leckage \d+$/ }).waitFor();
	expect(await page.getByLabel('Durchmesser').inputValue()).toBe('6,5');
});

/** Looks whether a place is German throughout and holds on the screen; on a phone with large letters too. */
function inGermanOnly(page: Page, name: 'phone' | 'desk', entered: ReturnType<typeof textsOfDemo>) {
	return async (place: string) => {
		expect(await english(page, entered), place).toEqual([]);
		expect(await overflow(page), place).toBeLessThanOrEqual(0);
		await picture(page, `german-${place}-${name}`);
		if (name !== 'phone') return;
		await largeLetters(page, async () => {
			expect(await overflow(page), `${place}, letters of twice the size`).toBeLessThanOrEqual(0);
			await picture(page, `german-${place}-large`);
		});
	};
}

test.for([
	['phone', PHONE],
	['desk', DESK]
] as const)(
	'no English is left where leaks are walked and weighed (%s)',
	async ([name, viewport]) => {
		const entered = textsOfDemo();
		const page = await inGerman(viewport);
		await openDemoInGerman(page);
		const looked = inGermanOnly(page, name, entered);
		await looked('walk');
		await page
			.getByRole('region', { name: 'Neueste Leckagen' })
			.getByRole('button')
			.first()
			.click();
		await page.getByRole('heading', { name: /^Leckage \d+$/ }).waitFor();
		await looked('leak');
		await page.goto(placeOf(page, '/walk/room'));
		await page.getByRole('heading', { level: 1, name: 'Kompressorraum' }).waitFor();
		await looked('room');
		await page.goto(placeOf(page, '/weigh'));
		await page.getByText('Wie sicher:').waitFor();
		await page.getByRole('button', { name: 'Datei eines Datenloggers' }).click();
		await looked('weigh');
		await page.goto(placeOf(page, '/set-up'));
		await page
			.getByRole('link', { name: /^Maßstab, Abschnitte, neuere Zeichnung/ })
			.first()
			.click();
		await page.getByRole('heading', { name: 'Abschnitte auf diesem Plan' }).waitFor();
		await looked('plan-desk');
	}
);

/** What stands on every fix list. */
const ALWAYS = ['C1', 'C2', 'C7', 'C8', 'C9', 'C27', 'C28'];

test.for([
	['phone', PHONE],
	['desk', DESK]
] as const)(
	'no English is left where leaks are mended and what was saved is proved (%s)',
	async ([name, viewport]) => {
		const entered = textsOfDemo(AUTUMN);
		const page = await inGerman(viewport);
		await page.goto(appUrl);
		await page.locator('input[type="file"]').first().setInputFiles(AUTUMN);
		await page.getByRole('navigation', { name: 'Bereiche' }).waitFor();
		const looked = inGermanOnly(page, name, entered);
		await page.goto(placeOf(page, '/mend'));
		await page.getByRole('heading', { level: 1, name: 'Beheben' }).waitFor();
		await page.locator('article summary').first().click();
		await page.getByText('Für eine Tabelle oder ein anderes System').click();
		await looked('mend');
		await page.getByRole('link', { name: 'Spalten benennen' }).click();
		await page.getByRole('heading', { level: 1, name: 'Arbeitsaufträge' }).waitFor();
		await looked('work-orders');
		await page.goto(placeOf(page, '/mend/print'));
		await page.getByText('Sicherheitshinweise hier').first().waitFor();
		const printed = (await page.locator('article').textContent()) ?? '';
		for (const { id, text } of CAUTION_RULES) {
			expect(printed, id).not.toContain(text);
			if (ALWAYS.includes(id)) expect(printed).toContain(german.cautions[id]);
		}
		await looked('print');
		await page.goto(placeOf(page, '/prove'));
		await page.getByRole('heading', { name: 'Stellen dieses Rundgangs' }).waitFor();
		await page
			.getByText(/^Verlauf der Leckage/)
			.first()
			.click();
		await looked('prove-stops');
		await page.getByRole('radio', { name: 'Was eingespart wurde' }).check();
		await page.getByText('Durch Abseifen belegt', { exact: true }).waitFor();
		await page.getByText('Änderung von Hand hinzufügen').click();
		await looked('prove');
		await page.getByRole('link', { name: /^Einsparbericht/ }).click();
		await page.getByRole('heading', { level: 1, name: 'Einsparbericht' }).waitFor();
		await looked('savings-report');
		if (viewport === DESK) {
			await page.getByRole('button', { name: 'PDF erstellen' }).click();
			const downloading = page.waitForEvent('download');
			await page.getByRole('button', { name: 'PDF sichern' }).click();
			const made = await readFile(await (await downloading).path());
			const { pages, language } = await readPdf(new Uint8Array(made));
			expect(language).toBe('de');
			expect(pages[0]).toContain('Drei Nachweisstufen, nie zusammengezählt');
		}
	}
);

/** Places, and what stands there once they are drawn. */
const PLACES = [
	['/set-up', 'h1'],
	['/walk', 'h2'],
	['/walk/room', 'h1'],
	['/weigh', '.ranked'],
	['/mend', 'h1'],
	['/mend/work-orders', 'h1'],
	['/mend/print', 'article'],
	['/prove', 'h1']
] as const;

test('every word comes from the catalogue, and a longer language has room on a phone', async () => {
	const entered = textsOfDemo();
	const page = await inPseudo();
	const looked = async (place: string) => {
		expect(await leftovers(page, entered), place).toEqual([]);
		expect(await overflow(page), place).toBeLessThanOrEqual(0);
		await picture(page, `pseudo-${place.replaceAll('/', '-')}`);
	};
	await page.goto(appUrl);
	await page.getByText(pseudoText(siteList.tagline)).waitFor();
	await looked('list');
	await page.getByRole('button', { name: pseudoText(siteList.openDemo) }).click();
	await page.getByRole('button', { name: pseudoText(walk.start.addWithout) }).click();
	await looked('capture');
	for (const [place, drawn] of PLACES) {
		await page.goto(placeOf(page, place));
		await page.locator(`#place ${drawn}`).first().waitFor();
		await looked(place);
	}
	await page.goto(placeOf(page, '/set-up'));
	await page.locator('#plans a[href*="/set-up/plan"]').first().click();
	await page.locator('#place .plan-map').waitFor();
	await looked('plan-desk');
});

test('nor has the savings report any other words', async () => {
	const entered = textsOfDemo(AUTUMN);
	const page = await inPseudo();
	await page.goto(appUrl);
	await page.locator('input[type="file"]').first().setInputFiles(AUTUMN);
	await page.waitForURL(/site=/);
	await page.goto(placeOf(page, '/prove/report'));
	await page.locator('#place table').first().waitFor();
	expect(await leftovers(page, entered)).toEqual([]);
	expect(await overflow(page)).toBeLessThanOrEqual(0);
	await picture(page, 'pseudo-savings-report');
});
