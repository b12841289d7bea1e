import { describe, expect, test } from "vitest";
import { asked, plainExport, understood } from "./understand-samples.ts";

const file = (changes: Parameters<typeof plainExport>[0]) => understood(plainExport(changes), "cast.csv");

test("the unchanged export leaves no question", () => {
  const whole = file({});
  expect(asked(whole)).toEqual([]);
  expect(whole.casts[0]).toMatchObject({
    id: "cast",
    kind: "profile",
    rows: 5,
    time: 1685694600,
    timeRole: "start",
    start: { latitude: 51.201, longitude: -4.302 },
  });
});

describe("one change that matters: the answer changes or a question appears", () => {
  test.each<[string, Parameters<typeof plainExport>[0], string]>([
    ["zone removed", { start: "start: 2023-06-02T08:30:00" }, "timeZone"],
    ["local time without offset", { start: "start (local time): 2023-06-02 08:30:00" }, "timeZone"],
    ["an abbreviation with two meanings", { start: "start: 2023-06-02 08:30:00 BST" }, "timeZone"],
    ["a bare zone number", { start: "zone: -7\nstart: 2023-06-02 08:30:00" }, "timeZone"],
    ["two zones", { start: "zone: UTC+1\ntime zone: UTC+2\nstart: 2023-06-02 08:30:00" }, "timeZone"],
    ["day and month that fit both ways", { start: "start: 02/06/2023 08:30:00 UTC" }, "dateOrder"],
    [
      "points between day and month in English words",
      { start: "start: 02.06.2023 08:30:00 UTC" },
      "dateOrder",
    ],
    ["a year of two digits", { start: "start: 02-Jun-03 08:30:00 UTC" }, "dateOrder"],
    ["date without time of day", { start: "date: 2023-06-02" }, "time"],
    ["no date", { start: "station: pier" }, "time"],
    ["a calibration date only", { start: "calibrated: 2023-01-02T08:30:00Z" }, "time"],
    ["a date of an unknown kind", { start: "sigil: 2023-06-02T08:30:00Z" }, "time"],
    ["two different times", { start: "time: 2023-06-02T08:30:00Z\nrecorded: 2023-06-02T09:30:00Z" }, "time"],
    ["latitude removed", { lat: "remark: calm" }, "position"],
    ["longitude removed", { lon: "remark: calm" }, "position"],
    ["zero latitude and longitude", { lat: "latitude: 0.0000", lon: "longitude: 0.0000" }, "position"],
    ["latitude beyond the pole", { lat: "latitude: 151.201" }, "position"],
    [
      "letter O among words that decide nothing",
      { lat: "Position: 51 12.06 N", lon: "4 18.12 O" },
      "position",
    ],
    ["two numbers without order", { lat: "Position: 51.201 4.302", lon: "remark: calm" }, "position"],
    ["two positions", { lat: "latitude: 51.201\nlat: 51.301" }, "position"],
    [
      "pressure unit removed",
      { head: "elapsed [s],pressure,temperature [degC],conductivity [mS/cm]" },
      "units:pressure",
    ],
    [
      "temperature unit removed",
      { head: "elapsed [s],pressure [dbar],temperature,conductivity [mS/cm]" },
      "units:temperature",
    ],
    [
      "conductivity unit removed",
      { head: "elapsed [s],pressure [dbar],temperature [degC],conductivity" },
      "units:conductivity",
    ],
    [
      "unknown unit",
      { head: "elapsed [s],pressure [dbar],temperature [degX],conductivity [mS/cm]" },
      "units:temperature [degX]",
    ],
    [
      "units swapped",
      { head: "elapsed [s],pressure [dbar],temperature [mS/cm],conductivity [degC]" },
      "units:temperature [mS/cm]",
    ],
    [
      "S/m for mS/cm",
      { head: "elapsed [s],pressure [dbar],temperature [degC],conductivity [S/m]" },
      "units:conductivity [S/m]",
    ],
    ["letters without units", { head: "elapsed [s],P,T [degC],C [mS/cm]" }, "quantity:P"],
    ["bare EC", { head: "elapsed [s],pressure [dbar],temperature [degC],EC [mS/cm]" }, "conductivityKind"],
    [
      "pressure that begins at the weight of the air",
      {
        rows: "0,10.23,16.7,20.3\n1,10.63,16.6,20.8\n2,11.02,16.4,21.4\n3,11.51,16.1,22.4\n4,12.02,15.7,23.6",
      },
      "pressureKind",
    ],
    [
      "depth that does not begin near 0",
      {
        head: "elapsed [s],depth [m],temperature [degC],conductivity [mS/cm]",
        rows: "0,7.2,16.7,20.3\n1,7.6,16.6,20.8\n2,8.0,16.4,21.4\n3,8.5,16.1,22.4",
      },
      "verticalReference",
    ],
    [
      "depth below a datum",
      {
        lat: "latitude: 51.201\ndepths below chart datum",
        head: "elapsed [s],depth [m],temperature [degC],conductivity [mS/cm]",
      },
      "verticalReference",
    ],
    ["per mille", { head: "elapsed [s],pressure [dbar],temperature [degC],salinity [ppt]" }, "salinityScale"],
    ["before 1990", { start: "start: 1985-06-02T08:30:00Z" }, "temperatureScale"],
    [
      "nines that no header names",
      { rows: "0,0.10,16.7,20.3\n1,0.51,99.99,20.8\n2,1.02,16.4,21.4\n3,1.51,16.1,22.4" },
      "missingMarker:temperature [degC]",
    ],
    [
      "elapsed time with one colon",
      {
        head: "elapsed,pressure [dbar],temperature [degC]",
        rows: "00:00,0.1,16\n00:01,0.2,16.1\n00:02,0.3,16.2",
      },
      "units:elapsed",
    ],
    [
      "depths that are negative",
      { head: "elapsed [s],depth [m],temperature [degC]", rows: "0,-0.1,16\n1,-0.5,16.2\n2,-1.0,16.3" },
      "depthSign",
    ],
    [
      "a hemisphere O in the head of a column",
      {
        lat: "x: 1",
        lon: "y: 1",
        head: "lat,lon (°O),pressure [dbar],temperature [degC]",
        rows: "51.2,4.3,0.1,16\n51.2,4.3,0.5,16.2\n51.2,4.3,1.0,16.3",
      },
      "position",
    ],
    [
      "numbers of time without unit",
      { head: "time,pressure [dbar],temperature [degC],conductivity [mS/cm]" },
      "units:time",
    ],
  ])("%s", (_, changes, about) => expect(asked(file(changes))).toContain(about));

  test.each<[string, Parameters<typeof plainExport>[0], Record<string, unknown>]>([
    ["an offset", { start: "start: 2023-06-02T08:30:00+02:00" }, { time: 1685694600 - 7200 }],
    [
      "an abbreviation of one meaning",
      { start: "start: 2023-06-02 08:30:00 CEST" },
      { time: 1685694600 - 7200 },
    ],
    [
      "UTC equals local plus",
      { start: "clock: UTC = local + 7 h\nstart: 2023-06-02 08:30:00" },
      { time: 1685694600 + 25200 },
    ],
    [
      "an offset that crosses a year",
      { start: "start: 2024-01-01 00:30 UTC+2" },
      { time: Date.UTC(2023, 11, 31, 22, 30) / 1000 },
    ],
    ["a 13th month", { start: "start: 13/06/2023 08:30 UTC" }, { time: Date.UTC(2023, 5, 13, 8, 30) / 1000 }],
    [
      "a month's name in German",
      { start: "Beginn: 2. März 2023 08:30 UTC" },
      { time: Date.UTC(2023, 2, 2, 8, 30) / 1000 },
    ],
    [
      "an afternoon of twelve hours",
      { start: "start: 2023-06-02 08:30 PM UTC" },
      { time: Date.UTC(2023, 5, 2, 20, 30) / 1000 },
    ],
    ["west by letter", { lon: "longitude: 4.302 W" }, { start: { latitude: 51.201, longitude: -4.302 } }],
    ["east by letter", { lon: "longitude: 4.302 E" }, { start: { latitude: 51.201, longitude: 4.302 } }],
    [
      "O in French",
      { lat: "latitude: 51.201 N\nheure locale du bateau: 1", lon: "longitude: 4.302 O" },
      { start: { latitude: 51.201, longitude: -4.302 } },
    ],
    [
      "O in German",
      { lat: "Breite: 51.201 N", lon: "Laenge: 4.302 O" },
      { start: { latitude: 51.201, longitude: 4.302 } },
    ],
    [
      "west on a line of its own",
      { lon: "longitude: 4.302\nE/W: W" },
      { start: { latitude: 51.201, longitude: -4.302 } },
    ],
    [
      "west behind a semicolon",
      { lat: "latitude;51.201;N", lon: "longitude;4.302;W" },
      { start: { latitude: 51.201, longitude: -4.302 } },
    ],
    ["west by a word", { lon: "longitude: 4.302 Ouest" }, { start: { latitude: 51.201, longitude: -4.302 } }],
    [
      "south by a small letter",
      { lat: "latitude: 51.201 s" },
      { start: { latitude: -51.201, longitude: -4.302 } },
    ],
    [
      "west in the head of a column",
      {
        lat: "x: 1",
        lon: "y: 1",
        head: "lat,lon (°W),pressure [dbar],temperature [degC]",
        rows: "51.201,4.302,0.1,16\n51.201,4.302,0.5,16.2\n51.201,4.302,1.0,16.3",
      },
      { start: { latitude: 51.201, longitude: -4.302 } },
    ],
    [
      "a zone beside the date",
      { start: "date: 2023-06-02 (UTC+2)\ntime: 08:30" },
      { time: 1685694600 - 7200 },
    ],
    ["south", { lat: "latitude: 51°12'03.6\" S" }, { start: { latitude: -51.201, longitude: -4.302 } }],
  ])("%s is read", (_, changes, want) => {
    const read = file(changes);
    expect(asked(read)).toEqual([]);
    const [cast] = read.casts;
    if (want.time !== undefined) expect(cast?.time).toBe(want.time);
    const start = want.start as { latitude: number; longitude: number } | undefined;
    if (start) {
      expect(cast?.start?.latitude).toBeCloseTo(start.latitude, 9);
      expect(cast?.start?.longitude).toBeCloseTo(start.longitude, 9);
    }
  });
});

