/** What waits to be drawn, in the order of the page. */
const waiting: (() => void)[] = [];
let under = false;

/**
 * Draws parts of a page one a frame, so that none of them holds the page up for long.
 * @param draw draws the part
 * @returns takes the part out of the row again
 */
export function inTurn(draw: () => void): () => void {
	waiting.push(draw);
	if (!under) {
		under = true;
		soon(next);
	}
	return () => {
		const at = waiting.indexOf(draw);
		if (at >= 0) waiting.splice(at, 1);
	};
}

function next(): void {
	const draw = waiting.shift();
	if (draw) soon(next);
	else under = false;
	draw?.();
}

/** After the next frame was drawn; a page that nobody sees has no frames. */
function soon(task: () => void): void {
	if (document.hidden) setTimeout(task);
	else requestAnimationFrame(() => setTimeout(task));
}
