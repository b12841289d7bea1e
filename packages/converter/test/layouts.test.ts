import type { UnderstoodFile } from "@wherry/formats";
import { describe, expect, test } from "vitest";
import { asked, understood } from "./understand-samples.ts";

// Invented exports in invented words; the values wanted are read by eye from the texts.

const LINES = [
  "start: 2023-06-02T08:30:00Z",
  "latitude: 51.20100",
  "longitude: -4.30200",
  "elapsed [s],pressure [dbar],temperature [degC],conductivity [mS/cm]",
  "0,0.10,16.755,20.39",
  "1,0.51,16.615,20.84",
  "2,1.02,16.444,21.49",
];
const utf16 = (text: string, big: boolean) => {
  const bytes = new Uint8Array(2 + text.length * 2);
  const view = new DataView(bytes.buffer);
  for (const [i, char] of [...`\uFEFF${text}`].entries()) view.setUint16(i * 2, char.charCodeAt(0), !big);
  return bytes;
};
const ordinary = (file: UnderstoodFile) => {
  expect(asked(file)).toEqual([]);
  expect(file.findings).toEqual([]);
  expect(file.casts).toMatchObject([
    { rows: 3, time: 1685694600, start: { latitude: 51.201, longitude: -4.302 } },
  ]);
  expect([...(file.casts[0]?.columns.get("temperature")?.values ?? [])]).toEqual([16.755, 16.615, 16.444]);
  expect([...(file.casts[0]?.columns.get("conductivity")?.values ?? [])]).toEqual([20.39, 20.84, 21.49]);
};

describe("bytes and lines", () => {
  test.each<[string, Uint8Array | string, string, string]>([
    ["LF", LINES.join("\n"), "utf-8", "LF"],
    ["CRLF", `${LINES.join("\r\n")}\r\n`, "utf-8", "CRLF"],
    ["CR", `${LINES.join("\r")}\r`, "utf-8", "CR"],
    ["mixed", `${LINES.slice(0, 4).join("\r\n")}\r\n${LINES.slice(4).join("\n")}\n`, "utf-8", "mixed"],
    ["byte-order mark", `\uFEFF${LINES.join("\n")}\n`, "utf-8", "LF"],
    ["UTF-16 little end first", utf16(`${LINES.join("\r\n")}\r\n`, false), "utf-16le", "CRLF"],
    ["UTF-16 big end first", utf16(`${LINES.join("\n")}\n`, true), "utf-16be", "LF"],
    ["form feeds", LINES.join("\n").replace("1,0.51", "\f1,0.51"), "utf-8", "LF"],
  ])("%s", (_, content, encoding, lineEnding) => {
    const file = understood(content, "cast.csv");
    ordinary(file);
    expect(file).toMatchObject({ encoding, lineEnding });
  });

  test("windows-1252 where the bytes are no UTF-8", () => {
    const text = LINES.join("\n").replace("[degC]", "[°C]");
    const file = understood(
      Uint8Array.from([...text], (char) => char.charCodeAt(0)),
      "cast.csv",
    );
    ordinary(file);
    expect(file.encoding).toBe("windows-1252");
  });
});

