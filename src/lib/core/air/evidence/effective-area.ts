import type { SquareMetre } from '../../units/quantity.ts';
import { as } from '../../units/quantity.ts';

/** A number that the reading did not give and the method chose, to be shown with its source. */
export interface Choice {
	readonly name: string;
	readonly value: number;
	/** Empty for a pure number. */
	readonly unit: string;
	readonly source: string;
}

/** What every kind of evidence becomes. */
export interface EffectiveArea {
	/** Discharge coefficient × area: the median of a lognormal spread. */
	readonly areaM2: SquareMetre;
	/** Standard deviation of ln(area); for small values the relative standard uncertainty. */
	readonly relativeStandardUncertainty: number;
	/** METHOD id of the rule that was used. */
	readonly basis: string;
	readonly choices: readonly Choice[];
	/** b of ISO 6358, for evidence from a catalogue; all else is an ideal opening. */
	readonly criticalRatio?: number;
}

/** The user's own uncertainty in place of the method's starting value. */
export interface OwnUncertainty {
	readonly relativeUncertainty?: number | undefined;
}

const OWN = 'entered by the user';
export const STARTING = 'our starting value';

/**
 * Joins an area with the uncertainty that holds: the user's own, else the method's.
 * @param parts `area` in m²; `own` and `starting` standard deviations of ln(area); `basis` the
 * METHOD id of the rule that was used; `choices` what else the method chose
 * @returns the effective area, m², with u(ln A_e) and where each choice comes from
 * @validity area > 0, uncertainty > 0: checked in `effectiveAreaAt`
 * @source a reading's own uncertainty goes before a starting value; METHOD A7 to A12
 */
export function effectiveAreaOf(parts: {
	readonly area: number;
	readonly basis: string;
	readonly own: number | undefined;
	readonly starting: number;
	/** Why the starting uncertainty is what it is. */
	readonly reason: string;
	readonly choices?: readonly Choice[];
}): EffectiveArea {
	const uncertainty: Choice = {
		name: 'relative-standard-uncertainty',
		value: parts.own ?? parts.starting,
		unit: '',
		source: parts.own === undefined ? parts.reason : OWN
	};
	return {
		areaM2: as<'m²'>(parts.area),
		relativeStandardUncertainty: uncertainty.value,
		basis: parts.basis,
		choices: [...(parts.choices ?? []), uncertainty]
	};
}
