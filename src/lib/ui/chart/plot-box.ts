/** Where a chart is drawn inside its picture, in pixels from the top left. */
export interface PlotBox {
	readonly left: number;
	readonly right: number;
	readonly top: number;
	readonly bottom: number;
}

/** A place on an axis and what stands there. */
export interface Tick {
	readonly at: number;
	readonly text: string;
	readonly anchor?: 'start' | 'middle' | 'end';
}

/** What a picture leaves for the chart when its edges have their room. */
export function plotBox(
	width: number,
	height: number,
	edge: {
		readonly top: number;
		readonly right: number;
		readonly bottom: number;
		readonly left: number;
	}
): PlotBox {
	return {
		left: edge.left,
		right: width - edge.right,
		top: edge.top,
		bottom: height - edge.bottom
	};
}