describe("tables", () => {
  const header = LINES.slice(0, 3);
  const table = LINES.slice(3);
  const cells = table.map((line) => line.split(","));
  const decimalComma = cells.map((row, i) => (i === 0 ? row : row.map((cell) => cell.replace(".", ","))));
  const padded = cells.map((row) => row.map((cell) => cell.replaceAll(" ", "").padStart(20)).join(""));
  test.each<[string, readonly string[], string, string]>([
    ["semicolons", cells.map((row) => row.join(";")), ";", "."],
    ["tabs", cells.map((row) => row.join("\t")), "\t", "."],
    ["bars", cells.map((row) => row.join("|")), "|", "."],
    ["blanks", padded, "whitespace", "."],
    ["commas and blanks", cells.map((row) => row.join(", ")), ",", "."],
    ["semicolons, decimal comma", decimalComma.map((row) => row.join(";")), ";", ","],
    ["tabs, decimal comma", decimalComma.map((row) => row.join("\t")), "\t", ","],
    [
      "blanks, decimal comma",
      decimalComma.map((row) => row.map((cell) => cell.replaceAll(" ", "").padStart(22)).join("")),
      "whitespace",
      ",",
    ],
    ["quoted cells", cells.map((row) => row.map((cell) => `"${cell}"`).join(",")), ",", "."],
    [
      "quoted decimal comma",
      decimalComma.map((row, i) => row.map((cell) => (i === 0 ? cell : `"${cell}"`)).join(",")),
      ",",
      ",",
    ],
    ["a trailing delimiter", table.map((line) => `${line},`), ",", "."],
    ["plus signs and exponents", table.map((line) => line.replace("0.51", "+5.1e-1")), ",", "."],
    ["a ruler", [table[0]!, "-----------------", ...table.slice(1)], ",", "."],
    ["a repeated head", [...table.slice(0, 2), table[0]!, ...table.slice(2)], ",", "."],
    ["blank lines between rows", [...table.slice(0, 2), "", ...table.slice(2), ""], ",", "."],
    ["notes below", [...table, "", "notes: the wind rose"], ",", "."],
    ["comment signs", [`# ${table[0]}`, ...table.slice(1)], ",", "."],
    [
      "units on a line of their own",
      ["elapsed,pressure,temperature,conductivity", "s,dbar,degC,mS/cm", ...table.slice(1)],
      ",",
      ".",
    ],
    [
      "units in brackets on a line of their own",
      ["elapsed,pressure,temperature,conductivity", "(s),(dbar),(°C),(mS/cm)", ...table.slice(1)],
      ",",
      ".",
    ],
    [
      "units in parentheses",
      ["elapsed (s),pressure (dbar),temperature (°C),conductivity (mS/cm)", ...table.slice(1)],
      ",",
      ".",
    ],
    [
      "units after underscores",
      ["elapsed_s,pressure_dbar,temperature_degC,conductivity_mS/cm", ...table.slice(1)],
      ",",
      ".",
    ],
    [
      "units after blanks",
      ["elapsed s,pressure dbar,temperature deg C,conductivity mS/cm", ...table.slice(1)],
      ",",
      ".",
    ],
    [
      "units after slashes",
      ["elapsed/s,pressure/dbar,temperature/°C,conductivity/mS/cm", ...table.slice(1)],
      ",",
      ".",
    ],
    [
      "units after commas in quotes",
      ['"elapsed, s","pressure, dbar","temperature, degC","conductivity, mS/cm"', ...table.slice(1)],
      ",",
      ".",
    ],
    ["heads that are units", ["seconds,dbar,degC,mS/cm", ...table.slice(1)], ",", "."],
  ])("%s", (_, rows, delimiter, decimal) => {
    const file = understood(`${[...header, ...rows].join("\n")}\n`, "cast.csv");
    ordinary(file);
    expect(file).toMatchObject({ delimiter, decimal });
  });

  test.each(["# ", "% ", "* ", "// "])("header lines behind %j", (sign) =>
    ordinary(understood([...header.map((line) => sign + line), ...table].join("\n"), "cast.csv")),
  );

  test.each([" = ", "\t", ";", ","])("keys and values parted by %j", (sign) =>
    ordinary(
      understood([...header.map((line) => line.replace(": ", sign)), ...table].join("\n"), "cast.csv"),
    ),
  );

  test("fixed columns keep an empty cell in its place", () => {
    const rows = [
      "elapsed_s  pressure_dbar  temperature_degC  conductivity_mS/cm",
      ...[
        "0|0.10|16.755|20.39",
        "1|0.51||20.84",
        "2|1.02|16.444|21.49",
        "3|1.52|16.168|22.41",
        "4|2.02|15.776|23.67",
      ].map((row) =>
        row
          .split("|")
          .map((cell, i) => cell.padStart([9, 15, 18, 20][i]!))
          .join(""),
      ),
    ];
    const file = understood([...header, ...rows].join("\n"), "cast.txt");
    expect(file.delimiter).toBe("fixed");
    expect([...(file.casts[0]?.columns.get("temperature")?.values ?? [])]).toEqual([
      16.755,
      NaN,
      16.444,
      16.168,
      15.776,
    ]);
    expect([...(file.casts[0]?.columns.get("conductivity")?.values ?? [])]).toEqual([
      20.39, 20.84, 21.49, 22.41, 23.67,
    ]);
  });

  test("the line of each row, and decimals as printed", () => {
    const file = understood([...header, table[0]!, "", ...table.slice(1)].join("\n"), "cast.csv");
    expect([...(file.casts[0]?.lines ?? [])]).toEqual([6, 7, 8]);
    expect(file.casts[0]?.columns.get("temperature")?.source).toMatchObject({
      header: "temperature [degC]",
      units: "degC",
      index: 2,
      decimals: 3,
      significantDigits: 5,
      first: 16.755,
      last: 16.444,
    });
  });

  test("missing markers: known ones, named ones, and impossible nines", () => {
    const rows = ["0,0.1,16.7,-999.99", "1,0.5,***,20.8", "2,1.0,NaN,21.4", "3,1.5,,0.00", "4,2.0,16.1,22.4"];
    const file = understood([...header, "missing value: 0.00", table[0]!, ...rows].join("\n"), "cast.csv");
    expect(asked(file)).toEqual([]);
    expect([...(file.casts[0]?.columns.get("conductivity")?.values ?? [])]).toEqual([
      NaN,
      20.8,
      21.4,
      NaN,
      22.4,
    ]);
    expect([...(file.casts[0]?.columns.get("temperature")?.flags ?? [])]).toEqual([2, 9, 9, 9, 2]);
    expect(file.missingMarkers).toEqual(expect.arrayContaining(["0.00", "-999.99", "***", "NaN"]));
  });

  test("columns that mean nothing here pass through, numbers and words", () => {
    const rows = table.map((line, i) => (i === 0 ? `${line},wobble [V],remark` : `${line},${i}.5,row ${i}`));
    const [cast] = understood([...header, ...rows].join("\n"), "cast.csv").casts;
    expect(cast?.columns.get("wobble")).toMatchObject({
      standardName: null,
      units: "V",
      longName: "wobble [V]",
    });
    expect(cast?.texts.get("remark")).toEqual(["row 1", "row 2", "row 3"]);
  });

  test("the air is not the sea", () => {
    const rows = table.map((line, i) => (i === 0 ? `${line},air temperature [degC]` : `${line},25.${i}`));
    const [cast] = understood([...header, ...rows].join("\n"), "cast.csv").casts;
    expect(cast?.columns.get("temperature")?.source?.header).toBe("temperature [degC]");
    expect(cast?.columns.get("air_temperature")?.standardName).toBeNull();
  });
});

