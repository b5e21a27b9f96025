import './plan-map.css';
import 'leaflet/dist/leaflet.css';
import * as L from 'leaflet';
import { afterEach, expect, test } from 'vitest';
import type { Pin } from './pin.ts';
import { PinLayer } from './pin-layer.ts';

const layers: { readonly layer: PinLayer; readonly map: L.Map }[] = [];
afterEach(() => {
	for (const { layer, map } of layers.splice(0)) {
		layer.remove();
		map.remove();
	}
});

/** A plan of 1000 × 750 on 400 × 300 px of the screen, and what its pins are painted on. */
function aPlan(): { readonly layer: PinLayer; readonly canvas: HTMLCanvasElement } {
	const node = document.createElement('div');
	node.style.cssText = 'width: 400px; height: 300px';
	document.body.append(node);
	const map = L.map(node, {
		crs: L.CRS.Simple,
		minZoom: -6,
		zoomSnap: 0,
		attributionControl: false
	});
	map.fitBounds([
		[-750, 0],
		[0, 1000]
	]);
	const layer = new PinLayer({
		map,
		toMap: ({ x, y }) => L.latLng(-y * 750, x * 1000),
		scale: () => 0.5,
		onpin: () => undefined,
		ondrag: () => false
	});
	layers.push({ layer, map });
	const canvas = node.querySelector<HTMLCanvasElement>('canvas.pin-canvas');
	if (!canvas) throw new Error('nothing to paint on');
	return { layer, canvas };
}

const PINS = Array.from({ length: 400 }, (_, index): Pin => {
	const state = (['leaking', 'mended', 'tight', 'unseen'] as const)[index % 4] ?? 'leaking';
	const at = { x: 0.05 + (index % 20) * 0.045, y: 0.05 + Math.floor(index / 20) * 0.045 };
	const size = index % 5 === 0 ? 3 : 1;
	return { id: `leak-${index}`, tag: index + 1, at, state, size, name: `Leak ${index + 1}` };
});

function pixels(canvas: HTMLCanvasElement): string {
	return canvas.toDataURL();
}

test('a pin that is added to many looks as if all were painted anew', () => {
	const grown = aPlan();
	grown.layer.show(PINS.slice(0, 399));
	const before = pixels(grown.canvas);
	grown.layer.show(PINS);
	const whole = aPlan();
	whole.layer.show(PINS);
	expect(pixels(grown.canvas)).not.toBe(before);
	expect(pixels(grown.canvas) === pixels(whole.canvas)).toBe(true);
});

test('a pin that is gone, or stands otherwise, leaves nothing behind', () => {
	const { layer, canvas } = aPlan();
	layer.show(PINS.slice(0, 350));
	const before = pixels(canvas);
	layer.show(PINS);
	layer.show(PINS.slice(0, 350));
	expect(pixels(canvas) === before).toBe(true);
	layer.show(PINS.slice(0, 350).map((pin) => (pin.tag === 5 ? { ...pin, size: 1 as const } : pin)));
	expect(pixels(canvas) === before).toBe(true);
	layer.show(PINS.slice(0, 350).map((pin) => (pin.tag === 6 ? { ...pin, size: 1 as const } : pin)));
	expect(pixels(canvas) === before).toBe(false);
});
