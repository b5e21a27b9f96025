/**
 * All words of the app, room by room. English is the shape: another language satisfies this type, so
 * the compiler names each word that it lacks, has too many of, or fills with other values.
 */
export interface Catalogue {
	readonly compressorRoom: typeof import('./en/compressor-room.ts').compressorRoom;
	readonly controls: typeof import('./en/controls.ts').controls;
	readonly frame: typeof import('./en/frame.ts').frame;
	readonly leak: typeof import('./en/leak.ts').leak;
	readonly mending: typeof import('./en/mending.ts').mending;
	readonly method: typeof import('./en/method.ts').method;
	readonly proof: typeof import('./en/proof.ts').proof;
	readonly setUp: typeof import('./en/set-up.ts').setUp;
	readonly siteList: typeof import('./en/site-list.ts').siteList;
	readonly sums: typeof import('./en/sums.ts').sums;
	readonly supply: typeof import('./en/supply.ts').supply;
}
