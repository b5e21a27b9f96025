/** How a figure came about: what it was made from, down to what somebody entered. */
export interface WorkingNode {
	readonly label: string;
	/** The value as it is shown, with its unit. */
	readonly value: string;
	/** The METHOD rule that made it, e.g. `A3`. */
	readonly method?: string | undefined;
	/** Where an input came from: who entered it, or which starting value it is. */
	readonly origin?: string | undefined;
	/** The 90 % interval, as it is shown. */
	readonly interval?: string | undefined;
	readonly children: readonly WorkingNode[];
}
