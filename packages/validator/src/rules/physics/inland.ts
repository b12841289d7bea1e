import { defineRule } from "../../engine/rule.ts";
import { inland } from "../../physics/land.ts";
import { onto } from "../../physics/onto.ts";
import { only } from "../../physics/quantity.ts";
import { houseClause, PHYSICS } from "./house.ts";

/** km. The coastline leaves out inlets that are narrower than some kilometres. */
const FAR = 10;
/** Places that are looked up at the most; a file of more has its kind of places among the first. */
const MOST = 5000;

const example = (lat: string, lon: string) => `dimensions: n = 2 ; variables:
  double y(n) ; y:standard_name = "latitude" ; y:units = "degrees_north" ;
  double x(n) ; x:standard_name = "longitude" ; x:units = "degrees_east" ; data: y = ${lat} ; x = ${lon} ;`;

export const inlandPositions = defineRule({
  ...PHYSICS,
  id: "physics/inland",
  level: "advice",
  citation: houseClause("positions and the coastline"),
  title: "Positions lie at sea, or not far inland",
  why: "A place far inland often comes from latitude and longitude exchanged, or from a lost sign.",
  remedy: "Compare the positions with the field log. If it is a lake, a river or a narrow inlet, leave them.",
  messages: { far: "positions lie up to {km} km inland by a coarse coastline{perhaps}" },
  // the North Sea and the Thames estuary; the middle of France and of Australia
  passing: [example("55, 51.5", "3, 0.9"), example("55, 51.5", "363, 360.9")],
  failing: [
    { cdl: example("46.5, 55", "2.5, 3"), where: { variable: "y" }, message: "far" },
    { cdl: example("-25, -25", "134, 134"), where: { variable: "y" }, message: "far" },
  ],
  async check(dataset, report) {
    const latitude = await only(dataset, "latitude");
    const longitude = await only(dataset, "longitude");
    if (latitude === null || longitude === null) return;
    const { variable, values: lat } = latitude;
    // on a grid, latitude and longitude are axes; here each pair is a place
    if (variable.dimensions.join() !== longitude.variable.dimensions.join()) return;
    if (variable.isCoordinate) return;
    const lon = await onto(dataset, longitude, variable);
    if (lon === null) return;
    const known = new Map<string, number[]>();
    for (let i = 0; i < lat.length && known.size < MOST; i += 1) {
      if (!(Math.abs(lat[i]!) <= 90 && Math.abs(lon[i]!) <= 360) || (lat[i] === 0 && lon[i] === 0)) continue;
      const key = `${lat[i]!.toFixed(2)} ${lon[i]!.toFixed(2)}`;
      const rows = known.get(key);
      if (rows === undefined) known.set(key, [i]);
      else rows.push(i);
    }
    const rows = [...known.values()];
    const places = rows.map(([i = 0]) => [lat[i]!, lon[i]!] as const);
    const far = await inland(places, FAR);
    const inside = rows.filter((_, k) => far[k]! > 0).flat();
    if (inside.length === 0) return;
    const exchanged = places.map(([y, x]) => [x, y] as const).filter(([y]) => Math.abs(y) <= 90);
    const atSea =
      exchanged.length === places.length && (await inland(exchanged, 1)).every((distance) => distance === 0);
    report({ variable: variable.name }, "far", {
      places: inside.sort((a, b) => a - b),
      fill: {
        km: Math.round(Math.max(...far)),
        perhaps: atSea && inside.length === lat.length ? "; exchanged, all of them would be at sea" : "",
      },
    });
  },
});
