import { defineRule } from "../../engine/rule.ts";
import { onto } from "../../physics/onto.ts";
import { distance, slipOf } from "../../physics/places.ts";
import { only } from "../../physics/quantity.ts";
import { epochSeconds, timeVariables } from "../cf/time-variable.ts";
import { houseClause, PHYSICS } from "./house.ts";

/** m s-1: no vessel that lowers instruments is faster. Ours. */
const FAST = 30;
/** Times are often told to the minute, positions to the hundredth of a minute. */
const MINUTE = 60;
const KM = 0.1;

const example = (x: string) => `:featureType = "trajectoryProfile" ; dimensions: n = 3 ; z = 2 ; variables:
  double t(n) ; t:standard_name = "time" ; t:units = "hours since 2000-01-01" ; t:calendar = "standard" ;
  double y(n) ; y:standard_name = "latitude" ; y:units = "degrees_north" ;
  double x(n) ; x:standard_name = "longitude" ; x:units = "degrees_east" ;
  float v(n, z) ; v:coordinates = "t y x" ; x:_FillValue = -999. ;
  data: t = 1, 2, 3 ; y = 50, 50, 50 ; x = ${x} ; v = 1, 2, 3, 4, 5, 6 ;`;

export const travel = defineRule({
  ...PHYSICS,
  id: "physics/travel",
  level: "advice",
  citation: houseClause("speed between casts"),
  title: "From one cast to the next a vessel could have gone",
  why: "A jump that no vessel makes comes from a wrong position, a wrong time, or casts of several vessels in one file.",
  remedy: "Look at position and time of these casts; if several vessels worked, leave it.",
  messages: {
    fast: "from one place in time to the next, the file goes at up to {by} m/s",
    slip: "the two places of the file lie {km} km apart, {by} m/s: one of them looks like {slip}",
  },
  passing: [example("-4, -4.1, -4")],
  failing: [
    { cdl: example("-4, -40, -4"), where: { variable: "y" }, message: "fast" },
    {
      cdl: example("-4, 50.1, _").replace("y = 50, 50, 50", "y = 50, -4, 50"),
      where: { variable: "y" },
      message: "slip",
      level: "warning",
    },
  ],
  async check(dataset, report) {
    if (dataset.layout.featureType === null) return;
    const latitude = await only(dataset, "latitude");
    const longitude = await only(dataset, "longitude");
    const times = timeVariables(dataset).filter(
      (time) => time.isCoordinate && time.variable.standardName === "time",
    );
    const [time, ...others] = times;
    if (!latitude || !longitude || time === undefined || others.length > 0) return;
    const { dimensions } = latitude.variable;
    if (time.variable.dimensions.join() !== dimensions.join() || dimensions.length === 0) return;
    const seconds = await epochSeconds(dataset, time);
    const lon = await onto(dataset, longitude, latitude.variable);
    if (seconds === null || lon === null) return;
    const lat = latitude.values;
    const rows = Array.from(lat.keys())
      .filter((i) => !Number.isNaN(lat[i]! + lon[i]! + seconds[i]!))
      .sort((a, b) => seconds[a]! - seconds[b]!);
    const places: number[] = [];
    let by = 0;
    for (let k = 1; k < rows.length; k += 1) {
      const [i, j] = [rows[k - 1]!, rows[k]!];
      const km = Math.max(0, distance(lat[i]!, lon[i]!, lat[j]!, lon[j]!) - KM);
      const speed = (km * 1000) / (seconds[j]! - seconds[i]! + MINUTE);
      if (speed <= FAST) continue;
      places.push(j);
      by = Math.max(by, speed);
    }
    const [first, second, ...more] = rows;
    if (first !== undefined && second !== undefined && more.length === 0 && places.length > 0) {
      const [a, b] = [[lat[first]!, lon[first]!] as const, [lat[second]!, lon[second]!] as const];
      const slip = slipOf(b, a) ?? slipOf(a, b);
      const km = Math.round(distance(...a, ...b));
      if (slip !== null)
        return report({ variable: latitude.variable.name }, "slip", {
          level: "warning",
          places,
          fill: { km, by: Math.round(by), slip },
        });
    }
    // where it happens often, several vessels worked
    if (places.length > 0 && (places.length <= 2 || places.length * 5 <= rows.length))
      report({ variable: latitude.variable.name }, "fast", { places, fill: { by: Math.round(by) } });
  },
});
