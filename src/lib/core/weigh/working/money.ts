import { recoveredHeatKwh } from '../../supply/heat-recovery.ts';
import type { YearOutcome } from '../../supply/year.ts';
import type { Survey } from '../../survey/schema.ts';
import { costParts, type CostParts, type CostRates } from '../cost.ts';
import {
	steadyAirWorking,
	leakAirWorking,
	leakEnergyWorking,
	quickEnergyWorking,
	totalEnergyWorking
} from './energy.ts';
import { doubtOf } from './flow.ts';
import type { Weighing } from './round.ts';
import { onParts, type OnPart } from './station.ts';
import { given, made, PRICES, STATION, there, type Working } from './tree.ts';

/** What one leak costs a year, to the smallest coin; none without a price. METHOD W5. */
export function leakCostWorking(weighing: Weighing, index: number): Working | undefined {
	const { costs, quick, leaks, station } = weighing;
	const energy = leakEnergyWorking(weighing, index);
	if (!costs || !energy) return undefined;
	const leak = there(leaks[index], 'cost-per-year');
	const parts = partsOf(weighing, index, costs.rates);
	const inputs = [
		energyCost(weighing, parts.energy, energy),
		...airCost(weighing, parts.air, [leakAirWorking(weighing, index)]),
		...sharedCost(weighing, parts.shared, energy)
	];
	const exact = parts.energy + parts.air + parts.shared;
	const whole = made('cost-before-rounding', exact, 'currency', 'W5', inputs);
	const minor = there(costs.sharesMinor[index], 'cost-per-year');
	const beside = quick?.costs && [leakQuickCost(weighing, index)];
	return made('cost-per-year', minor, 'minor', 'M2', [whole], {
		...(!station && doubtOf(leak)),
		...(beside && { beside })
	});
}

/** What all leaks cost a year; none without a price. METHOD W5. */
export function totalCostWorking(weighing: Weighing): Working | undefined {
	const { survey, costs, quick, found } = weighing;
	const energy = totalEnergyWorking(weighing);
	if (!costs || !energy) return undefined;
	const { shared } = costs.rates;
	const sum = { energy: 0, air: 0 };
	for (const index of weighing.leaks.keys()) {
		const parts = partsOf(weighing, index, costs.rates);
		sum.energy += parts.energy;
		sum.air += parts.air;
	}
	const inputs = [
		energyCost(weighing, sum.energy, energy),
		...airCost(weighing, sum.air, volumesOf(weighing, found.years)),
		...(found.outcome ? stationCosts(survey, found.outcome, costs.rates) : [])
	];
	const exact = sum.energy + sum.air + shared.demandCharge - shared.lostHeat;
	const whole = made('cost-before-rounding', exact, 'currency', 'W5', inputs);
	const beside = quick?.costs && [totalQuickCost(weighing, energy)];
	return made('cost-per-year', costs.totalMinor, 'minor', 'W5', [whole], {
		...(beside && { beside })
	});
}

/** What all leaks would cost by the quick method. METHOD S1, W5. */
function totalQuickCost(weighing: Weighing, energy: Working): Working {
	const { survey } = weighing;
	const quick = there(weighing.quick, 'quick-cost');
	const volumes = volumesOf(weighing, quick.years);
	const volume = volumes.reduce((sum, { value }) => sum + value, 0);
	const inputs = [
		...(energy.beside ?? []),
		given('energy-price', there(survey.prices.pricePerKwh, 'energy-price'), 'currency/kWh', PRICES),
		...airCost(weighing, volume * (survey.prices.costPerM3 ?? 0), volumes)
	];
	return made('quick-cost', there(quick.costs?.totalMinor, 'quick-cost'), 'minor', 'W5', inputs);
}

/** One line for each leak's free air a year. */
function volumesOf({ leaks }: Weighing, years: Weighing['found']['years']): Working[] {
	return leaks.map(({ leak }, index) =>
		made('air-per-year', there(years[index], 'air-per-year').freeAirM3, 'm³', 'W2', [], {
			of: { kind: 'leak', tag: leak.tag }
		})
	);
}

function partsOf({ found }: Weighing, index: number, rates: CostRates): CostParts {
	const parts = costParts(there(found.years[index], 'energy-per-year'), rates);
	return there(parts.ok ? parts.value : undefined, 'cost-before-rounding');
}

