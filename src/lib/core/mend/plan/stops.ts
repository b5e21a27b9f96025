import { find } from '../../survey/ids.ts';
import type { Leak, Plan, Survey } from '../../survey/schema.ts';
import { walkingOrder, type Stop } from './walking-order.ts';

/** What is behind one valve, in the order in which it is walked. */
export interface SectionStops {
	/** Absent: leaks of no section. */
	readonly sectionId?: string;
	readonly leakIds: readonly string[];
}

interface Pinned {
	readonly leakId: string;
	readonly plan: Plan;
	readonly stop: Stop;
}

/**
 * The stops of a window: section after section, since each is shut and vented as one, and within each joint
 * after joint, a short walk from the compressor room and back. Plans are walked one after another, that with
 * the compressor room first; what is on no plan comes last of its section. METHOD P8.
 */
export function stopsOfWindow(survey: Survey, leakIds: readonly string[]): SectionStops[] {
	const plans = Object.values(survey.plans)
		.filter(({ removed }) => !removed)
		.sort(
			(a, b) => Number(b.compressorRoom !== undefined) - Number(a.compressorRoom !== undefined)
		);
	const bySection = new Map<string | undefined, Leak[]>();
	for (const leakId of leakIds) {
		const leak = find(survey.leaks, leakId);
		if (!leak) continue;
		const section = find(survey.sections, leak.sectionId);
		const id = section?.removed ? undefined : section?.id;
		bySection.set(id, [...(bySection.get(id) ?? []), leak]);
	}
	const groups = [...bySection].map(([sectionId, leaks]) => {
		const pinned = leaks.flatMap((leak) => pinOf(survey, leak) ?? []);
		return { sectionId, leaks, pinned, plan: pinned[0]?.plan };
	});

	const walked: SectionStops[] = [];
	for (const plan of [...plans, undefined]) {
		const here = groups.filter((group) => group.plan?.id === plan?.id);
		const middles = here.map(({ pinned }) =>
			middle(pinned.filter((pin) => pin.plan.id === plan?.id).map(({ stop }) => stop))
		);
		const room = plan && roomOf(plan);
		let at = room ?? middles[0] ?? { x: 0, y: 0 };
		for (const index of walkingOrder(middles, at)) {
			const group = here[index];
			if (!group) continue;
			const inOrder = walkingOrder(
				group.pinned.map(({ stop }) => stop),
				at
			).flatMap((pin) => group.pinned[pin] ?? []);
			const pins = new Set(inOrder.map(({ leakId }) => leakId));
			walked.push({
				...(group.sectionId !== undefined && { sectionId: group.sectionId }),
				leakIds: [...pins, ...group.leaks.flatMap(({ id }) => (pins.has(id) ? [] : [id]))]
			});
			at = inOrder.at(-1)?.stop ?? at;
		}
	}
	return walked;
}

function pinOf(survey: Survey, { id, planId, at }: Leak): Pinned | undefined {
	const plan = find(survey.plans, planId);
	if (!plan || plan.removed || !at) return undefined;
	return { leakId: id, plan, stop: onSheet(plan, at) };
}

function roomOf(plan: Plan): Stop | undefined {
	return plan.compressorRoom && onSheet(plan, plan.compressorRoom);
}

/** Shares of width and height are not lengths: the sheet's proportions make them so. */
function onSheet({ image }: Plan, { x, y }: Stop): Stop {
	return { x: x * image.widthPx, y: y * image.heightPx };
}

function middle(stops: readonly Stop[]): Stop {
	const sum = stops.reduce((a, b) => ({ x: a.x + b.x, y: a.y + b.y }), { x: 0, y: 0 });
	const count = Math.max(1, stops.length);
	return { x: sum.x / count, y: sum.y / count };
}
