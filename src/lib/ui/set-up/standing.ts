import type { Survey } from '#lib/core/survey/schema.ts';
import type { Format } from '#lib/words/format.ts';
import { setUp } from '#lib/words/set-up.ts';

/** One part of Set up as the index of the page shows it. */
export interface PartStanding {
	readonly id: string;
	readonly title: string;
	readonly standing: string;
	/** Something that an answer needs is not there. */
	readonly missing: boolean;
	/** Nothing is there yet, and an answer can do without. */
	readonly empty?: boolean;
}

/** How far Set up has come, part by part. */
export function indexOf(survey: Survey, format: Format): readonly PartStanding[] {
	const { site, supply, prices } = survey;
	const plans = countInUse(survey.plans);
	const sections = countInUse(survey.sections);
	const changedBands = Object.keys(survey.startingValues.soapBands).length;
	const noAir = site.altitudeM === undefined && site.barometerKPa === undefined;
	const machines = supply.station?.compressors.length;
	return [
		{
			id: 'site',
			title: setUp.parts.site.title,
			standing: noAir ? setUp.standing.altitudeMissing : site.currency,
			missing: noAir
		},
		{
			id: 'plans',
			title: setUp.parts.plans.title,
			standing: plans === 0 ? setUp.standing.noneYet : format.count(plans),
			missing: false,
			empty: plans === 0
		},
		{
			id: 'sections',
			title: setUp.parts.sections.title,
			standing: sections === 0 ? setUp.standing.noneYet : format.count(sections),
			missing: sections === 0
		},
		{
			id: 'supply',
			title: setUp.parts.supply.title,
			standing:
				machines !== undefined
					? setUp.standing.station(machines, format.count(machines))
					: supply.quick
						? setUp.standing.quick
						: setUp.standing.missing,
			missing: machines === undefined && !supply.quick
		},
		{
			id: 'prices',
			title: setUp.parts.prices.title,
			standing:
				prices.pricePerKwh === undefined
					? setUp.standing.electricityMissing
					: setUp.standing.perKwh(format.number(prices.pricePerKwh), site.currency),
			missing: prices.pricePerKwh === undefined
		},
		{
			id: 'starting-values',
			title: setUp.parts.startingValues.title,
			standing:
				changedBands === 0
					? setUp.standing.allOurs
					: setUp.standing.changed(format.count(changedBands)),
			missing: false
		}
	];
}

function countInUse(table: Readonly<Record<string, { removed?: boolean | undefined }>>): number {
	return Object.values(table).filter(({ removed }) => !removed).length;
}
