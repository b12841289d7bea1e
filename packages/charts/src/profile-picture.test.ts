import { execFileSync, spawnSync } from "node:child_process";
import { describe, expect, test } from "vitest";
import { castOf, column, estuaryCast, shelfCast } from "../test/known-casts.ts";
import { profilePicture } from "./profile-picture.ts";

const count = (svg: string, pattern: RegExp) => [...svg.matchAll(pattern)].length;

/** Names of elements that are open at the end; throws where tags cross. */
function openElements(svg: string): string[] {
  const open: string[] = [];
  for (const [, end, name, , selfClosed] of svg.matchAll(
    /<(\/?)([A-Za-z]+)((?:\s[\w:-]+="[^"<]*")*)(\/?)>/g,
  )) {
    if (end) {
      if (open.pop() !== name) throw new Error(`</${name}> closes another element`);
    } else if (!selfClosed) open.push(name!);
  }
  return open;
}

const estuary = profilePicture(estuaryCast(), { title: "Estuary, simulated cast" });

test("looks as it did", async () => {
  await expect(estuary).toMatchFileSnapshot("../test/pictures/estuary.svg");
  await expect(profilePicture(shelfCast())).toMatchFileSnapshot("../test/pictures/shelf.svg");
});

test("numbers are rounded to a tenth of a pixel", () => {
  const drawing = estuary.replace(/<(title|desc|style|text)[^>]*>[^<]*<\/\1>/g, "");
  expect(count(drawing, /\d\.\d\d/g)).toBe(0);
});

test("is well-formed and says what it shows", () => {
  expect(openElements(estuary)).toEqual([]);
  expect(estuary).toMatch(
    /^<svg xmlns="http:\/\/www.w3.org\/2000\/svg" id="cast-dev-a-estuary"[^>]* role="img"/,
  );
  expect(estuary).toContain(
    ">Estuary, simulated cast: temperature, Practical Salinity, density against depth</title>",
  );
  expect(estuary).toMatch(/<desc[^>]*>Temperature from 15\.1\d to 17\.\d+ °C\. Practical Salinity from /);
  expect(estuary).toMatch(/<desc[^>]*>[^<]*solid line, the upcast a dashed line[^<]*2\D*bad/);
  expect(estuary).toContain("Not for navigation or diving decisions");
});

test("axes carry units, direction and flags their own pattern and shape", () => {
  for (const words of ["Depth / m", "Temperature / °C", ">Practical Salinity<", "Density / kg m⁻³"])
    expect(estuary).toContain(words);
  expect(count(estuary, /data-quantity="/g)).toBe(3);
  // one line of each manner in each panel; only the downcast is solid
  for (const manner of ["down", "up", "rest"])
    expect(count(estuary, new RegExp(`class="${manner}"`, "g"))).toBe(3);
  const panels = estuary.slice(estuary.indexOf('data-quantity="'), estuary.indexOf('class="legend"'));
  expect(count(panels, /class="down"[^>]*stroke-dasharray/g)).toBe(0);
  expect(count(panels, /class="(?:up|rest)"[^>]*stroke-dasharray/g)).toBe(6);
  // the truth of the cast: two temperature spikes, one of them beyond the scale; five rows computed from spikes
  const temperature = panels.slice(0, panels.indexOf('data-quantity="salinity"'));
  expect(count(temperature, /class="bad"/g)).toBe(1);
  expect(count(temperature, /class="beyond right"/g)).toBe(1);
  expect(temperature).toContain(">2 bad<");
  expect(panels).toContain(">5 questionable<");
  expect(estuary).not.toMatch(/class="all"/);
});

test("the line of a bad value is broken, not drawn through it", () => {
  const depth = column("depth", "m", [1, 2, 3, 4, 5, 6]);
  const temperature = column("temperature", "degree_C", [10, 11, 30, 12, 13, 14], [2]);
  const svg = profilePicture(castOf("c", [depth, temperature]), { quantities: ["temperature"] });
  const [d = ""] = /(?<=class="all" d=")[^"]*/.exec(svg) ?? [];
  expect(count(d, /M/g)).toBe(2);
  expect(svg).toContain('class="beyond right"');
});

test("a flagged value whose depth is bad is counted, not drawn", () => {
  const depth = column("depth", "m", [1, 2, 90, 4], [2]);
  const temperature = column("temperature", "degree_C", [10, 11, 12, 13], [2]);
  const svg = profilePicture(castOf("c", [depth, temperature]), { quantities: ["temperature"] });
  expect(svg).toContain(">1 bad (1 at no sure depth)<");
  expect(svg.slice(0, svg.indexOf('class="legend"'))).not.toContain('class="bad"');
});

describe("casts of other kinds", () => {
  const depth = column("depth", "m", [1, 2, 3]);
  const salinity = column("salinity", "1", [34, 34, 34]);

  test("text from files is escaped", () => {
    const svg = profilePicture(castOf("c", [depth, salinity]), { title: '<script>"&\u0007' });
    expect(svg).not.toContain("<script>");
    expect(svg).toContain("&lt;script&gt;&quot;&amp;\uFFFD");
    expect(openElements(svg)).toEqual([]);
  });

  test("sound speed stands in where there is no density, pressure where there is no depth", () => {
    const pressure = column("pressure", "dbar", [1, 2, 3]);
    const speed = column("sound_speed", "m s-1", [1480, 1481, 1482]);
    const svg = profilePicture(castOf("c", [pressure, speed]));
    expect(svg).toContain("Sound speed / m s⁻¹");
    expect(svg).toContain("Sea pressure / dbar");
  });

  test("a quantity that never changes, or has one row, gets a scale", () => {
    const one = profilePicture(castOf("c", [column("depth", "m", [2]), column("salinity", "1", [0])]));
    for (const svg of [profilePicture(castOf("c", [depth, salinity])), one]) {
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
      expect(svg).toContain('class="all"');
    }
  });

  test("no values, no rows, no depth: a picture that says so", () => {
    const none = column("temperature", "degree_C", [NaN, NaN, NaN]);
    const empty = profilePicture(castOf("c", [depth, none]));
    expect(empty).toContain("no value to draw");
    const rowless = profilePicture(
      castOf("c", [column("depth", "m", []), column("temperature", "degree_C", [])]),
    );
    const depthless = profilePicture(castOf("c", [salinity]));
    expect(depthless).toContain("there is no profile to draw");
    for (const svg of [empty, rowless, depthless]) {
      expect(openElements(svg)).toEqual([]);
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
      expect(svg).toContain("Not for navigation");
    }
  });

  test("unjudged values are said to be so", () => {
    const unjudged = column("salinity", "1", [34, 35, 36]);
    unjudged.flags.fill(2);
    expect(profilePicture(castOf("c", [depth, unjudged]))).toContain("values not judged");
  });

  test("a long cast is thinned to what can be seen", () => {
    const rows = 50_000;
    const long = Array.from({ length: rows }, (_, i) => i / 500);
    const svg = profilePicture(castOf("c", [column("depth", "m", long), column("salinity", "1", long)]));
    expect(svg.length).toBeLessThan(60_000);
  });
});

const renderer = spawnSync("rsvg-convert", ["--version"]).status === 0;
test.skipIf(!renderer)(
  renderer ? "librsvg draws it" : "skipped: rsvg-convert (Debian package librsvg2-bin) is not installed",
  () => {
    const png = execFileSync("rsvg-convert", ["--format=png"], { input: estuary, maxBuffer: 1e8 });
    expect(png.subarray(1, 4).toString()).toBe("PNG");
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([900, 740]);
  },
);
