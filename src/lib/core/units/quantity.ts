declare const unit: unique symbol;

/** A plain number whose unit is part of its type, so that gauge and absolute cannot be mixed up. */
export type Quantity<Unit extends string> = number & { readonly [unit]: Unit };

export type PascalAbsolute = Quantity<'Pa absolute'>;
export type PascalGauge = Quantity<'Pa gauge'>;
export type Kelvin = Quantity<'K'>;
export type Metre = Quantity<'m'>;
export type SquareMetre = Quantity<'m²'>;
export type CubicMetre = Quantity<'m³'>;
export type Second = Quantity<'s'>;
export type KilogramPerSecond = Quantity<'kg/s'>;
/** Volume flow of free air; the reference it is stated at travels beside it. */
export type CubicMetrePerSecond = Quantity<'m³/s'>;
export type KilogramPerCubicMetre = Quantity<'kg/m³'>;
export type Watt = Quantity<'W'>;
export type Joule = Quantity<'J'>;

/** Gives a plain number its unit. Conversions from other units live in `convert.ts`. */
export function as<Unit extends string>(value: number): Quantity<Unit> {
	return value as Quantity<Unit>;
}