describe("casts", () => {
  test("a cast column", () => {
    const rows = [
      "cast,time [UTC],lat,lon,depth [m],temperature [degC]",
      ...["A", "B"].flatMap((name, k) =>
        [0, 1, 2].map((i) => `${name},2023-06-02 0${8 + k}:00:0${i},51.${k}1,-4.3,${i}.5,1${i}.25`),
      ),
    ];
    const file = understood(rows.join("\n"), "day.csv");
    expect(asked(file)).toEqual([]);
    expect(
      file.casts.map(({ id, rows: count, time, start }) => [
        id,
        count,
        new Date(time * 1000).toISOString(),
        start?.latitude,
      ]),
    ).toEqual([
      ["A", 3, "2023-06-02T08:00:00.000Z", 51.01],
      ["B", 3, "2023-06-02T09:00:00.000Z", 51.11],
    ]);
  });

  test("names with other characters, or twice, give way to the file's stem", () => {
    const block = (name: string) => [`Cast: ${name}`, ...LINES];
    const file = understood(
      [...block("north pier"), ...block("7"), ...block("7")].join("\n"),
      "two days/Ä pier.csv",
    );
    expect(file.casts.map(({ id }) => id)).toEqual(["A_pier-1", "A_pier-2", "A_pier-3"]);
  });

  test("a position of one cast is not that of the next", () => {
    const file = understood(
      [...["Cast: A1", ...LINES], ...["Cast: A2", LINES[0]!, ...LINES.slice(3)]].join("\n"),
      "day.csv",
    );
    expect(file.casts.map(({ start }) => start?.latitude)).toEqual([51.201, undefined]);
    expect(file.questions).toMatchObject([{ about: "position", casts: ["A2"] }]);
  });
});

