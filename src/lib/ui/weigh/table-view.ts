import { FACETS, type Narrowing, type SortKey, type Sorting } from './ranked-rows.ts';

/** How the table of leaks is looked at; it stands in the address, so that it can be kept and sent. */
export interface TableView {
	readonly sorting: Sorting;
	readonly narrowing: Narrowing;
}

/** What leaks now, by what it wastes. */
export const STARTING_VIEW: TableView = {
	sorting: { key: 'rank', falling: false },
	narrowing: { section: [], part: [], state: ['leaking'] }
};

const KEYS: readonly SortKey[] = [
	'rank',
	'payback',
	'perMinute',
	'chance',
	'tag',
	'place',
	'part',
	'section',
	'flow',
	'energy',
	'cost',
	'state'
];
/** Orders that begin with the largest. */
const FALLING: readonly SortKey[] = ['flow', 'energy', 'cost', 'perMinute', 'chance'];
/** Stands for a list that is empty where it starts with something in it. */
const ALL = 'all';

/** An order as it is first asked for. */
export function startingOrder(key: SortKey): Sorting {
	return { key, falling: FALLING.includes(key) };
}

/** What an address says of the table; what it does not say is as at the start. */
export function viewOf(query: Pick<URLSearchParams, 'get' | 'getAll' | 'has'>): TableView {
	const key = KEYS.find((each) => each === query.get('order'));
	const { sorting, narrowing } = STARTING_VIEW;
	const order = key ? startingOrder(key) : sorting;
	const listOf = (facet: keyof Narrowing) => {
		const values = query.getAll(facet);
		if (values.length === 0) return narrowing[facet];
		return values.filter((value) => value !== ALL);
	};
	return {
		sorting: query.has('turned') ? { ...order, falling: !order.falling } : order,
		narrowing: { section: listOf('section'), part: listOf('part'), state: listOf('state') }
	};
}

/** The query of the same address, saying how the table is looked at. */
export function queryOf(url: Pick<URL, 'search'>, { sorting, narrowing }: TableView): string {
	const query = new URLSearchParams(url.search);
	for (const name of ['order', 'turned', ...FACETS]) query.delete(name);
	if (sorting.key !== STARTING_VIEW.sorting.key) query.set('order', sorting.key);
	if (sorting.falling !== startingOrder(sorting.key).falling) query.set('turned', 'yes');
	for (const facet of FACETS) {
		const values = narrowing[facet];
		if (values.join() === STARTING_VIEW.narrowing[facet].join()) continue;
		for (const value of values.length > 0 ? values : [ALL]) query.append(facet, value);
	}
	return `?${query}`;
}
