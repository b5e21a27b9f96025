import type { Survey } from '#lib/core/survey/schema.ts';
import type { Format } from '#lib/words/format.ts';

/** One part of Set up as the index of the page shows it. */
export interface PartStanding {
	readonly id: string;
	readonly title: string;
	readonly standing: string;
	/** Something that an answer needs is not there. */
	readonly missing: boolean;
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
			title: 'Site',
			standing: noAir ? 'altitude missing' : site.currency,
			missing: noAir
		},
		{
			id: 'plans',
			title: 'Floor plans',
			standing: plans === 0 ? 'none yet' : format.count(plans),
			missing: false
		},
		{
			id: 'sections',
			title: 'Sections',
			standing: sections === 0 ? 'none yet' : format.count(sections),
			missing: false
		},
		{
			id: 'supply',
			title: 'Supply',
			standing:
				machines !== undefined
					? `station, ${machines === 1 ? '1 compressor' : `${format.count(machines)} compressors`}`
					: supply.quick
						? 'quick'
						: 'missing',
			missing: machines === undefined && !supply.quick
		},
		{
			id: 'prices',
			title: 'Prices',
			standing:
				prices.pricePerKwh === undefined
					? 'electricity missing'
					: `${format.number(prices.pricePerKwh)} ${site.currency} per kWh`,
			missing: prices.pricePerKwh === undefined
		},
		{
			id: 'starting-values',
			title: 'Starting values',
			standing: changedBands === 0 ? 'all ours' : `${format.count(changedBands)} changed`,
			missing: false
		}
	];
}

function countInUse(table: Readonly<Record<string, { removed?: boolean | undefined }>>): number {
	return Object.values(table).filter(({ removed }) => !removed).length;
}
