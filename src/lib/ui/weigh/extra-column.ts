import type { Format } from '#lib/words/format.ts';
import { weigh } from '#lib/words/weigh.ts';
import type { RankedRow, SortKey } from './ranked-rows.ts';

/** What a row says in the column that stands there while the order is by it. */
export interface ExtraText {
	/** Said on a phone, where there is no heading. */
	readonly before?: string;
	readonly text: string;
	readonly after?: string;
	readonly range?: string;
}

const UNKNOWN = '–';

/** The text of a row for an order that has no column of its own. */
export function extraText(row: RankedRow, key: SortKey, format: Format): ExtraText | undefined {
	const words = weigh.table;
	switch (key) {
		case 'payback': {
			const { payback, paybackRange: range } = row;
			const years = (value: number) => yearsText(value, format);
			return {
				before: words.columns.payback,
				text: payback === undefined ? UNKNOWN : years(payback),
				...(range && range.high > 0 && { range: words.range(years(range.low), years(range.high)) })
			};
		}
		case 'perMinute': {
			const { perMinute, perMinuteRange: range } = row;
			return {
				text: perMinute === undefined ? UNKNOWN : format.money(perMinute),
				after: words.aMinute,
				...(range && { range: words.range(format.money(range.low), format.money(range.high)) })
			};
		}
		case 'chance':
			return {
				before: words.amongTheFirst,
				text: row.chance === undefined ? UNKNOWN : format.percent(row.chance)
			};
		default:
			return undefined;
	}
}

/** Short paybacks are told in days or months: nobody thinks in hundredths of a year. */
function yearsText(years: number, format: Format): string {
	const words = weigh.table;
	if (years < 1 / 12) return words.days(format.count(Math.ceil(years * 365)));
	return years < 2
		? words.months(format.significant(years * 12, 2))
		: words.years(format.significant(years, 2));
}
