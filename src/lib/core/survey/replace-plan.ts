import type { CommandBody } from './command.ts';
import { shifted, toPixel, type Shift } from './plan-geometry.ts';
import type { Plan, PlanPoint, Survey } from './schema.ts';

/** A newer drawing of a plan, and what happens to everything that stands on it. */
export interface Replacement {
	/** To be given in one go, so that one undo takes the older drawing back. */
	readonly bodies: readonly CommandBody[];
	/** Tags of pins that would lie outside the newer drawing: they are put on its edge. */
	readonly outside: readonly number[];
}

/**
 * Puts a newer drawing under everything that stands on a plan, each place shifted with it.
 *
 * @param shift from pixels of the older picture to pixels of the newer
 */
export function replacePlan(
	survey: Survey,
	plan: Plan,
	newer: Pick<Plan, 'image' | 'original'>,
	shift: Shift
): Replacement {
	const move = (at: PlanPoint): PlanPoint & { readonly outside: boolean } => {
		const { x: px, y: py } = shifted(shift, toPixel(plan, at));
		const [x, y] = [px / newer.image.widthPx, py / newer.image.heightPx];
		const within = { x: Math.min(1, Math.max(0, x)), y: Math.min(1, Math.max(0, y)) };
		return { ...within, outside: within.x !== x || within.y !== y };
	};
	const place = (at: PlanPoint): PlanPoint => {
		const { x, y } = move(at);
		return { x, y };
	};
	const { compressorRoom, scale } = plan;
	const bodies: CommandBody[] = [
		{
			kind: 'set-plan',
			planId: plan.id,
			changes: {
				image: newer.image,
				original: newer.original ?? null,
				...(compressorRoom && { compressorRoom: place(compressorRoom) }),
				...(scale && { scale: { ...scale, from: place(scale.from), to: place(scale.to) } }),
				...(plan.northDegrees !== undefined && {
					northDegrees: turned(plan.northDegrees, shift)
				})
			}
		}
	];
	const outside: number[] = [];
	for (const leak of Object.values(survey.leaks)) {
		if (leak.planId !== plan.id || !leak.at || leak.removed) continue;
		const at = move(leak.at);
		if (at.outside) outside.push(leak.tag);
		bodies.push({
			kind: 'move-pin',
			leakId: leak.id,
			planId: plan.id,
			at: { x: at.x, y: at.y }
		});
	}
	for (const area of Object.values(survey.areas ?? {})) {
		if (area.planId !== plan.id || area.removed) continue;
		bodies.push({
			kind: 'set-area',
			areaId: area.id,
			changes: { outline: area.outline.map(place) }
		});
	}
	for (const { id, valveAt, feedAt, removed } of Object.values(survey.sections)) {
		if (removed) continue;
		const planId = plan.id;
		const valve = valveAt?.planId === planId && { valveAt: { planId, at: place(valveAt.at) } };
		const feed = feedAt?.planId === planId && {
			feedAt: { planId, from: place(feedAt.from), to: place(feedAt.to) }
		};
		if (valve || feed)
			bodies.push({ kind: 'set-section', sectionId: id, changes: { ...valve, ...feed } });
	}
	return { bodies, outside: outside.sort((one, other) => one - other) };
}

/** Degrees clockwise from the top, carried along: up is (0, -1) where y grows downwards. */
function turned(degrees: number, { a, b, c, d }: Shift): number {
	const angle = (degrees * Math.PI) / 180;
	const [x, y] = [Math.sin(angle), -Math.cos(angle)];
	const after = Math.atan2(a * x + c * y, -(b * x + d * y));
	return ((after * 180) / Math.PI + 360) % 360;
}
