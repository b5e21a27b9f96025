import * as L from 'leaflet';
import type { PlanPoint } from '#lib/core/survey/schema.ts';
import { pinElement, type Pin } from './pin.ts';
import { PinBrush, PIN_WIDTHS } from './pin-paint.ts';

/** More than so many elements make a plan heavy to move: beyond, pins are painted. */
const MOST_ELEMENTS = 300;
/** Pins whose tips are this close together on the screen cannot be told apart by a finger, px. */
const STACKED_PX = 8;
/** So many fan out around one place; there are more only where zooming in parts them. */
const MOST_FANNED = 12;
/** Painted beyond the edges, as a share of the view, so that a pan has something to show. */
const MARGIN = 0.3;

interface Settings {
	readonly map: L.Map;
	readonly toMap: (at: PlanPoint) => L.LatLng;
	/** Pins shrink when the whole plan is looked at. */
	readonly scale: () => number;
	readonly onpin: (id: string) => void;
	/** The movable pin was let go there. @returns whether it may stay */
	readonly ondrag: (to: L.LatLng) => boolean;
}

/**
 * The pins of a plan: elements while they are few, painted on one canvas with the same shapes when
 * they are many. Pins that stand on one place fan out when they are tapped.
 */
export class PinLayer {
	readonly #settings: Settings;
	readonly #drawn = new Map<string, { marker: L.Marker; key: string }>();
	readonly #canvas = document.createElement('canvas');
	#pins: readonly Pin[] = [];
	#selectedId: string | undefined;
	#movableId: string | undefined;
	#painted: readonly Pin[] = [];
	readonly #brush = new PinBrush();
	/** What is on the canvas, and from where it was looked at. */
	#onCanvas: { readonly view: string; readonly pins: readonly Pin[] } | undefined;
	#fan: L.LayerGroup | undefined;
	#frame = 0;

