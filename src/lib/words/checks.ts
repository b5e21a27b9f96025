import type { Check, CheckId } from '#lib/core/survey/checks.ts';
import type { CommandBody } from '#lib/core/survey/command.ts';
import { toSi } from '#lib/core/units/convert.ts';
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

const WORDS: Readonly<Record<CheckId, Write>> = {
	'air-pressure-missing': () => ({
		sentence: doubts.airPressureMissing,
		fixes: [doubts.atSeaLevel]
	}),
	'supply-missing': () => ({ sentence: doubts.supplyMissing, fixes: [] }),
	'price-missing': () => ({ sentence: doubts.priceMissing, fixes: [] }),
	'supply-pressure-implausible': (check, format) => ({
		sentence: doubts.supplyPressure(pressureOf(check, format)),
		fixes: pressureFixes(check, format)
	}),
	'price-implausible': (check, format) => ({
		sentence: doubts.price(format.price(Number(check.detail['pricePerKwh'])), named(check)),
		fixes: check.fixes.map((fix) => doubts.meant(priceMeant(fix, check, format)))
	}),
	'section-hours-missing': (check, format) => ({
		sentence: doubts.hoursMissing(named(check)),
		fixes: [doubts.always(format.hours(YEAR_H))]
	}),
	'section-hours-implausible': (check, format) => ({
		sentence: doubts.hoursImplausible(
			named(check),
			format.count(Number(check.detail['hours'])),
			format.count(YEAR_H)
		),
		fixes: [doubts.makeIt(format.hours(YEAR_H))]
	}),
	'section-pressure-implausible': (check, format) => ({
		sentence: doubts.sectionPressure(pressureOf(check, format), named(check)),
		fixes: pressureFixes(check, format)
	}),
	'section-valve-missing': (check) => ({ sentence: doubts.valveMissing(named(check)), fixes: [] }),
	'leak-size-missing': (check) => ({ sentence: doubts.sizeMissing(tagOf(check)), fixes: [] }),
	'leak-section-missing': (check) => ({ sentence: doubts.sectionMissing(tagOf(check)), fixes: [] }),
	'leak-outside-section': (check) => ({
		sentence: doubts.outsideSection(tagOf(check), named(check)),
		fixes: check.fixes.map(() => doubts.putOn(String(check.detail['here'])))
	}),
	'leak-pressure-missing': (check) => ({
		sentence: doubts.pressureMissing(tagOf(check)),
		fixes: []
	}),
	'leak-pressure-implausible': (check, format) => ({
		sentence: doubts.leakPressure(pressureOf(check, format), tagOf(check)),
		fixes: pressureFixes(check, format)
	}),
	'leak-size-implausible': (check, format) => ({
		sentence: sizeSentence(check, format),
		fixes: check.fixes.map((fix) => doubts.meant(sizeMeant(fix, format)))
	}),
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
	return check.fixes.map((fix) => doubts.meant(format.pressure(pressureMeant(fix) ?? 0)));
}

function pressureMeant(fix: CommandBody): number | null | undefined {
	if (fix.kind === 'set-supply') return fix.changes.setPressureBarGauge;
	if (fix.kind === 'set-section') return fix.changes.pressureBarGauge;
	return fix.kind === 'record-sighting' ? fix.sighting?.pressureBarGauge : undefined;
}

function priceMeant(fix: CommandBody, check: Check, format: Format): string {
	if (fix.kind !== 'set-prices') return '';
	const { pricePerKwh, periodPrices } = fix.changes;
	const named = periodPrices?.find(({ name }) => name === check.detail['name']);
	return format.price(pricePerKwh ?? named?.pricePerKwh ?? 0);
}

function sizeSentence({ detail }: Check, format: Format): string {
	const [tag, value] = [String(detail['tag']), Number(detail['value'])];
	switch (detail['of']) {
		case 'slit':
			return doubts.slit(format.length(value), tag);
		case 'thread-gap':
			return doubts.threadGap(format.length(value), tag);
		case 'flow':
			return doubts.leakFlow(flowText(value, format), tag);
		default:
			return doubts.opening(format.length(value), tag);
	}
}

function sizeMeant(fix: CommandBody, format: Format): string {
	const evidence = fix.kind === 'record-sighting' ? fix.sighting?.evidence : undefined;
	switch (evidence?.kind) {
		case 'hole':
			return format.length(evidence.diameterMm);
		case 'slit':
			return format.length(evidence.widthMm);
		case 'thread-gap':
			return format.length(evidence.gapMm);
		case 'meter':
			return flowText(evidence.flowLPerS, format);
		default:
			return '';
	}
}

function flowText(lPerS: number, format: Format): string {
	return format.flow(toSi('volumeFlow', 'L/s', lPerS));
}
