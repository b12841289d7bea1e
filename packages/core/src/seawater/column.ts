/** Throws unless every column has as many rows as `out`. */
export function requireRows(
  out: Float64Array,
  first: Float64Array,
  second: Float64Array = first,
  third: Float64Array = first,
): void {
  const rows = out.length;
  if (first.length === rows && second.length === rows && third.length === rows) return;
  const found = `${first.length}, ${second.length} and ${third.length}`;
  throw new RangeError(`out has ${rows} rows, the columns have ${found}`);
}
