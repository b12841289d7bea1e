/**
 * The shortest decimal text that reads back as the same single-precision number.
 *
 * @param value a finite number that single precision holds exactly
 */
export function floatText(value: number): string {
  if (Math.abs(value) < LARGEST && value !== 0) {
    // most values were printed with few decimals, and multiplying is much faster than printing
    const thousandths = Math.round(value * 1e3);
    if (Math.fround(thousandths / 1e3) === value) return thousandthsText(thousandths);
    for (let scale = 1e4; scale <= 1e5; scale *= 10) {
      const short = Math.round(value * scale) / scale;
      if (Math.fround(short) === value) return String(short);
    }
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

/** ".001" to ".999" without zeros at the end, and nothing for a whole number. */
const FRACTIONS = Array.from({ length: 1000 }, (_, i) =>
  i === 0 ? "" : `.${String(i).padStart(3, "0").replace(/0+$/, "")}`,
);

function thousandthsText(thousandths: number): string {
  const size = Math.abs(thousandths);
  const whole = Math.floor(size / 1000);
  return `${thousandths < 0 ? "-" : ""}${whole}${FRACTIONS[size - whole * 1000]}`;
}
