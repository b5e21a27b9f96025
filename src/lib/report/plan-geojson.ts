import { fromMinor } from '../core/money/currency.ts';
import { find } from '../core/survey/ids.ts';
import { leaksInOrder } from '../core/survey/leak-state.ts';
import { metresPerPixel, toPixel } from '../core/survey/plan-geometry.ts';
import { flowsOn } from '../core/survey/plan-shapes.ts';
import type { Area, Leak, Plan, PlanPoint, Section, Survey } from '../core/survey/schema.ts';
import { knownLeak, roundsUntil } from '../core/survey/standing.ts';
import { ok, refuse, type Result } from '../core/units/result.ts';
import type { Assessment } from '../core/weigh/assessment.ts';
import { inertText } from './csv.ts';

type Position = readonly [x: number, y: number];

type Geometry =
	| { readonly type: 'Point'; readonly coordinates: Position }
	| { readonly type: 'LineString'; readonly coordinates: readonly Position[] }
	| { readonly type: 'Polygon'; readonly coordinates: readonly (readonly Position[])[] };

export interface PlanFeature {
	readonly type: 'Feature';
	readonly id: string;
	readonly geometry: Geometry;
	readonly properties: Readonly<Record<string, string | number | null>>;
}

/** What is on a plan, in its own metres. The first member that is read says that it is no map. */
export interface PlanGeoJson {
	readonly type: 'FeatureCollection';
	readonly coordinatesAre: typeof NOT_GEOGRAPHIC;
	readonly localPlan: {
		readonly geographic: false;
		readonly unit: 'metre';
		readonly origin: 'lower left corner of the plan';
		readonly x: 'to the right on the plan';
		readonly y: 'up on the plan';
		readonly widthM: number;
		readonly heightM: number;
		/** Degrees clockwise from up on the plan to north. */
		readonly northDegrees: number | null;
		readonly plan: string;
		readonly site: string;
		readonly round: string;
	};
	readonly features: readonly PlanFeature[];
}

export const NOT_GEOGRAPHIC =
	'LOCAL METRES ON THE PLAN, NOT LONGITUDE AND LATITUDE. This departs from RFC 7946, which has WGS 84 only. Do not lay it over a map.';

/** Stands in the name of the file, so that nobody opens it as a map unawares. */
export const LOCAL_METRES = 'local-metres-not-geographic';

/**
 * The leaks, isolating valves, drawn sections and areas that were walked and found tight, on one plan.
 *
 * Outer rings run anticlockwise, and close (RFC 7946, 3.1.6: from memory). Texts can start no formula
 * and hold no tag, since tables and maps are made of them.
 *
 * @returns refusal `plan-without-scale`: there are no metres without one
 */
export function planGeoJson(
	survey: Survey,
	assessment: Assessment,
	plan: Plan
): Result<PlanGeoJson> {
	const metres = metresPerPixel(plan);
	if (metres === undefined) return refuse('plan-without-scale', { plan: plan.name });
	const { widthPx, heightPx } = plan.image;
	const place = (at: PlanPoint): Position => {
		const { x, y } = toPixel(plan, at);
		return [millimetres(x * metres), millimetres((heightPx - y) * metres)];
	};
	const { roundId } = assessment;
	const round = find(survey.rounds, roundId);
	return ok({
		type: 'FeatureCollection',
		coordinatesAre: NOT_GEOGRAPHIC,
		localPlan: {
			geographic: false,
			unit: 'metre',
			origin: 'lower left corner of the plan',
			x: 'to the right on the plan',
			y: 'up on the plan',
			widthM: millimetres(widthPx * metres),
			heightM: millimetres(heightPx * metres),
			northDegrees: plan.northDegrees ?? null,
			plan: inert(plan.name),
			site: inert(survey.site.name),
			round: inert(round?.name ?? '')
		},
		features: [
			...areasOf(survey, plan.id, roundId).map((area) => areaFeature(survey, area, place)),
			...Object.values(survey.sections).flatMap((section) =>
				section.removed || section.valveAt?.planId !== plan.id
					? []
					: [valveFeature(section, place(section.valveAt.at))]
			),
			...flowsOn(survey, plan.id).map(({ id, sectionId, from, to }): PlanFeature => {
				const name = find(survey.sections, sectionId)?.name ?? '';
				return {
					type: 'Feature',
					id,
					geometry: { type: 'LineString', coordinates: [place(from), place(to)] },
					properties: { kind: 'way-of-the-air', section: inert(name) }
				};
			}),
			...leaksInOrder(survey).flatMap((leak) =>
				leak.at && leak.planId === plan.id
					? [leakFeature(survey, assessment, leak, place(leak.at))]
					: []
			)
		]
	});
}

