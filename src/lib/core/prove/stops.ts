import { find } from '../survey/ids.ts';
import { leaksInOrder, roundsInOrder, sightingIn } from '../survey/leak-state.ts';
import type { CommandBody } from '../survey/command.ts';
import type { Leak, PlanPoint, Sighting, Survey } from '../survey/schema.ts';
import { standings, type RoundStanding, type Standing } from '../survey/standing.ts';

/** What is answered at a stop. */
export type StopOutcome = Sighting['state'];

/** One known leak to re-soap in this round. */
export interface Stop {
	readonly leak: Leak;
	/** What was known of it when the round began. */
	readonly known: Standing;
	readonly outcome?: StopOutcome;
	/** Proved tight before, and leaking now. */
	readonly again: boolean;
}

/**
 * The leaks that earlier rounds knew of, in walking order: plan by plan, always on to the nearest stop
 * not yet taken, from the compressor room where it is marked; what is on no plan comes last, by tag.
 * METHOD V1.
 */
export function stopsOf(survey: Survey, roundId: string): Stop[] {
	const roundIds = roundsInOrder(survey).map(({ id }) => id);
	const at = roundIds.indexOf(roundId);
	if (at < 1) return [];
	const stops = leaksInOrder(survey).flatMap((leak): Stop[] => {
		const rounds = standings(leak, roundIds.slice(0, at));
		const known = rounds.at(-1)?.end ?? { state: 'unknown' };
		if (known.state === 'unknown') return [];
		const outcome = sightingIn(leak, roundId)?.state;
		return [
			{
				leak,
				known,
				...(outcome && { outcome }),
				again: known.state === 'tight' && outcome === 'leaking'
			}
		];
	});
	return inWalkingOrder(survey, stops);
}

export interface Progress {
	readonly stops: number;
	readonly looked: number;
	readonly notReached: number;
	readonly left: number;
	readonly newLeaks: number;
}

/** How far the round is. */
export function progressOf(survey: Survey, roundId: string, stops: readonly Stop[]): Progress {
	const known = new Set(stops.map(({ leak }) => leak.id));
	const notReached = stops.filter(({ outcome }) => outcome === 'not-reached').length;
	const answered = stops.filter(({ outcome }) => outcome !== undefined).length;
	return {
		stops: stops.length,
		looked: answered - notReached,
		notReached,
		left: stops.length - answered,
		newLeaks: leaksInOrder(survey).filter(
			(leak) => !known.has(leak.id) && sightingIn(leak, roundId)?.state === 'leaking'
		).length
	};
}

/**
 * The command that answers a stop. A leak that still leaks keeps its last reading until it is sized
 * again; one that came back does too, and says so by being its last reading.
 */
export function answerStop(
	survey: Survey,
	leak: Leak,
	roundId: string,
	outcome: StopOutcome | undefined,
	seenAt: string
): CommandBody {
	if (outcome === undefined)
		return { kind: 'record-sighting', leakId: leak.id, roundId, sighting: null };
	const last = outcome === 'leaking' ? lastReading(survey, leak, roundId) : undefined;
	return {
		kind: 'record-sighting',
		leakId: leak.id,
		roundId,
		sighting: {
			...(last?.evidence && { evidence: last.evidence }),
			...(last?.pressureBarGauge !== undefined && { pressureBarGauge: last.pressureBarGauge }),
			...(last?.intermittent && { intermittent: last.intermittent }),
			state: outcome,
			seenAt
		}
	};
}

/** The last sighting of a leak, of this round or one before it, that saw it leaking. */
function lastReading(survey: Survey, leak: Leak, roundId: string): Sighting | undefined {
	const roundIds = roundsInOrder(survey).map(({ id }) => id);
	return roundIds
		.slice(0, roundIds.indexOf(roundId) + 1)
		.reverse()
		.map((id) => sightingIn(leak, id))
		.find((sighting) => sighting?.state === 'leaking');
}

/** The whole history of a leak, oldest round first; rounds that know nothing of it are left out. */
export function historyOf(survey: Survey, leak: Leak): RoundStanding[] {
	return standings(
		leak,
		roundsInOrder(survey).map(({ id }) => id)
	).filter(({ found, end }) => found.state !== 'unknown' || end.state !== 'unknown');
}

function inWalkingOrder(survey: Survey, stops: readonly Stop[]): Stop[] {
	const placed = new Map<string, Placed[]>();
	const rest: Stop[] = [];
	for (const stop of stops) {
		const { planId, at } = stop.leak;
		const plan = find(survey.plans, planId);
		if (!at || !plan || plan.removed) rest.push(stop);
		else placed.set(plan.id, [...(placed.get(plan.id) ?? []), { stop, at }]);
	}
	const ordered = [...placed].flatMap(([planId, here]) => {
		const plan = find(survey.plans, planId);
		const tall = plan ? plan.image.heightPx / plan.image.widthPx : 1;
		return nearestFirst(here, plan?.compressorRoom ?? { x: 0, y: 0 }, tall);
	});
	return [...ordered, ...rest];
}

interface Placed {
	readonly stop: Stop;
	readonly at: PlanPoint;
}

/** @param tall height of the plan over its width, so that both directions count alike */
function nearestFirst(placed: readonly Placed[], start: PlanPoint, tall: number): Stop[] {
	const left = new Set(placed);
	const order: Stop[] = [];
	let here = start;
	while (left.size > 0) {
		let next: Placed | undefined;
		let least = Infinity;
		for (const each of left) {
			const far = Math.hypot(each.at.x - here.x, (each.at.y - here.y) * tall);
			if (far < least) {
				least = far;
				next = each;
			}
		}
		if (!next) break;
		left.delete(next);
		order.push(next.stop);
		here = next.at;
	}
	return order;
}
