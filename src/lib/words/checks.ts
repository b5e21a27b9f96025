import type { Check, CheckId } from '#lib/core/survey/checks.ts';
import type { Format } from './format.ts';

interface CheckWords {
	readonly sentence: string;
	/** One for each fix that the check offers. */
	readonly fixes: readonly string[];
}

type Write = (check: Check, format: Format) => CheckWords;

const WORDS: Readonly<Record<CheckId, Write>> = {
	'air-pressure-missing': () => ({
		sentence:
			'The air pressure of the site is not known. Enter its altitude or a barometer reading.',
		fixes: ['It lies at sea level']
	}),
	'supply-missing': () => ({
		sentence: 'How the air is made is not known, so there is no energy yet. Enter the supply.',
		fixes: []
	}),
	'price-missing': () => ({
		sentence: 'The price of electricity is not known, so there is no cost yet.',
		fixes: []
	}),
	'section-hours-missing': ({ detail }) => ({
		sentence: `How many hours a year “${detail['name']}” is under pressure is not known.`,
		fixes: ['Always: 8760 h']
	}),
	'section-hours-implausible': ({ detail }, format) => ({
		sentence: `“${detail['name']}” is given ${format.count(Number(detail['hours']))} hours a year; a year has 8760.`,
		fixes: ['Make it 8760 h']
	}),
	'section-pressure-implausible': (check, format) => ({
		sentence: `${format.pressure(Number(check.detail['pressureBarGauge']))} in “${check.detail['name']}”?`,
		fixes: pressureFixes(check, format)
	}),
	'section-valve-missing': ({ detail }) => ({
		sentence: `“${detail['name']}” has no isolating valve named. The fix list needs it.`,
		fixes: []
	}),
	'leak-size-missing': ({ detail }) => ({
		sentence: `Leak ${detail['tag']} has no size yet.`,
		fixes: []
	}),
	'leak-section-missing': ({ detail }) => ({
		sentence: `Leak ${detail['tag']} is not on a section, so nobody knows which valve shuts it.`,
		fixes: []
	}),
	'leak-pressure-missing': ({ detail }) => ({
		sentence: `The pressure at leak ${detail['tag']} is not known: read it, or set it for the section.`,
		fixes: []
	}),
	'leak-pressure-implausible': (check, format) => ({
		sentence: `${format.pressure(Number(check.detail['pressureBarGauge']))} at leak ${check.detail['tag']}?`,
		fixes: pressureFixes(check, format)
	}),
	'leak-opening-implausible': ({ detail }, format) => ({
		sentence: `A hole of ${format.length(Number(detail['diameterMm']))} at leak ${detail['tag']}?`,
		fixes: [`I meant ${format.length(Number(detail['diameterMm']) / 10)}`]
	}),
	'leak-tag-twice': ({ detail }) => ({
		sentence: `Two leaks have the tag number ${detail['tag']}.`,
		fixes: [`Give this one ${detail['freeTag']}`]
	}),
	'leak-pin-missing': ({ detail }) => ({
		sentence: `Leak ${detail['tag']} is not on a plan.`,
		fixes: []
	})
};

/** What looks doubtful, as a sentence, and a label for each fix. */
export function checkWords(check: Check, format: Format): CheckWords {
	return WORDS[check.id](check, format);
}

function pressureFixes(check: Check, format: Format): string[] {
	return check.fixes.map((fix) => {
		const bar =
			fix.kind === 'set-section'
				? fix.changes.pressureBarGauge
				: fix.kind === 'record-sighting'
					? fix.sighting?.pressureBarGauge
					: undefined;
		return `I meant ${format.pressure(bar ?? 0)}`;
	});
}
