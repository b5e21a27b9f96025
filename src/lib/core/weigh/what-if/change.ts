/** What is tried out. What is left out stays as it is today. */
export interface Change {
	/** Added to every set pressure, bar; negative lowers it. */
	readonly pressureStepBar?: number;
	/** Share of production's demand that has no regulator and follows the set pressure; 0 if left out. */
	readonly unregulatedFraction?: number;
	/** Parts of the station's week (ids of periods, `closed`) in which the air is off. */
	readonly airOffIn?: readonly string[];
	/** Without a station: hours under pressure as a share of today's. */
	readonly hoursShare?: number;
	/** The price of energy at ordinary times; the other prices move with it. */
	readonly pricePerKwh?: number;
	/** A machine that stands still in some parts of the station's week. */
	readonly machineOff?: { readonly compressorId: string; readonly in: readonly string[] };
	/** The leaks that are mended. */
	readonly mended?: readonly string[];
}
