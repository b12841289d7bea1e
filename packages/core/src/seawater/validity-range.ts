/**
 * Range in which an equation was fitted or is defined, per quantity: lowest and highest value, both included.
 *
 * Functions compute outside it as well; whoever stores such a number says so.
 */
export type ValidityRange = Readonly<Record<string, readonly [low: number, high: number]>>;
