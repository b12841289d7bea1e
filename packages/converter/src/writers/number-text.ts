/**
 * The shortest decimal text that reads back as the same single-precision number.
 *
 * @param value a finite number that single precision holds exactly
 */
export function floatText(value: number): string {
  // six digits are kept by every single-precision number, nine tell all of them apart
  for (let digits = 6; digits < 9; digits++) {
    const short = Number(value.toPrecision(digits));
    if (Math.fround(short) === value) return String(short);
  }
  return String(Number(value.toPrecision(9)));
}
