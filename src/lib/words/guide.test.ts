import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readMethod } from '#lib/ui/method/read-method.ts';
import { GUIDE_PARTS } from './guide.ts';
import { ALL_LANGUAGES } from './language.ts';

test.for(ALL_LANGUAGES)('the guide has every part, in the same order, in %s', (language) => {
	const guide = readMethod(
		readFileSync(new URL(`./guide/guide.${language}.md`, import.meta.url), 'utf8')
	);
	expect(guide.title).not.toBe('');
	expect(guide.parts).toHaveLength(GUIDE_PARTS.length);
	// Whoever comes for safety finds the order of work first.
	const safety = JSON.stringify(guide.parts[GUIDE_PARTS.indexOf('safety')]?.blocks[0]);
	expect(safety).toMatch(
		/Isolate, lock, vent, prove zero|Absperren, mit Schloss sichern, entlüften, Drucklosigkeit/
	);
});
