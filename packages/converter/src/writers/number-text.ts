/**
 * The shortest decimal text that reads back as the same single-precision number.
 *
 * @param value a finite number that single precision holds exactly
 */
export function floatText(value: number): string {
  // most values were printed with few decimals, and multiplying is much faster than printing
  for (let scale = 1e3; scale <= 1e5; scale *= 10) {
    const short = Math.round(value * scale) / scale;
    if (Math.abs(value) < LARGEST && Math.fround(short) === value && value !== 0) return String(short);
  }
  // six digits are kept by every single-precision number, nine tell all of them apart
  for (let digits = 6; digits < 9; digits++) {
    const short = Number(value.toPrecision(digits));
    if (Math.fround(short) === value) return String(short);
  }
  return String(Number(value.toPrecision(9)));
}

/** Below this, a value times the largest scale is well within whole numbers that doubles hold. */
const LARGEST = 1e4;
