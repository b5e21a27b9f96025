import * as L from 'leaflet';
import type { PlanPoint } from '#lib/core/survey/schema.ts';
import type { PlanArea, PlanFlow, PlanMark, PlanStroke } from './shapes.ts';

type ToMap = (at: PlanPoint) => L.LatLng;

/** Areas lie under the pins and are never in the way of a tap. */
export function drawAreas(map: L.Map, areas: readonly PlanArea[], toMap: ToMap): () => void {
	const layer = L.layerGroup().addTo(map);
	for (const { kind, outline, name } of areas) {
		const polygon = L.polygon(outline.map(toMap), {
			className: `area area-${kind}`,
			interactive: false
		}).addTo(layer);
		if (name) addWord(layer, polygon.getBounds().getCenter(), name, `area-name area-name-${kind}`);
	}
	return () => layer.remove();
}

export function drawMarks(map: L.Map, marks: readonly PlanMark[], toMap: ToMap): () => void {
	const layer = L.layerGroup().addTo(map);
	for (const { kind, at, text } of marks) addWord(layer, toMap(at), text, `mark mark-${kind}`);
	return () => layer.remove();
}

/** Arrows on a white edge; their heads keep their size while the plan is neared. */
export function drawFlows(map: L.Map, flows: readonly PlanFlow[], toMap: ToMap): () => void {
	const layer = L.layerGroup().addTo(map);
	for (const { from, to } of flows) {
		const [start, end] = [toMap(from), toMap(to)];
		for (const className of ['flow-edge', 'flow'])
			L.polyline([start, end], { className, interactive: false }).addTo(layer);
		const head = document.createElement('span');
		head.className = 'flow-head';
		const turn = Math.atan2(start.lat - end.lat, end.lng - start.lng);
		head.style.transform = `rotate(${turn}rad)`;
		addElement(layer, end, head);
	}
	return () => layer.remove();
}

/** The corners so far, numbered, with the lines between them. */
export function drawStroke(map: L.Map, stroke: PlanStroke, toMap: ToMap): () => void {
	const layer = L.layerGroup().addTo(map);
	const points = stroke.points.map(toMap);
	const closed = stroke.closed && points.length > 2;
	const options = { className: closed ? 'stroke closed' : 'stroke', interactive: false };
	(closed ? L.polygon(points, options) : L.polyline(points, options)).addTo(layer);
	points.forEach((at, index) => addWord(layer, at, String(index + 1), 'stroke-point'));
	return () => layer.remove();
}

/** Words stand on a plan as text, never as markup. */
function addWord(layer: L.LayerGroup, at: L.LatLng, text: string, className: string): void {
	const word = document.createElement('span');
	word.className = className;
	word.textContent = text;
	addElement(layer, at, word);
}

function addElement(layer: L.LayerGroup, at: L.LatLng, element: HTMLElement): void {
	L.marker(at, {
		icon: L.divIcon({ html: element, className: 'pin-place', iconSize: [0, 0] }),
		interactive: false,
		keyboard: false,
		zIndexOffset: -1000
	}).addTo(layer);
}