	constructor(settings: Settings) {
		this.#settings = settings;
		this.#canvas.className = 'pin-canvas leaflet-zoom-hide';
		this.#canvas.setAttribute('aria-hidden', 'true');
		settings.map.getPane('markerPane')?.append(this.#canvas);
		settings.map.on('moveend zoomend viewreset resize', this.#soon);
		settings.map.on('zoomstart', this.#foldFan);
	}

	show(pins: readonly Pin[], selectedId?: string, movableId?: string): void {
		this.#pins = pins;
		this.#selectedId = selectedId;
		this.#movableId = movableId;
		this.#foldFan();
		this.#draw();
	}

	remove(): void {
		cancelAnimationFrame(this.#frame);
		this.#settings.map.off('moveend zoomend viewreset resize', this.#soon);
		this.#settings.map.off('zoomstart', this.#foldFan);
		for (const { marker } of this.#drawn.values()) marker.remove();
		this.#drawn.clear();
		this.#foldFan();
		// Some browsers keep a canvas's memory until it is made empty.
		this.#canvas.width = this.#canvas.height = 0;
		this.#canvas.remove();
	}

	/** The painted pin under a tap, uppermost first; elements answer for themselves. */
	tap(at: L.LatLng): boolean {
		if (this.#fan) {
			this.#foldFan();
			return true;
		}
		return this.#chooseAt(at, this.#painted);
	}

	/** The pin under the cross that keys aim with. */
	choose(at: L.LatLng): boolean {
		return this.#chooseAt(at, this.#pins);
	}

	#chooseAt(at: L.LatLng, pins: readonly Pin[]): boolean {
		const { map, toMap, scale } = this.#settings;
		const { x, y } = map.latLngToContainerPoint(at);
		const hit = pins.findLast((pin) => {
			const tip = map.latLngToContainerPoint(toMap(pin.at));
			const half = Math.max(12, (PIN_WIDTHS[pin.size] * scale()) / 2);
			return Math.abs(tip.x - x) <= half && y <= tip.y + 4 && y >= tip.y - half * 2.3;
		});
		if (hit) this.#choose(hit);
		return hit !== undefined;
	}

	readonly #soon = (): void => {
		cancelAnimationFrame(this.#frame);
		this.#frame = requestAnimationFrame(() => this.#draw());
	};

	readonly #foldFan = (): void => {
		this.#fan?.remove();
		this.#fan = undefined;
	};

	#draw(): void {
		const { map, toMap } = this.#settings;
		let elements = this.#pins;
		this.#painted = [];
		if (elements.length > MOST_ELEMENTS) {
			const view = map.getBounds().pad(MARGIN);
			elements = elements.filter((pin) => view.contains(toMap(pin.at)));
			if (elements.length > MOST_ELEMENTS) {
				this.#painted = elements.filter(({ id }) => id !== this.#selectedId);
				elements = elements.filter(({ id }) => id === this.#selectedId);
			}
		}
		this.#showElements(elements);
		this.#paint();
	}

	#showElements(pins: readonly Pin[]): void {
		const { map, toMap } = this.#settings;
		const wanted = new Set<string>();
		for (const pin of pins) {
			wanted.add(pin.id);
			const selected = pin.id === this.#selectedId;
			const movable = pin.id === this.#movableId;
			const key = `${pin.tag} ${pin.state} ${pin.size} ${selected} ${movable} ${pin.name}`;
			const before = this.#drawn.get(pin.id);
			const at = toMap(pin.at);
			if (before && before.key === key) {
				if (!before.marker.getLatLng().equals(at)) before.marker.setLatLng(at);
				continue;
			}
			before?.marker.remove();
			const marker = this.#marker(pin, at, selected, movable ? 'movable' : '');
			if (movable) this.#letDrag(marker, at);
			else marker.on('click', () => this.#choose(pin));
			marker.addTo(map);
			this.#drawn.set(pin.id, { marker, key });
		}
		for (const [id, { marker }] of this.#drawn)
			if (!wanted.has(id)) {
				marker.remove();
				this.#drawn.delete(id);
			}
	}

	#letDrag(marker: L.Marker, from: L.LatLng): void {
		marker.options.draggable = true;
		marker.on('dragend', () => {
			if (!this.#settings.ondrag(marker.getLatLng())) marker.setLatLng(from);
		});
	}

	#paint(): void {
		const { map, toMap, scale } = this.#settings;
		const canvas = this.#canvas;
		const pins = this.#painted;
		if (pins.length === 0) {
			canvas.width = canvas.height = 0;
			this.#onCanvas = undefined;
			return;
		}
		const { x: width, y: height } = map.getSize();
		const ratio = Math.min(2, devicePixelRatio);
		const [left, top] = [width * MARGIN, height * MARGIN];
		const corner = map.containerPointToLayerPoint([-left, -top]);
		const view = [map.getZoom(), corner.x, corner.y, width, height, ratio, scale()].join(' ');
		// One more pin goes on top of a thousand that are there already.
		const before = this.#onCanvas?.view === view ? this.#onCanvas.pins : [];
		const added = before.length > 0 && before.every((pin, index) => pin === pins[index]);
		if (!added) {
			canvas.width = Math.round((width + 2 * left) * ratio);
			canvas.height = Math.round((height + 2 * top) * ratio);
			canvas.style.width = `${canvas.width / ratio}px`;
			canvas.style.height = `${canvas.height / ratio}px`;
			L.DomUtil.setPosition(canvas, corner);
			this.#brush.dip(canvas);
		}
		const tips = pins.slice(added ? before.length : 0).map((pin) => {
			const { x, y } = map.latLngToContainerPoint(toMap(pin.at));
			return { pin, x: x + left, y: y + top };
		});
		const context = canvas.getContext('2d');
		if (!context) return;
		this.#brush.paint(context, tips, scale(), ratio);
		this.#onCanvas = { view, pins };
	}

	/** One pin opens; several on one place fan out first. */
	#choose(pin: Pin): void {
		const { map, toMap, onpin } = this.#settings;
		const tip = map.latLngToContainerPoint(toMap(pin.at));
		const stack = this.#pins.filter(
			(other) => map.latLngToContainerPoint(toMap(other.at)).distanceTo(tip) < STACKED_PX
		);
		if (stack.length < 2 || this.#fan) {
			this.#foldFan();
			onpin(pin.id);
		} else this.#fanOut(stack.slice(0, MOST_FANNED), tip);
	}

	#fanOut(stack: readonly Pin[], tip: L.Point): void {
		const { map, onpin } = this.#settings;
		const fan = L.layerGroup().addTo(map);
		const radius = Math.max(44, (stack.length * 44) / (2 * Math.PI));
		stack.forEach((pin, index) => {
			const angle = (2 * Math.PI * index) / stack.length - Math.PI / 2;
			const away = L.point(Math.cos(angle), Math.sin(angle)).multiplyBy(radius);
			const at = map.containerPointToLatLng(tip.add(away));
			const from = map.containerPointToLatLng(tip);
			L.polyline([from, at], { className: 'fan-line', interactive: false }).addTo(fan);
			const marker = this.#marker(pin, at, pin.id === this.#selectedId, 'fanned');
			marker.setZIndexOffset(30_000);
			marker.on('click', () => {
				this.#foldFan();
				onpin(pin.id);
			});
			marker.addTo(fan);
		});
		this.#fan = fan;
	}

	#marker(pin: Pin, at: L.LatLng, selected: boolean, also = ''): L.Marker {
		const html = pinElement(pin, selected);
		if (also) html.classList.add(also);
		return L.marker(at, {
			icon: L.divIcon({
				html,
				className: 'pin-place',
				iconSize: [48, 48],
				iconAnchor: [24, 48]
			}),
			keyboard: false,
			zIndexOffset: selected ? 10_000 : pin.size * 100
		});
	}
}
