import type { QuantityId, Working } from '#lib/core/weigh/working/tree.ts';

/**
 * The METHOD rules written out again in plain arithmetic, with no code of the core: each node of a
 * working must follow from its inputs (derived). Rules that are not plain arithmetic are not here.
 */
type Rule = (inputs: Inputs) => number;

export class Inputs {
	readonly #nodes: readonly Working[];
	constructor(nodes: readonly Working[]) {
		this.#nodes = nodes;
	}
	/** The one input of that name. */
	get(id: QuantityId): number {
		const value = this.maybe(id);
		if (value === undefined) throw new Error(`no input ${id}`);
		return value;
	}
	maybe(id: QuantityId): number | undefined {
		return this.#nodes.find((node) => node.id === id)?.value;
	}
	has(id: QuantityId): boolean {
		return this.maybe(id) !== undefined;
	}
	sum(...ids: QuantityId[]): number {
		return this.#nodes
			.filter((node) => ids.includes(node.id))
			.reduce((total, node) => total + node.value, 0);
	}
	last(id: QuantityId): number {
		return this.#nodes.findLast((node) => node.id === id)?.value ?? Number.NaN;
	}
}

const R = 287.05;
const CHOKED = Math.sqrt(1.4 / R) * (2 / 2.4) ** 3;
const absoluteOf: Rule = (of) => of.get('gauge-pressure') * 1e5 + of.get('site-pressure');
/** Isentropic flow per square metre, choked or not. METHOD A3. */
const flux =
	(upstream: QuantityId): Rule =>
	(of) => {
		const p1 = of.get(upstream);
		const r = Math.max(of.get('site-pressure') / p1, (2 / 2.4) ** 3.5);
		const k = (2 * 1.4) / (0.4 * R * of.get('air-temperature'));
		return p1 * Math.sqrt(k * (r ** (2 / 1.4) - r ** (2.4 / 1.4)));
	};

function massFlow(of: Inputs): number {
	const duty = of.maybe('duty-factor') ?? 1;
	const b = of.maybe('critical-ratio');
	if (b === undefined) return of.get('effective-area') * of.get('mass-flux') * duty;
	const p1 = of.get('line-pressure');
	const ratio = of.get('site-pressure') / p1;
	const along = ratio <= b ? 0 : (ratio - b) / (1 - b);
	const choked = (CHOKED * of.get('effective-area') * p1) / Math.sqrt(of.get('air-temperature'));
	return choked * Math.sqrt(1 - along * along) * duty;
}

function area(of: Inputs): number {
	if (of.has('test-scaling')) return of.get('effective-area') * of.get('test-scaling');
	if (of.has('opening-area')) return of.get('discharge-coefficient') * of.get('opening-area');
	if (of.has('caught-mass-flow')) return of.get('caught-mass-flow') / of.get('mass-flux');
	if (of.has('equivalent-hole')) return (Math.PI / 4) * (of.get('equivalent-hole') * 1e-3) ** 2;
	if (of.has('sonic-conductance'))
		return (of.get('sonic-conductance') * 1e-8 * 1.185 * Math.sqrt(293.15)) / CHOKED;
	return (
		(of.get('system-volume') * of.get('bleed-integral')) /
		(R * of.get('air-temperature') * of.get('test-time'))
	);
}

function opening(of: Inputs): number {
	if (of.has('hole-diameter')) return (Math.PI / 4) * (of.get('hole-diameter') * 1e-3) ** 2;
	if (of.has('slit-length')) return of.get('slit-length') * of.get('slit-width') * 1e-6;
	return Math.PI * of.get('thread-diameter') * of.get('thread-gap') * 1e-6;
}

function caughtMassFlow(of: Inputs): number {
	const density = of.get('reference-density');
	if (of.has('meter-flow')) return of.get('meter-flow') * density;
	return (of.get('caught-volume') / of.get('caught-time')) * density;
}

function systemLeak(of: Inputs): number {
	if (of.has('load-share'))
		return of.get('load-share') * of.get('capacity-mass-flow') * of.get('flux-ratio');
	if (of.has('line-slope'))
		return of.get('line-slope') * of.get('set-pressure') * 1e5 + of.get('line-intercept');
	return of.get('effective-area') * of.get('flux-at-set');
}

