export type PaperName = 'a4' | 'a3' | 'letter';

export interface Paper {
	readonly widthMm: number;
	readonly heightMm: number;
	/** Everything is drawn this much larger, so that a large sheet reads from further away. */
	readonly scale: number;
}

export const PAPERS: Readonly<Record<PaperName, Paper>> = {
	a4: { widthMm: 210, heightMm: 297, scale: 1 },
	a3: { widthMm: 297, heightMm: 420, scale: 1.25 },
	letter: { widthMm: 215.9, heightMm: 279.4, scale: 1 }
};

export const MARGIN = 12;

/** In millimetres at scale 1 on a page; in shares of its width and height on a plan. */
export interface Box {
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
}
