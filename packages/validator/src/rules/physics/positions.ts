import { defineRule } from "../../engine/rule.ts";
import { distance, FAR, MENDS, NEAR } from "../../physics/places.ts";
import { only } from "../../physics/quantity.ts";
import { houseClause, PHYSICS, rounded } from "./house.ts";

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

const example = (lat: string, lon: string) => `dimensions: n = 4 ; variables:
  double y(n) ; y:standard_name = "latitude" ; y:units = "degrees_north" ;
  double x(n) ; x:standard_name = "longitude" ; x:units = "degrees_east" ;
  data: y = ${lat} ; x = ${lon} ;`;

export const positions = defineRule({
  ...PHYSICS,
  id: "physics/positions",
  level: "error",
  citation: houseClause("positions"),
  title: "Positions are on the globe and belong together",
  why: "A cast at a wrong place is worse than a lost one: it is found, and believed.",
  remedy: "Correct the positions from the field log, or set them missing and flag them.",
  messages: {
    latitude: "{variable} has values such as {found}, beyond 90 degrees{exchanged}",
    longitude: "{variable} has values such as {found}, beyond -180 to 360 degrees",
    zero: "the position is 0 north, 0 east: it looks like one that was never filled in",
    slip: "one of the positions lies {km} km from the others and looks like {unit}",
  },
  passing: [example("50, 50.1, 50.2, 50.1", "-4, -4, -4.1, -4"), example("0, 0.1, 0, 0", "9, 9, 9, 9")],
  failing: [
    { cdl: example("91, 50, 50, 50", "4, 4, 4, 4"), where: { variable: "y" }, message: "latitude" },
    { cdl: example("50, 50, 50, 50", "4, 4, 4, 361"), where: { variable: "x" }, message: "longitude" },
    {
      cdl: example("50, 50, 0, 50", "4, 4, 0, 4"),
      where: { variable: "y" },
      message: "zero",
      level: "warning",
    },
    { cdl: example("50, 50.1, -4, 50", "-4, -4, 50, -4"), where: { variable: "y" }, message: "slip" },
  ],
  async check(dataset, report) {
    const latitude = await only(dataset, "latitude");
    const longitude = await only(dataset, "longitude");
    const beyond = (values: Float64Array, low: number, high: number) =>
      Array.from(values.keys()).filter((i) => values[i]! < low || values[i]! > high);
    const ends = [
      [latitude, -90, 90, "latitude"],
      [longitude, -180, 360, "longitude"],
    ] as const;
    const within = (each: typeof latitude, limit: number) =>
      each?.values.every((value) => !(Math.abs(value) > limit)) === true;
    const exchanged =
      within(latitude, 180) && within(longitude, 90) ? ": latitude and longitude look exchanged" : "";
    for (const [each, low, high, key] of ends) {
      const places = each === null ? [] : beyond(each.values, low, high);
      if (each !== null && places.length > 0)
        report({ variable: each.variable.name }, key, {
          found: rounded(each.values[places[0]!]!),
          places,
          fill: { exchanged },
        });
    }
    if (latitude === null || longitude === null) return;
    if (latitude.variable.dimensions.join() !== longitude.variable.dimensions.join()) return;
    // on a grid, latitude and longitude are axes; here each pair is a place
    const { name, isCoordinate } = latitude.variable;
    if (isCoordinate && latitude.variable.dimensions[0] === name) return;
    const [lat, lon] = [latitude.values, longitude.values];
    const there = Array.from(lat.keys()).filter((i) => Math.abs(lat[i]!) <= 90 && Math.abs(lon[i]!) <= 360);
    const zero = there.filter((i) => lat[i] === 0 && lon[i] === 0);
    if (zero.length > 0) report({ variable: name }, "zero", { places: zero, level: "warning" });
    const rest = there.filter((i) => !zero.includes(i));
    if (rest.length < 3 || rest.length > 100_000) return;
    const centre = [median(rest.map((i) => lat[i]!)), median(rest.map((i) => lon[i]!))] as const;
    for (const [unit, mend] of MENDS) {
      const slips = rest.filter((i) => {
        const [y, x] = mend(lat[i]!, lon[i]!);
        return (
          Math.abs(y!) <= 90 &&
          distance(lat[i]!, lon[i]!, ...centre) > FAR &&
          distance(y!, x!, ...centre) < NEAR
        );
      });
      const [first] = slips;
      if (first === undefined || slips.length * 3 > rest.length) continue;
      const km = Math.round(distance(lat[first]!, lon[first]!, ...centre));
      report({ variable: name }, "slip", { places: slips, fill: { km, unit } });
    }
  },
});