/** By quantity; `minor` values are checked to the coin that rounding and sharing out may move. */
export const RULES: Partial<Record<QuantityId, Rule>> = {
	'cost-per-year': (of) => of.get('cost-before-rounding') * 100,
	'cost-before-rounding': (of) =>
		of.sum('energy-cost', 'air-cost', 'shared-cost', 'demand-charge-fall') -
		of.sum('lost-heat-worth'),
	'quick-cost': (of) =>
		(of.get('quick-energy') * of.get('energy-price') + of.sum('air-cost')) * 100,
	'energy-cost': (of) =>
		of.has('energy-cost-in-part')
			? of.sum('energy-cost-in-part')
			: of.get('energy-per-year') * of.get('energy-price'),
	'energy-cost-in-part': (of) =>
		of.sum('saving-in-part', 'saving-of-all-in-part') * of.get('energy-price'),
	'air-cost': (of) => of.sum('air-per-year') * of.get('air-price'),
	'shared-cost': (of) =>
		(of.sum('demand-charge-fall') - of.sum('lost-heat-worth')) * of.get('share-of-energy'),
	'share-of-energy': (of) => of.get('energy-per-year') / of.get('energy-of-all'),
	'demand-charge-fall': (of) =>
		(of.get('peak-power-with-leaks') - of.get('peak-power-without-leaks')) *
		of.get('demand-price') *
		of.get('charges-per-year'),
	'lost-heat-worth': (of) =>
		(of.get('lost-heat') * of.get('fuel-price')) / of.get('boiler-efficiency'),
	'lost-heat': (of) => of.get('energy-of-all') * of.get('recovered-share') * of.get('useful-share'),
	'carbon-per-year': (of) => of.get('energy-per-year') * of.get('carbon-factor'),
	'energy-per-year': (of) =>
		of.has('quick-power')
			? of.get('quick-power') * of.get('hours-per-year')
			: of.sum('saving-in-part', 'saving-of-all-in-part', 'energy-per-year'),
	'quick-energy': (of) =>
		of.has('quick-power')
			? of.get('quick-power') * of.get('hours-per-year')
			: of.sum('quick-energy'),
	'quick-power': (of) => of.get('specific-power') * of.get('free-air-flow') * 60,
	'saving-in-part': (of) => of.get('inlet-flow') * of.get('saving-per-flow'),
	'saving-per-flow': (of) => of.get('saving-of-all-in-part') / of.get('leaks-in-part'),
	'saving-of-all-in-part': (of) =>
		(of.get('power-with-leaks') - of.get('power-without-leaks')) * of.get('hours-in-part'),
	'power-with-leaks': (of) => of.sum('machine-power'),
	'power-without-leaks': (of) => of.sum('machine-power'),
	'inlet-flow': (of) =>
		(of.get('mass-flow') / of.get('reference-density')) * 60 * (of.maybe('share-of-hours') ?? 1),
	'share-of-hours': (of) => Math.min(1, of.get('hours-per-year') / of.get('station-hours')),
	'air-per-year': (of) =>
		of.has('air-in-part')
			? of.sum('air-in-part')
			: of.get('free-air-flow') * of.get('hours-per-year') * 3600,
	'air-in-part': (of) =>
		(of.get('inlet-flow') * 60 * of.get('hours-in-part') * of.get('reference-density')) /
		of.last('reference-density'),
	'free-air-flow': (of) =>
		of.has('mass-flow')
			? of.get('mass-flow') / of.get('reference-density')
			: of.sum('free-air-flow'),
	'mass-flow': massFlow,
	'mass-flux': flux('line-pressure'),
	'line-pressure': absoluteOf,
	'site-pressure': (of) => 101_325 * (1 - (0.0065 * of.get('altitude')) / 288.15) ** 5.255_88,
	'duty-factor': (of) => of.get('open-time') / of.get('interval'),
	'reference-density': (of) => of.get('site-pressure') / (R * of.get('air-temperature')),
	'effective-area': area,
	'opening-area': opening,
	'caught-mass-flow': caughtMassFlow,
	'caught-volume': (of) => (Math.PI / 6) * (of.get('bubble-diameter') * 1e-3) ** 3,
	'equivalent-hole': (of) => Math.sqrt(of.get('band-low') * of.get('band-high')),
	'system-leak': (of) => of.get('system-leak-mass-flow') / of.get('reference-density'),
	'system-leak-mass-flow': systemLeak,
	'load-share': (of) => of.get('loaded-time') / (of.get('loaded-time') + of.get('unloaded-time')),
	'capacity-mass-flow': (of) => of.get('capacity') * of.get('reference-density'),
	'flux-ratio': (of) => of.get('flux-at-set') / of.get('flux-at-test'),
	'flux-at-set': flux('set-pressure'),
	'flux-at-test': flux('test-pressure'),
	'set-pressure': absoluteOf,
	'test-pressure': absoluteOf,
	'start-pressure': absoluteOf,
	'end-pressure': (of) =>
		of.has('end-reading')
			? (of.get('end-reading') * of.get('air-temperature')) / of.get('end-temperature')
			: absoluteOf(of),
	'end-reading': absoluteOf,
	'handbook-leak': (of) =>
		((of.get('system-volume') * (of.get('start-pressure') - of.get('end-reading'))) /
			(of.get('test-time') * of.get('site-pressure'))) *
		of.get('handbook-factor'),
	'delivered-capacity': (of) => of.get('delivered-mass-flow') / of.get('reference-density'),
	'delivered-mass-flow': (of) => of.sum('stored-mass-flow', 'leaked-mass-flow'),
	'stored-mass-flow': (of) =>
		(of.get('system-volume') * (of.get('end-pressure') - of.get('start-pressure'))) /
		(R * of.get('tank-temperature') * of.get('test-time'))
};
