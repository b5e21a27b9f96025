import type * as L from 'leaflet';

const STEP_PX = 80;
const STEPS: Readonly<Record<string, readonly [x: number, y: number]>> = {
	ArrowLeft: [-STEP_PX, 0],
	ArrowRight: [STEP_PX, 0],
	ArrowUp: [0, -STEP_PX],
	ArrowDown: [0, STEP_PX]
};
const WITH_SHIFT = 3;

/**
 * Moves the plan under the cross at once. The library slides it, passes over the keys that are
 * pressed meanwhile, and whoever presses Enter then takes a place on the way.
 *
 * @returns whether the key was one that moves the plan
 */
export function panByKey(map: L.Map, event: KeyboardEvent): boolean {
	const step = STEPS[event.key];
	if (!step || event.altKey || event.ctrlKey || event.metaKey) return false;
	event.preventDefault();
	event.stopPropagation();
	const times = event.shiftKey ? WITH_SHIFT : 1;
	map.panBy([step[0] * times, step[1] * times], { animate: false });
	const { maxBounds } = map.options;
	if (maxBounds) map.panInsideBounds(maxBounds, { animate: false });
	return true;
}
