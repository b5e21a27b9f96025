/** A yearly amount. What is not known is absent, never zero. */
export interface Amounts {
	/** While under pressure. */
	readonly massFlowKgPerS: number;
	readonly freeAirM3PerS: number;
	readonly energyKwhPerYear?: number;
	/** Whole minor units. */
	readonly costMinorPerYear?: number;
	readonly co2KgPerYear?: number;
}
