import { readdirSync, readFileSync } from "node:fs";
import { extname, join } from "node:path";
import { openArchive } from "@wherry/formats";
import { bytesSource } from "@wherry/netcdf";
import { testData } from "@wherry/testkit";
import { type CheckedFile, checkFile, checkPackage, checkText } from "../src/index.ts";

export interface Sample {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** A generator of whole numbers below a limit, the same on every machine (linear congruence, Knuth's constants). */
export function dice(seed: number): (limit: number) => number {
  let state = seed >>> 0;
  return (limit) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * limit);
  };
}

const TABLE: Sample = {
  name: "casts.csv",
  bytes: new TextEncoder().encode(
    "cast,time,depth\r\na,2030-01-01T00:00:00Z,1.5\r\nb,2030-01-02T00:00:00Z,\r\n",
  ),
};
const METADATA = JSON.stringify({
  "@context": "http://www.w3.org/ns/csvw",
  url: "casts.csv",
  tableSchema: {
    columns: [
      { name: "cast", titles: "cast", datatype: "string", required: true },
      { name: "time", titles: "time", datatype: "dateTime" },
      { name: "depth", titles: "depth", datatype: { base: "double", minimum: 0 } },
    ],
    primaryKey: "cast",
  },
});

/** Sound files of every kind that is checked: classic, netCDF-4, packages in zip and tar, a table. */
export function samples(): Sample[] {
  const folders = [["samples", "dsg_own"], ["samples", "planted"], ["netcdf"], ["netcdf4"], ["packages"]];
  return folders
    .flatMap((folder): Sample[] => {
      const path = testData(...folder);
      return readdirSync(path)
        .filter((name) => [".nc", ".zip", ".tar"].includes(extname(name)))
        .map((name) => ({ name, bytes: new Uint8Array(readFileSync(join(path, name))) }));
    })
    .concat(TABLE);
}

/** Numbers that lead programs astray: the largest of their kind, one less than nothing, nothing. */
const EVIL = [
  [0xff, 0xff, 0xff, 0xff],
  [0x7f, 0xff, 0xff, 0xff],
  [0x80, 0, 0, 0],
  [0, 0, 0, 0],
];

/** Damages a copy: some bytes, a number, a cut, a piece taken out or doubled. The beginning, with the header, most. */
export function damaged(bytes: Uint8Array, roll: (limit: number) => number): Uint8Array {
  let copy = Uint8Array.from(bytes);
  const anywhere = () => roll(roll(3) === 0 ? copy.length : Math.min(copy.length, 8000));
  for (let times = roll(4); times >= 0; times -= 1) {
    const at = anywhere();
    switch (roll(6)) {
      case 0:
        copy.set((EVIL[roll(EVIL.length)] ?? []).slice(0, copy.length - at), at);
        break;
      case 1:
        copy = copy.slice(0, roll(8) === 0 ? roll(copy.length) : copy.length);
        break;
      case 2: {
        const end = Math.min(copy.length, at + roll(64));
        copy = Uint8Array.from([...copy.subarray(0, at), ...copy.subarray(end)]);
        break;
      }
      case 3: {
        const piece = copy.subarray(at, at + roll(64));
        copy = Uint8Array.from([...copy.subarray(0, at), ...piece, ...copy.subarray(at)]);
        break;
      }
      default:
        if (copy.length > 0) copy[at] = roll(256);
    }
  }
  return copy;
}

/** The verdicts on a damaged input, and what of them could be read. Whatever is thrown is a fault of ours. */
export async function verdictsOn(
  { name, bytes }: Sample,
  roll: (limit: number) => number,
): Promise<readonly CheckedFile[]> {
  const now = 1.9e9;
  const verdicts = /\.(?:zip|tar)$/.test(name)
    ? await openArchive(bytesSource(bytes), name).then((archive) =>
        archive.ok ? checkPackage(archive.value, { now }) : [],
      )
    : [await checkFile(bytes, { path: name, now, metadata: describing(roll) })];
  // what is found must be tellable
  checkText(verdicts);
  return verdicts;
}

/** The metadata of the table, damaged every second time. */
function describing(roll: (limit: number) => number): Uint8Array {
  const bytes = new TextEncoder().encode(METADATA);
  return roll(2) === 0 ? bytes : damaged(bytes, roll);
}
