import { InvalidArgumentError } from "commander";

/** The value of an option that is a count. */
export function wholeNumber(text: string): number {
  if (!/^[1-9]\d{0,2}$/.test(text)) throw new InvalidArgumentError("Give a whole number from 1 to 999.");
  return Number.parseInt(text, 10);
}