describe("times of rows", () => {
  const place = ["latitude: 51.201", "longitude: -4.302"];
  const head = (time: string) => `${time},pressure [dbar],temperature [degC]`;
  const iso = (time: number | undefined) => new Date((time ?? NaN) * 1000).toISOString();

  test("times of day that pass midnight, with a date and an offset in the header", () => {
    const file = understood(
      [
        "date: 2023-06-02",
        "clock: UTC+2",
        ...place,
        head("time"),
        "23:59:58,0.1,16.1",
        "23:59:59,0.5,16.0",
        "00:00:00,1.0,15.9",
        "00:00:01,1.5,15.8",
      ].join("\n"),
      "c.csv",
    );
    const [cast] = file.casts;
    expect(asked(file)).toEqual([]);
    expect([...(cast?.elapsed ?? [])]).toEqual([0, 1, 2, 3]);
    expect([iso(cast?.time), iso(cast?.endTime)]).toEqual([
      "2023-06-02T21:59:58.000Z",
      "2023-06-02T22:00:01.000Z",
    ]);
  });

  test("a date and a time column, day first by its 13th", () => {
    const file = understood(
      [
        ...place,
        "Date (UTC),Time (UTC),pressure [dbar],temperature [degC]",
        "13/06/2023,08:30:00.5,0.1,16.1",
        "13/06/2023,08:30:01.0,0.5,16.0",
        "13/06/2023,08:30:01.5,1.0,15.9",
      ].join("\n"),
      "c.csv",
    );
    expect(asked(file)).toEqual([]);
    expect([...(file.casts[0]?.elapsed ?? [])]).toEqual([0, 0.5, 1]);
    expect(iso(file.casts[0]?.time)).toBe("2023-06-13T08:30:00.500Z");
  });

  test("a date and a time that a blank parts, under one head", () => {
    const file = understood(
      [
        ...place,
        "time_UTC             pressure_dbar  temperature_degC",
        "2023-06-13 08:30:00  0.1  16.1",
        "2023-06-13 08:30:01  0.5  16.0",
        "2023-06-13 08:30:02  1.0  15.9",
      ].join("\n"),
      "c.txt",
    );
    expect(asked(file)).toEqual([]);
    expect(iso(file.casts[0]?.time)).toBe("2023-06-13T08:30:00.000Z");
    expect(file.casts[0]?.columns.get("pressure")?.values[2]).toBe(1);
  });

  test("the clock is set back in the record: each row's offset counts", () => {
    const file = understood(
      [
        ...place,
        head("time"),
        "2023-10-29T02:59:59+02:00,0.1,16.1",
        "2023-10-29T02:00:00+01:00,0.5,16.0",
        "2023-10-29T02:00:01+01:00,1.0,15.9",
      ].join("\n"),
      "c.csv",
    );
    expect(asked(file)).toEqual([]);
    expect([...(file.casts[0]?.elapsed ?? [])]).toEqual([0, 1, 2]);
    expect(iso(file.casts[0]?.time)).toBe("2023-10-29T00:59:59.000Z");
  });

  test("epoch seconds", () => {
    const file = understood(
      [...place, head("unix time"), "1685694600,0.1,16.1", "1685694601,0.5,16.0", "1685694602,1.0,15.9"].join(
        "\n",
      ),
      "c.csv",
    );
    expect(asked(file)).toEqual([]);
    expect(iso(file.casts[0]?.time)).toBe("2023-06-02T08:30:00.000Z");
  });

  test("noon and midnight of a clock of twelve hours", () => {
    const file = understood(
      [
        ...place,
        head("time (UTC)"),
        "2023-06-13 11:59:59 AM,0.1,16.1",
        "2023-06-13 12:00:00 PM,0.5,16.0",
        "2023-06-13 12:00:01 PM,1.0,15.9",
      ].join("\n"),
      "c.csv",
    );
    expect([...(file.casts[0]?.elapsed ?? [])]).toEqual([0, 1, 2]);
  });
});

