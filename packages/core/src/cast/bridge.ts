/**
 * Values with the rows to leave out replaced by a straight line between their neighbours in time, or by the
 * nearest value at the ends. For shapes (smoothing, segmentation), never for what is written.
 *
 * @param seconds increasing, one per row
 * @param leaveOut 1 for rows to bridge; missing rows are bridged anyway
 * @returns NaN throughout if no row is left
 */
export function bridge(values: Float64Array, seconds: Float64Array, leaveOut: Uint8Array): Float64Array {
  const bridged = values.slice();
  const usable = (k: number) => leaveOut[k] === 0 && !Number.isNaN(values[k]!);
  let before = -1;
  for (let k = 0; k < values.length; k++) {
    if (usable(k)) {
      before = k;
      continue;
    }
    let after = k;
    while (after < values.length && !usable(after)) after++;
    const known = after < values.length;
    for (let j = k; j < after; j++) {
      if (before >= 0 && known) {
        const part = (seconds[j]! - seconds[before]!) / (seconds[after]! - seconds[before]!);
        bridged[j] = values[before]! + part * (values[after]! - values[before]!);
      } else bridged[j] = before >= 0 ? values[before]! : known ? values[after]! : Number.NaN;
    }
    k = after - 1;
  }
  return bridged;
}
