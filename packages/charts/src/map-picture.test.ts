import { geoDistance } from "d3-geo";
import { describe, expect, test } from "vitest";
import { mapFrame, middleOf } from "./map-frame.ts";
import { type MapCast, mapPicture } from "./map-picture.ts";

const at = (
  label: string,
  latitude: number,
  longitude: number,
  kind: MapCast["kind"] = "profile",
): MapCast => ({
  ...{ label, kind, end: null },
  start: { latitude, longitude, satellites: null, quality: null },
});
const options = { scope: "m", title: "Map", description: "Stations" };
const count = (svg: string, pattern: RegExp) => [...svg.matchAll(pattern)].length;

/** Mean radius of the Earth, km (IUGG). */
const EARTH = 6371.0088;

describe("the frame", () => {
  test.each([
    {
      name: "an estuary",
      places: [
        [-4.24, 46.25],
        [-4.01, 46.31],
        [-4.1, 46.28],
      ],
    },
    {
      name: "across the date line",
      places: [
        [179.6, -17.5],
        [-179.6, -17.9],
        [179.9, -18],
      ],
    },
    {
      name: "near the pole",
      places: [
        [10, 89.2],
        [130, 89.5],
        [-100, 89.1],
      ],
    },
  ] as const)("$name: lengths on the map are those on the sphere", ({ places }) => {
    const {
      projection,
      at: frame,
      pixelsPerKilometre,
    } = mapFrame(places, { left: 0, right: 500, top: 0 }, [200, 600]);
    for (const a of places)
      for (const b of places) {
        const [[ax, ay], [bx, by]] = [projection([...a])!, projection([...b])!];
        const kilometres = EARTH * geoDistance([...a], [...b]);
        expect(Math.abs(Math.hypot(bx - ax, by - ay) / pixelsPerKilometre - kilometres)).toBeLessThan(
          0.002 * kilometres + 1e-6,
        );
        expect(ax).toBeGreaterThanOrEqual(frame.left);
        expect(ax).toBeLessThanOrEqual(frame.right);
        expect(ay).toBeGreaterThanOrEqual(frame.top);
        expect(ay).toBeLessThanOrEqual(frame.bottom);
      }
  });

  test("the middle of places on both sides of the date line lies between them", () => {
    const [longitude] = middleOf([
      [179, 0],
      [-179, 0],
    ]);
    expect(Math.abs(longitude)).toBeCloseTo(180, 9);
  });
});

describe("what is drawn", () => {
  const estuary = [
    at("01", 46.3078, -4.029),
    at("02", 46.2489, -4.2377),
    at("P1", 46.295, -4.0702, "fixed-depth"),
  ];

  test("a mark and a name for each station, a track, no coast: it would be a guess", () => {
    const { svg, land, unnamed } = mapPicture(estuary, options)!;
    expect([land, unnamed]).toEqual(["none", 0]);
    expect(count(svg, /<circle [^>]*r="3.6"/g)).toBe(2 + 1); // and the one of the key
    for (const name of ["01", "02", "P1"]) expect(svg).toContain(`>${name}</text>`);
    expect(count(svg, /class="track"/g)).toBe(1);
    // the globe alone has land
    expect(count(svg, /class="land"/g)).toBe(1);
    expect(svg).toMatch(/>46°\d\d′N<\/text>/);
    expect(svg).toMatch(/>4°\d\d′W<\/text>/);
    expect(svg).toMatch(/>\d+ km<\/text>/);
    expect(svg).toMatch(/>\d+ nautical miles?<\/text>/);
  });

  test("the scale bars have the length that they say", () => {
    const { svg } = mapPicture(estuary, options)!;
    const bars = [
      ...svg.matchAll(/d="M[\d.]+ [\d.]+v-?5h([\d.]+)v-?5"[^>]*\/>\s*<text[^>]*>(\d+) (km|nautical)/g),
    ];
    expect(bars).toHaveLength(2);
    const [first, second] = bars.map(
      ([, pixels, length, unit]) => Number(pixels) / (Number(length) * (unit === "km" ? 1 : 1.852)),
    );
    expect(Math.abs(first! / second! - 1)).toBeLessThan(0.01);
    const { projection, pixelsPerKilometre } = mapFrame(
      [
        [-4.029, 46.3078],
        [-4.2377, 46.2489],
        [-4.0702, 46.295],
      ],
      { left: 34, right: 566, top: 8 },
      [270, 600],
    );
    expect(projection).toBeDefined();
    expect(Math.abs(first! / pixelsPerKilometre - 1)).toBeLessThan(0.01);
  });

  test("wide surveys have the coast of Natural Earth, a shore of one's own goes before it", () => {
    const wide = [at("a", 43, -9), at("b", 48, -4)];
    const shown = mapPicture(wide, options)!;
    expect(shown.land).toBe("Natural Earth 1:50m");
    expect(count(shown.svg, /class="land"/g)).toBe(2);
    const square = {
      type: "Polygon" as const,
      coordinates: [
        [
          [-4.1, 46.2],
          [-4.05, 46.2],
          [-4.05, 46.28],
          [-4.1, 46.28],
          [-4.1, 46.2],
        ],
      ],
    };
    const own = mapPicture(estuary, { ...options, shoreline: square })!;
    expect(own.land).toBe("own");
    // the same land whichever way round the ring runs
    const turned = { ...square, coordinates: square.coordinates.map((ring) => [...ring].reverse()) };
    const path = (svg: string) => /class="land">\s*<path d="([^"]+)"/.exec(svg)![1]!;
    const corners = (svg: string) => new Set(path(svg).match(/[\d.]+,[\d.]+/g));
    expect(corners(mapPicture(estuary, { ...options, shoreline: turned })!.svg)).toEqual(corners(own.svg));
    expect(corners(own.svg).size).toBe(4);
  });

  test("one station, and none with a position", () => {
    const { svg } = mapPicture([at("only", 0, 0)], options)!;
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    expect(svg).toContain(">only</text>");
    expect(mapPicture([{ label: "x", kind: "profile", start: null, end: null }], options)).toBeNull();
  });

  test("names that find no room are counted", () => {
    const crowd = Array.from({ length: 400 }, (_, k) =>
      at(`station-${k}`, 46 + 0.01 * Math.floor(k / 20), -4 + 0.01 * (k % 20)),
    );
    const { svg, unnamed } = mapPicture(crowd, options)!;
    expect(unnamed).toBeGreaterThan(0);
    expect(count(svg, />station-\d+<\/text>/g)).toBe(400 - unnamed);
  });
});
