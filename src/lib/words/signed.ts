/** A change with its sign, in the way that a sum below zero is written: `+€300`, `−€1,200`. */
export function signed(value: number, text: (size: number) => string): string {
	return `${value < 0 ? '−' : '+'}${text(Math.abs(value))}`;
}
