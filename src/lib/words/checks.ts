import type { Check, CheckId } from '#lib/core/survey/checks.ts';
import { doubts } from './doubts.ts';
import type { Format } from './format.ts';

interface CheckWords {
	readonly sentence: string;
	/** One for each fix that the check offers. */
	readonly fixes: readonly string[];
}

type Write = (check: Check, format: Format) => CheckWords;

/** The hours of a year, as they are offered; a leap year's are not meant. */
const YEAR_H = 8760;
const YEAR = `${YEAR_H} h`;

const WORDS: Readonly<Record<CheckId, Write>> = {
	'air-pressure-missing': () => ({
		sentence: doubts.airPressureMissing,
		fixes: [doubts.atSeaLevel]
	}),
	'supply-missing': () => ({ sentence: doubts.supplyMissing, fixes: [] }),
	'price-missing': () => ({ sentence: doubts.priceMissing, fixes: [] }),
	'section-hours-missing': (check) => ({
		sentence: doubts.hoursMissing(named(check)),
		fixes: [doubts.always(YEAR)]
	}),
	'section-hours-implausible': (check, format) => ({
		sentence: doubts.hoursImplausible(
			named(check),
			format.count(Number(check.detail['hours'])),
			String(YEAR_H)
		),
		fixes: [doubts.makeIt(YEAR)]
	}),
	'section-pressure-implausible': (check, format) => ({
		sentence: doubts.sectionPressure(pressureOf(check, format), named(check)),
		fixes: pressureFixes(check, format)
	}),
	'section-valve-missing': (check) => ({ sentence: doubts.valveMissing(named(check)), fixes: [] }),
	'leak-size-missing': (check) => ({ sentence: doubts.sizeMissing(tagOf(check)), fixes: [] }),
	'leak-section-missing': (check) => ({ sentence: doubts.sectionMissing(tagOf(check)), fixes: [] }),
	'leak-pressure-missing': (check) => ({
		sentence: doubts.pressureMissing(tagOf(check)),
		fixes: []
	}),
	'leak-pressure-implausible': (check, format) => ({
		sentence: doubts.leakPressure(pressureOf(check, format), tagOf(check)),
		fixes: pressureFixes(check, format)
	}),
	'leak-opening-implausible': (check, format) => {
		const mm = Number(check.detail['diameterMm']);
		return {
			sentence: doubts.opening(format.length(mm), tagOf(check)),
			fixes: [doubts.meant(format.length(mm / 10))]
		};
	},
	'leak-tag-twice': (check) => ({
		sentence: doubts.tagTwice(tagOf(check)),
		fixes: [doubts.giveTag(String(check.detail['freeTag']))]
	}),
	'leak-pin-missing': (check) => ({ sentence: doubts.pinMissing(tagOf(check)), fixes: [] })
};

/** What looks doubtful, as a sentence, and a label for each fix. */
export function checkWords(check: Check, format: Format): CheckWords {
	return WORDS[check.id](check, format);
}

function named({ detail }: Check): string {
	return String(detail['name']);
}

function tagOf({ detail }: Check): string {
	return String(detail['tag']);
}

function pressureOf({ detail }: Check, format: Format): string {
	return format.pressure(Number(detail['pressureBarGauge']));
}

function pressureFixes(check: Check, format: Format): string[] {
	return check.fixes.map((fix) => {
		const bar =
			fix.kind === 'set-section'
				? fix.changes.pressureBarGauge
				: fix.kind === 'record-sighting'
					? fix.sighting?.pressureBarGauge
					: undefined;
		return doubts.meant(format.pressure(bar ?? 0));
	});
}
