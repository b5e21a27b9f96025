export type Paper = 'a4' | 'a3' | 'letter';

/** Where the making of the printed list stands. */
export type Making =
	| { readonly kind: 'idle' }
	| { readonly kind: 'busy'; readonly doing: string; readonly done: number }
	| {
			readonly kind: 'ready';
			/** Characters that the print's font lacks; they would come out as empty boxes. */
			readonly missingGlyphs: readonly string[];
			/** Plans whose picture could not be drawn, by name. */
			readonly missingPlans: readonly string[];
			readonly canShare: boolean;
	  }
	| { readonly kind: 'failed' };
