import type { LeakState } from '#lib/core/survey/leak-state.ts';
import type { PlanPoint } from '#lib/core/survey/schema.ts';

/** One leak as it is drawn on a plan. */
export interface Pin {
	readonly id: string;
	readonly tag: number;
	readonly at: PlanPoint;
	readonly state: LeakState;
	/** What it costs, as a size: 1 for the small ones, 3 for the few that cost most. */
	readonly size: 1 | 2 | 3;
	/** What is read out: the tag, the state and the place. */
	readonly name: string;
}

/** The outline of a pin by state: a hanging tag, its corners and edge tell the state without colour. */
export const OUTLINES: Readonly<Record<LeakState, string>> = {
	// A plate with a point: still to be mended.
	leaking: 'M3 2h34a2 2 0 0 1 2 2v26a2 2 0 0 1-2 2H27l-7 13-7-13H3a2 2 0 0 1-2-2V4a2 2 0 0 1 2-2Z',
	// The same with its corners cut: mended, not re-soaped.
	mended: 'M11 2h18l10 9v12l-10 9h-2l-7 13-7-13h-2L1 23V11Z',
	// Round: proved tight.
	tight: 'M20 1a17 16.5 0 0 1 8 31l-8 13-8-13a17 16.5 0 0 1 8-31Z',
	'not-reached': 'M3 2h34v30H27l-7 13-7-13H3Z',
	unseen: 'M3 2h34v30H27l-7 13-7-13H3Z'
};

/** The tick of a leak that was proved tight. */
export const TICK = 'm14.5 27 4 3 7-6';

const SVG = 'http://www.w3.org/2000/svg';

/** Draws a pin as elements, never as text that becomes HTML. */
export function pinElement(pin: Pin, selected: boolean): HTMLElement {
	const button = document.createElement('button');
	button.type = 'button';
	button.tabIndex = -1; // The list beside the plan is the way for keys.
	button.className = `pin ${pin.state} size-${pin.size}${selected ? ' selected' : ''}`;
	button.setAttribute('aria-label', pin.name);
	button.dataset['tag'] = String(pin.tag);

	const picture = document.createElementNS(SVG, 'svg');
	picture.setAttribute('viewBox', '0 0 40 46');
	picture.setAttribute('aria-hidden', 'true');
	const outline = document.createElementNS(SVG, 'path');
	outline.setAttribute('d', OUTLINES[pin.state]);
	const number = document.createElementNS(SVG, 'text');
	number.setAttribute('x', '20');
	number.setAttribute('y', pin.state === 'tight' ? '21' : '23');
	number.setAttribute('text-anchor', 'middle');
	number.setAttribute('font-size', String(numberSize(pin.tag)));
	number.textContent = String(pin.tag);
	picture.append(outline, number);
	if (pin.state === 'tight') {
		const tick = document.createElementNS(SVG, 'path');
		tick.setAttribute('class', 'tick');
		tick.setAttribute('d', TICK);
		picture.append(tick);
	}
	button.append(picture);
	return button;
}

/** Letters that let the number fit into the pin, in its own units: it is 40 wide. */
export function numberSize(tag: number): number {
	return [17, 17, 17, 16, 13, 11, 9][String(tag).length] ?? 9;
}