describe("contradictions are asked about", () => {
  test("header and rows an hour apart", () => {
    const rows =
      "2023-06-02T10:30:00Z,0.10,16.7,20.3\n2023-06-02T10:30:01Z,0.51,16.6,20.8\n2023-06-02T10:30:02Z,1.02,16.4,21.4";
    expect(
      asked(file({ head: "time,pressure [dbar],temperature [degC],conductivity [mS/cm]", rows })),
    ).toContain("time");
  });

  test("rows on a clock that is not the header's", () => {
    const rows =
      "2023-06-02 10:30:00,0.10,16.7,20.3\n2023-06-02 10:30:01,0.51,16.6,20.8\n2023-06-02 10:30:02,1.02,16.4,21.4";
    expect(
      asked(file({ head: "time,pressure [dbar],temperature [degC],conductivity [mS/cm]", rows })),
    ).toContain("timeZone");
  });

  test("a longitude on the far side of the zone", () =>
    expect(asked(file({ start: "start: 2023-06-02 08:30 UTC-7", lon: "longitude: 122.302" }))).toContain(
      "hemisphere",
    ));

  test("conductivity that the file's own salinity calls specific conductance", () => {
    // linear compensation of 1.91 % a degree (common practice, no source); PSS-78 of 30 mS/cm at 10 °C is about 27.0
    const head = "elapsed [s],pressure [dbar],temperature [degC],conductivity [mS/cm],salinity";
    const rows = "0,0.1,10.0,42.05,27.0\n1,0.5,10.0,42.05,27.0\n2,1.0,10.0,42.05,27.0\n3,1.5,10.0,42.05,27.0";
    expect(asked(file({ head, rows }))).toContain("conductivityKind");
  });
});

describe("a time that is not the start", () => {
  const rows = "0.5,16.1\n1.0,16.0\n1.5,15.9";
  test.each([
    ["time at bottom: 2023-06-02T08:30:00Z", "bottom"],
    ["date: 2023-06-02\ntime at bottom: 08:30 UTC", "bottom"],
    ["end time: 2023-06-02T08:30:00Z", "end"],
    ["time: 2023-06-02T08:30:00Z", "start"],
  ])("%s", (start, role) => {
    const read = file({ start, head: "depth [m],temperature [degC]", rows });
    expect(asked(read)).toEqual([]);
    expect(read.casts[0]).toMatchObject({ time: 1685694600, timeRole: role });
  });
});