/** Energy by its price; part by part where the week names more than one. METHOD M3. */
function energyCost(weighing: Weighing, value: number, energy: Working): Working {
	const priceOf = there(weighing.costs, 'energy-price').rates.priceOf;
	const priceAt = (part: OnPart): number => priceOf(part.outcome.priceId);
	const parts = onParts(weighing);
	const priced = (amount: number, of?: Working['of']): Working =>
		given('energy-price', amount, 'currency/kWh', PRICES, of && { of });
	const always = parts.every((part) => priceAt(part) === priceOf(null));
	if (!weighing.station || always)
		return made('energy-cost', value, 'currency', 'M3', [energy, priced(priceOf(null))]);
	const costs = parts.map((part, index) => {
		const saving = there(energy.inputs[index], 'saving-in-part');
		const price = priced(priceAt(part));
		return made(
			'energy-cost-in-part',
			saving.value * price.value,
			'currency',
			'M3',
			[saving, price],
			{
				of: part.of
			}
		);
	});
	return made('energy-cost', value, 'currency', 'M3', costs);
}

function airCost({ survey }: Weighing, value: number, volumes: readonly Working[]): Working[] {
	const { costPerM3 } = survey.prices;
	if (costPerM3 === undefined) return [];
	const price = given('air-price', costPerM3, 'currency/m³', PRICES);
	return [made('air-cost', value, 'currency', 'M5', [...volumes, price])];
}

/** A leak's part of what is paid for the station as a whole. METHOD W5. */
function sharedCost(weighing: Weighing, value: number, energy: Working): Working[] {
	const { survey, found, costs } = weighing;
	if (!found.outcome || !costs) return [];
	const whole = stationCosts(survey, found.outcome, costs.rates);
	if (whole.length === 0) return [];
	const all = costs.rates.energyKwh;
	const share = all > 0 ? energy.value / all : 0;
	const inputs = [
		...whole,
		made('share-of-energy', share, 'share', 'W5', [
			energy,
			made('energy-of-all', all, 'kWh', 'S12', [])
		])
	];
	return [made('shared-cost', value, 'currency', 'W5', inputs)];
}

/** The demand charge that falls and the recovered heat that is lost. METHOD M4, M10. */
function stationCosts(survey: Survey, outcome: YearOutcome, { shared }: CostRates): Working[] {
	const { demandCharge } = survey.prices;
	const heat = survey.supply.station?.heatRecovery;
	const costs: Working[] = [];
	if (demandCharge)
		costs.push(
			made('demand-charge-fall', shared.demandCharge, 'currency', 'M4', [
				made('peak-power-with-leaks', outcome.peakKw, 'kW', 'S12', []),
				made('peak-power-without-leaks', outcome.peakWithoutKw, 'kW', 'S12', []),
				given('demand-price', demandCharge.pricePerKw, 'currency/kW', PRICES),
				given('charges-per-year', demandCharge.per === 'month' ? 12 : 1, '', PRICES)
			])
		);
	const lost = heat && recoveredHeatKwh(heat, outcome.savingKwh);
	if (heat && lost?.ok)
		costs.push(
			made('lost-heat-worth', shared.lostHeat, 'currency', 'M10', [
				made('lost-heat', lost.value, 'kWh', 'S15', [
					made('energy-of-all', outcome.savingKwh, 'kWh', 'S12', []),
					given('recovered-share', heat.recoveredFraction, 'share', STATION),
					given('useful-share', heat.usefulFraction, 'share', STATION)
				]),
				given('fuel-price', heat.fuelPricePerKwh, 'currency/kWh', STATION),
				given('boiler-efficiency', heat.boilerEfficiency, 'share', STATION)
			])
		);
	return costs;
}

/** What one leak would cost by the quick method. METHOD S1, W5. */
function leakQuickCost(weighing: Weighing, index: number): Working {
	const { survey, leaks } = weighing;
	const leak = there(leaks[index], 'quick-cost');
	const quick = there(weighing.quick, 'quick-cost');
	const kwh = there(quick.years[index]?.energyKwh, 'quick-energy');
	const minor = there(quick.costs?.sharesMinor[index], 'quick-cost');
	const price = there(survey.prices.pricePerKwh, 'energy-price');
	const volume = there(quick.years[index], 'air-per-year').freeAirM3;
	const perM3 = survey.prices.costPerM3 ?? 0;
	const inputs = [
		quickEnergyWorking('quick-energy', weighing, leak, kwh),
		given('energy-price', price, 'currency/kWh', PRICES),
		...airCost(weighing, volume * perM3, [steadyAirWorking(weighing, leak, volume)])
	];
	return made('quick-cost', minor, 'minor', 'W5', inputs, doubtOf(leak));
}

/** The carbon dioxide that goes with an energy. METHOD M6. */
export function carbonWorking(
	{ survey }: Weighing,
	energy: Working | undefined
): Working | undefined {
	const { carbon } = survey.prices;
	if (!carbon || !energy) return undefined;
	const source = `${carbon.source}, ${carbon.year}`;
	const kg = energy.value * carbon.kgCo2ePerKwh;
	return made('carbon-per-year', kg, 'kg CO₂e', 'M6', [
		energy,
		given('carbon-factor', carbon.kgCo2ePerKwh, 'kg CO₂e/kWh', { kind: 'cited', source })
	]);
}
