import { requireRows } from "./column.ts";
import { SALINITY_FACTOR } from "./entropy.ts";
import type { ValidityRange } from "./validity-range.ts";

export const spiciness0Range: ValidityRange = { SA: [0, 42], CT: [-2, 40] };

/**
 * Spiciness with the reference pressure 0 dbar: how warm and salty water is for its density.
 *
 * @param SA Absolute Salinity, g kg-1, 0 to 42; made for oceanic water, without use in fresh water
 * @param CT Conservative Temperature, degree Celsius
 * @returns  spiciness, kg m-3; computed beyond the range; NaN if an input is NaN
 * @source   McDougall and Krzysik (2015), J. Mar. Res. 73, 141-152; check values from the TEOS-10 library stand in
 *           the tests
 */
export function spiciness0(SA: number, CT: number): number {
  const s = Math.sqrt(SALINITY_FACTOR * (SA + 24));
  const tau = CT / 40;
  return (
    -92.2982898371678 +
    s *
      (287.96971758404499 +
        s *
          (-641.72530223704803 +
            s *
              (827.63431812022395 +
                s * (-574.04080671352597 + s * (211.671167892147 + s * -32.353333944905501))))) +
    tau *
      (-13.572787362886601 +
        s *
          (11.3747111959674 +
            s *
              (27.973253078926099 +
                s *
                  (-70.215622012692606 +
                    s * (70.328590547833301 + s * (-31.5140919876285 + s * 5.3064856209766704))))) +
        tau *
          (18.735365099401001 +
            s *
              (60.737719299067997 +
                s *
                  (-249.46690199372799 +
                    s *
                      (382.973336590803 +
                        s * (-297.87029887971602 + s * (116.458864953602 + s * -18.205124917794802))))) +
            tau *
              (-16.136004737345498 +
                s *
                  (-73.751403357018702 +
                    s *
                      (326.69129503541598 +
                        s *
                          (-506.20682808395901 +
                            s * (388.34037373511802 + s * (-150.02973080234401 + s * 23.318435109049499))))) +
                tau *
                  (37.611276228642502 +
                    s *
                      (-75.117187895357404 +
                        s *
                          (26.638924370818099 +
                            s *
                              (66.962656516952904 +
                                s *
                                  (-82.9188936089122 +
                                    s * (37.629384866058899 + s * -6.2290990346036796))))) +
                    tau *
                      (-42.708667146125698 +
                        s *
                          (163.310989721504 +
                            s *
                              (-293.17090575757902 +
                                s *
                                  (302.85123505076598 +
                                    s *
                                      (-187.602137195354 +
                                        s * (64.724742437320003 + s * -9.5597546430144593))))) +
                        tau *
                          (20.082011104159399 +
                            s *
                              (-88.322275163809493 +
                                s *
                                  (176.053907144524 +
                                    s *
                                      (-196.34528560462101 +
                                        s *
                                          (127.096944425793 +
                                            s * (-44.715999440886698 + s * 6.6187707396011302)))))))))))
  );
}

/** Column twin of {@link spiciness0}: fills `out`. */
export function spiciness0Column(SA: Float64Array, CT: Float64Array, out: Float64Array): void {
  requireRows(out, SA, CT);
  for (let i = 0; i < out.length; i++) out[i] = spiciness0(SA[i]!, CT[i]!);
}