/** As it is written to a file; what a page could take for a tag is written as its number. */
export function geoJsonText(collection: PlanGeoJson): string {
	const text = JSON.stringify(collection, undefined, 1);
	return `${text.replace(/[<>&\u2028\u2029]/g, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`)}\n`;
}

function areasOf(survey: Survey, planId: string, roundId: string): Area[] {
	return Object.values(survey.areas ?? {}).filter(
		({ removed, planId: on, use }) =>
			!removed && on === planId && (use.kind === 'section' || use.roundId === roundId)
	);
}

function areaFeature(
	survey: Survey,
	{ id, outline, name, use }: Area,
	place: (at: PlanPoint) => Position
): PlanFeature {
	const ring = outline.map(place);
	const turned = signedArea(ring) < 0 ? ring.toReversed() : ring;
	const closed = turned[0] ? [...turned, turned[0]] : turned;
	const section = use.kind === 'section' ? find(survey.sections, use.sectionId) : undefined;
	return {
		type: 'Feature',
		id,
		geometry: { type: 'Polygon', coordinates: [closed] },
		properties:
			use.kind === 'section'
				? {
						kind: 'section',
						name: inert(name ?? section?.name ?? ''),
						valve: section?.valve === undefined ? null : inert(section.valve),
						volumeL: section?.volumeL ?? null,
						pressureBarGauge: section?.pressureBarGauge ?? null
					}
				: { kind: 'walked-and-tight', name: inert(name ?? ''), walkedAt: use.walkedAt }
	};
}

function valveFeature({ id, name, valve }: Section, coordinates: Position): PlanFeature {
	return {
		type: 'Feature',
		id: `valve-${id}`,
		geometry: { type: 'Point', coordinates },
		properties: { kind: 'isolating-valve', name: inert(valve ?? ''), section: inert(name) }
	};
}

function leakFeature(
	survey: Survey,
	{ leaks, roundId, currency }: Assessment,
	leak: Leak,
	coordinates: Position
): PlanFeature {
	const { id, tag, part, place, sectionId } = leak;
	const weighed = leaks.find(({ leakId }) => leakId === id);
	const cost = weighed?.costMinorPerYear;
	const money = cost === undefined ? undefined : fromMinor(cost, currency);
	return {
		type: 'Feature',
		id,
		geometry: { type: 'Point', coordinates },
		properties: {
			kind: 'leak',
			tag,
			state: knownLeak(leak, roundsUntil(survey, roundId)).state,
			part,
			place: inert(place ?? ''),
			section: inert(find(survey.sections, sectionId)?.name ?? ''),
			freeAirLPerS: weighed ? Number((weighed.freeAirM3PerS * 1000).toPrecision(6)) : null,
			costPerYear: money?.ok ? money.value : null,
			currency
		}
	};
}

function inert(text: string): string {
	return inertText(text).replaceAll('<', '‹').replaceAll('>', '›');
}

function millimetres(metres: number): number {
	return Math.round(metres * 1000) / 1000;
}

/** Above zero for a ring that runs anticlockwise. */
function signedArea(ring: readonly Position[]): number {
	return ring.reduce((sum, [x, y], index) => {
		const [nextX, nextY] = ring[(index + 1) % ring.length] ?? [x, y];
		return sum + x * nextY - nextX * y;
	}, 0);
}
