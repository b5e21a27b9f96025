export type Paper = 'a4' | 'a3' | 'letter';

/** What takes long enough to be made beside the page. */
export type Printable = 'pdf' | 'tags';

/** What is made at once. */
export type TableKind = 'xlsx' | 'csv' | 'workOrders' | 'workOrderPack' | 'calendar';

/** Where the making of a print stands. */
export type Making =
	| { readonly kind: 'idle' }
	| {
			readonly kind: 'busy';
			readonly what: Printable;
			readonly doing: string;
			readonly done: number;
	  }
	| {
			readonly kind: 'ready';
			readonly what: Printable;
			/** Characters that the print's font lacks; they would come out as empty boxes. */
			readonly missingGlyphs: readonly string[];
			/** Plans whose picture could not be drawn, by name. */
			readonly missingPlans: readonly string[];
			/** Tags of the leaks whose picture could not be drawn. */
			readonly missingPhotos: readonly string[];
			readonly canShare: boolean;
	  }
	/** In words: why, and what to do next. */
	| { readonly kind: 'failed'; readonly reason: string };
