import { toSi } from './convert.ts';
import type { Dimension, SiOf, UnitOf } from './convert.ts';
import { parseNumber, plainNumberText } from './parse-number.ts';
import { ok, refuse } from './result.ts';
import type { Result } from './result.ts';
import { acceptedUnits, dimensionOf, plainUnit, symbolFor } from './spelling.ts';

/** The number at the start: sign, fraction or grouped decimal, exponent. The rest is the unit. */
const LEADING_NUMBER =
	/^[+-]? ?(?:(?:\d+[ -])?\d+ ?\/ ?\d+|[\d.,]+(?:[ '’]\d{3}(?!\d))*(?:[.,]\d+)?(?:[eE][+-]?\d+)?)/u;

const GAUGE_MARK = /^(bar|mbar|kpa|mpa|psi)(?:\(g\)|g|gauge|\(gauge\))$/iu;
const ABSOLUTE_MARK = /^(bar|mbar|kpa|mpa|psi)(?:\(a\)|a|abs|\(abs\)|absolute)$/iu;
/** A volume flow that names its own reference air, which is not a unit: it is asked for apart. */
const REFERENCE_MARK =
	/^(?:n(?:m3|l|dm3)\/.*|s(?:cfm|lpm|cfh)|sm3\/.*|acfm|icfm|.*\(?(?:anr|ntp|stp)\)?)$/iu;

function pressureUnit(dimension: Dimension, unit: string): Result<string> {
	const gauge = GAUGE_MARK.exec(unit)?.[1];
	const absolute = ABSOLUTE_MARK.exec(unit)?.[1];
	if (dimension === 'pressure') {
		if (absolute !== undefined) return refuse('pressure-absolute-not-accepted', { unit });
		return ok(gauge ?? unit);
	}
	if (gauge !== undefined) return refuse('pressure-gauge-not-accepted', { unit });
	return ok(absolute ?? unit);
}

function readUnit(written: string, dimension: Dimension): Result<string> {
	const accepted = acceptedUnits(dimension);
	if (written.trim() === '') return refuse('unit-missing', { dimension, accepted });
	let unit = plainUnit(written);
	if (dimension === 'pressure' || dimension === 'absolutePressure') {
		const marked = pressureUnit(dimension, unit);
		if (!marked.ok) return marked;
		unit = marked.value;
	}
	const symbol = symbolFor(dimension, unit);
	if (symbol !== undefined) return ok(symbol);
	if (dimension === 'volumeFlow' && REFERENCE_MARK.test(unit)) {
		return refuse('flow-reference-in-unit', { unit: written.trim(), accepted });
	}
	if (dimension === 'volume' && /^gal(?:lons?)?$/iu.test(unit)) {
		return refuse('unit-ambiguous', { unit: written.trim(), accepted: 'gal(US), gal(UK)' });
	}
	const other = dimensionOf(unit, dimension);
	if (other !== undefined) {
		return refuse('unit-of-other-dimension', {
			unit: written.trim(),
			dimension,
			unitDimension: other,
			accepted
		});
	}
	return refuse('unit-unknown', { unit: written.trim(), dimension, accepted });
}

/**
 * Reads a quantity written with its unit, such as "1/4 in", "6,5 bar" or "-5 °C", and brings it
 * to SI. The decimal mark is a dot; a comma is understood where it can only be a decimal mark.
 * Pressure is gauge ("bar", "barg", "psig"); `absolutePressure` takes "bar" and "bar(a)".
 * @param text what was typed
 * @param dimension what it must measure
 * @returns the quantity in SI, or `number-unreadable`, `number-ambiguous`, `number-out-of-range`,
 * `unit-missing`, `unit-unknown`, `unit-ambiguous`, `unit-of-other-dimension`,
 * `flow-reference-in-unit`, `pressure-absolute-not-accepted`, `pressure-gauge-not-accepted`
 */
export function parseQuantity<D extends Dimension>(text: string, dimension: D): Result<SiOf<D>> {
	const plain = plainNumberText(text);
	const numberText = LEADING_NUMBER.exec(plain)?.[0];
	if (numberText === undefined) return refuse('number-unreadable', { text });
	const unitText = plain.slice(numberText.length);
	if (/^\s*[\d.,/+-]/u.test(unitText)) return refuse('number-unreadable', { text });
	const number = parseNumber(numberText, { decimal: '.' });
	if (!number.ok) return number;
	const unit = readUnit(unitText, dimension);
	if (!unit.ok) return unit;
	const value = toSi(dimension, unit.value as UnitOf<D>, number.value);
	return Number.isFinite(value) ? ok(value) : refuse('number-out-of-range', { text });
}