describe("other languages", () => {
  const read = (lines: readonly string[]) => understood(`${lines.join("\n")}\n`, "c.csv");
  test.each<[string, readonly string[], number, readonly [number, number]]>([
    [
      "German",
      [
        "Messfahrt Kleine Bucht (erfunden)",
        "Beginn: 02.06.2023 10:30 MESZ",
        "Ort: 54° 10,5' N 8° 30,0' O",
        "Tiefe (m);Temperatur (°C);Salzgehalt",
        "0,5;16,1;14,2",
        "1,0;16,0;14,9",
        "1,5;15,9;15,8",
      ],
      1685694600,
      [54.175, 8.5],
    ],
    [
      "Spanish",
      [
        "Salida de la bahia inventada",
        "Fecha: 2 junio 2023",
        "Hora: 08:30 UTC",
        "Posición: 43° 30,0' N 8° 30,0' O",
        "Profundidad (m);Temperatura (°C);Salinidad",
        "0,5;16,1;34,2",
        "1,0;16,0;34,9",
        "1,5;15,9;34,8",
      ],
      1685694600,
      [43.5, -8.5],
    ],
    [
      "Dutch",
      [
        "Meting in de verzonnen haven",
        "Datum: 2 juni 2023",
        "Tijd: 10:30 (UTC+2)",
        "Breedtegraad: 52,5 N",
        "Lengtegraad: 4,5 E",
        "Diepte (m);Temperatuur (°C);Zoutgehalte",
        "0,5;16,1;14,2",
        "1,0;16,0;14,9",
        "1,5;15,9;15,8",
      ],
      1685694600,
      [52.5, 4.5],
    ],
    [
      "Norwegian",
      [
        "Måling ved oppdiktet havn",
        "Dato: 2. juni 2023",
        "Tid: 10:30 (UTC+2)",
        "Posisjon: 60° 30,0' N 5° 30,0' Ø",
        "Dyp (m);Temperatur (°C);Saltholdighet",
        "0,5;16,1;14,2",
        "1,0;16,0;14,9",
        "1,5;15,9;15,8",
      ],
      1685694600,
      [60.5, 5.5],
    ],
    [
      "Italian",
      [
        "Uscita della barca inventata",
        "Data: 2 giugno 2023",
        "Ora: 10:30 CEST",
        "Latitudine: 43.5 N",
        "Longitudine: 10.25 E",
        "Profondità (m);Temperatura (°C);Salinità",
        "0,5;16,1;34,2",
        "1,0;16,0;34,9",
        "1,5;15,9;34,8",
      ],
      1685694600,
      [43.5, 10.25],
    ],
    [
      "Portuguese",
      [
        "Saída do barco inventado",
        "Data: 2 de junho de 2023",
        "Hora: 08:30 UTC",
        "Latitude: 38.5 N",
        "Longitude: 9.25 O",
        "Profundidade (m);Temperatura (°C);Salinidade",
        "0,5;16,1;34,2",
        "1,0;16,0;34,9",
        "1,5;15,9;34,8",
      ],
      1685694600,
      [38.5, -9.25],
    ],
  ])("%s", (_, lines, time, [latitude, longitude]) => {
    const file = read(lines);
    const [cast] = file.casts;
    expect(asked(file)).toEqual([]);
    expect(cast?.time).toBe(time);
    expect(cast?.start?.latitude).toBeCloseTo(latitude, 9);
    expect(cast?.start?.longitude).toBeCloseTo(longitude, 9);
    expect([...(cast?.columns.keys() ?? [])]).toEqual(["depth", "temperature", "salinity"]);
  });
});

describe("the instrument and the state", () => {
  test.each([
    ["serial number: T-0417", { serialNumber: "T-0417" }],
    ["instrument: hand probe, serial no. 88213", { model: "hand probe", serialNumber: "88213" }],
    ["rated depth: 100 m", { ratedPressure: 100 }],
    ["rated to 1 MPa", { ratedPressure: 100 }],
    ["Gerät: Handsonde", { model: "Handsonde" }],
  ])("%s", (line, want) =>
    expect(understood([line, ...LINES].join("\n"), "c.csv").casts[0]?.instrument).toMatchObject(want),
  );

  test.each([
    ["pressure zeroed at the surface", { pressureZeroed: true, processing: "raw" }],
    ["sensor lag corrected", { lagCorrected: true }],
    ["bin averaged to 0.5 m", { processing: "averaged" }],
    ["downcast only", { direction: "down" }],
  ])("%s", (line, want) =>
    expect(understood([line, ...LINES].join("\n"), "c.csv").casts[0]?.state).toMatchObject(want),
  );

  test("satellites of start and end fix", () => {
    const file = understood(
      [
        LINES[0]!,
        "start fix: 51.20100 N, 4.30200 W, 9 satellites",
        "end fix: 51.20200 N, 4.30100 W (2 sats, 2D)",
        ...LINES.slice(3),
      ].join("\n"),
      "c.csv",
    );
    expect(file.casts[0]?.start).toEqual({
      latitude: 51.201,
      longitude: -4.302,
      satellites: 9,
      quality: null,
    });
    expect(file.casts[0]?.end).toEqual({ latitude: 51.202, longitude: -4.301, satellites: 2, quality: "2D" });
  });
});
