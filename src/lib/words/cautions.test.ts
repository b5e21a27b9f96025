import { createHash } from 'node:crypto';
import { afterEach, describe, expect, it } from 'vitest';
import { CAUTION_RULES } from '#lib/core/mend/caution-rules.ts';
import { depressuriseFirst } from '#lib/core/mend/cautions.ts';
import { cautionText } from './cautions.ts';
import { cautionInShort } from './in-short.ts';
import { cautions as german } from './de/cautions.ts';
import { ALL_LANGUAGES, speak } from './language.ts';

afterEach(() => speak('en'));

describe('cautions in another language', () => {
	it('[C1] every caution has its own German sentence, under the same id', async () => {
		expect(Object.keys(german)).toEqual(CAUTION_RULES.map(({ id }) => id));
		expect(new Set(Object.values(german)).size).toBe(CAUTION_RULES.length);
		await speak('de');
		for (const rule of CAUTION_RULES) {
			expect(cautionText(rule)).toBe(german[rule.id]);
			expect(cautionText(rule)).not.toBe(rule.text);
		}
		await speak('en');
		expect(cautionText(depressuriseFirst())).toBe(depressuriseFirst().text);
	});

	it('the numbers in a caution are the same in both', () => {
		const numbers = (text: string) => (text.match(/\d+/g) ?? []).sort();
		for (const { id, text } of CAUTION_RULES)
			expect(numbers(german[id] ?? ''), id).toEqual(numbers(text));
	});

	it('the German was written for the English that stands there now (pinned)', () => {
		// When this fails, read each changed caution in de/cautions.ts again, word by word; then pin anew.
		const english = CAUTION_RULES.map(({ id, text }) => `${id} ${text}`).join('\n');
		const digest = createHash('sha256').update(english).digest('hex').slice(0, 16);
		expect(digest).toBe('d8245cedc70c44e6');
	});
});

it.each(ALL_LANGUAGES)('[C1] says in short what each caution is about (%s)', async (language) => {
	const english = CAUTION_RULES.map(cautionInShort);
	await speak(language);
	const short = CAUTION_RULES.map(cautionInShort);
	expect(new Set(short).size).toBe(CAUTION_RULES.length);
	CAUTION_RULES.forEach((rule, index) => {
		const whole = cautionText(rule);
		expect(short[index]?.length).toBeGreaterThan(0);
		expect(short[index]?.length, whole).toBeLessThan(whole.length / 2);
		if (language !== 'en') expect(short[index]).not.toBe(english[index]);
	});
});

it('a caution without short words is said whole', () => {
	expect(cautionInShort({ id: 'C999', text: 'Do not.' })).toBe('Do not.');
});
