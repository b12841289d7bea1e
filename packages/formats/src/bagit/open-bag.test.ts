import { readFileSync } from "node:fs";
import { bytesSource } from "@wherry/netcdf";
import { strToU8, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { type Container, contentOf } from "../package/container.ts";
import { openArchive } from "../package/open-archive.ts";
import { bagDigests } from "./digests.ts";
import { openBag } from "./open-bag.ts";

// made by tools/make_bag_samples.py with Python's zipfile, tarfile and hashlib
const sample = (name: string): Uint8Array =>
  readFileSync(new URL(`../../../../test-data/packages/${name}`, import.meta.url));

const opened = async (bytes: Uint8Array): Promise<Container> => {
  const container = await openArchive(bytesSource(bytes), "bag.archive");
  if (!container.ok) throw new Error(container.problems[0].message);
  return container.value;
};

const bagOf = async (bytes: Uint8Array) => {
  const bag = await openBag(await opened(bytes));
  if (!bag.ok) throw new Error(bag.problems[0].message);
  return bag.value;
};

const codesOf = async (bytes: Uint8Array): Promise<string[]> => {
  const container = await openArchive(bytesSource(bytes), "bag.archive");
  return (container.ok ? container.value.refused : container.problems).map(({ code }) => code);
};

describe.each(["deflated.zip", "stored.zip", "sizes64.zip", "pax.tar", "gnu.tar", "dotted.tar"])(
  "%s",
  (name) => {
    test("is a bag whose checksums agree", async () => {
      const bag = await bagOf(sample(name));
      expect(bag.base).toBe("bag/");
      expect(bag.container.refused).toEqual([]);
      expect(bag.declaration?.lines).toEqual(["BagIt-Version: 1.0", "Tag-File-Character-Encoding: UTF-8"]);
      expect(bag.manifests.map(({ path, of, entries }) => [path, of, entries.length])).toEqual([
        ["manifest-sha256.txt", "payload", 4],
        ["manifest-sha512.txt", "payload", 4],
        ["tagmanifest-sha256.txt", "tags", 4],
      ]);
      const { byPath, unread } = await bagDigests(bag);
      expect(unread).toEqual([]);
      for (const { algorithm, entries } of bag.manifests)
        for (const { path, checksum } of entries) expect(byPath.get(path)?.get(algorithm)).toBe(checksum);
    });

    test("gives random access to a member", async () => {
      const bag = await bagOf(sample(name));
      const read = await bag.files.get("data/casts.csv")?.use(async (source) => source.read(5, 5));
      expect(read?.ok && new TextDecoder().decode(read.value)).toBe("depth");
    });
  },
);

test("an end that refers to the record of the 64-bit form is followed there", async () => {
  const bytes = new Uint8Array(sample("sizes64.zip"));
  bytes.fill(0xff, bytes.length - 14, bytes.length - 2);
  expect((await bagOf(bytes)).files.size).toBe(9);
});

test("continuation lines belong to the value before them", async () => {
  const { info } = await bagOf(sample("stored.zip"));
  expect(info?.fields.at(-1)).toEqual({
    line: 3,
    label: "External-Description",
    value: "Invented casts of a pier, for tests only",
  });
});

describe("what could do harm is refused", () => {
  test("a path out of the package", async () =>
    expect(await codesOf(sample("escape.zip"))).toEqual(["package/unsafe-path"]));
  test("a link", async () => expect(await codesOf(sample("links.tar"))).toEqual(["package/unsafe-path"]));
  test.each(["/etc/hostname", "C:/a.txt", "a\\..\\b.txt", "~/a.txt", "bag/a\0.txt"])(
    "the path %j",
    async (path) => expect(await codesOf(zipSync({ [path]: strToU8("x") }))).toEqual(["package/unsafe-path"]),
  );

  test("members that share their bytes", async () => {
    const bytes = zipSync({ "a.txt": strToU8("x"), "b.txt": strToU8("y") }, { level: 0 });
    // the second entry of the directory points at the first member
    const view = new DataView(bytes.buffer);
    const second = bytes.lastIndexOf(0x50, bytes.length - 23);
    view.setUint32(second + 42, 0, true);
    expect(await codesOf(bytes)).toEqual(["zip/overlap"]);
  });

  test("a member that states more than memory holds", async () => {
    const bytes = zipSync({ "bag/bagit.txt": strToU8("x".repeat(100)) });
    const view = new DataView(bytes.buffer);
    view.setUint32(bytes.lastIndexOf(0x50, bytes.length - 23) + 24, 2 ** 31, true);
    const container = await opened(bytes);
    const read = await contentOf(container.files[0]!);
    expect(!read.ok && read.problems[0].code).toBe("package/too-large");
    const bag = await openBag(container);
    expect(bag.ok && bag.value.unread.map(({ code }) => code)).toEqual(["package/too-large"]);
  });

  test("a member that unpacks to more than it states", async () => {
    const bytes = zipSync({ "a.txt": new Uint8Array(5_000_000) });
    new DataView(bytes.buffer).setUint32(bytes.lastIndexOf(0x50, bytes.length - 23) + 24, 1000, true);
    const container = await opened(bytes);
    const read = await container.files[0]!.each(() => {});
    expect(!read.ok && read.problems[0].code).toBe("zip/damaged");
  });
});

describe("damage is told", () => {
  test.each(["stored.zip", "deflated.zip", "sizes64.zip", "pax.tar", "gnu.tar"])(
    "%s cut anywhere",
    async (name) => {
      const whole = sample(name);
      for (let length = 0; length < whole.length; length += 97) {
        const container = await openArchive(bytesSource(whole.subarray(0, length)), "cut");
        if (!container.ok) continue;
        // only the empty blocks behind the last member of a tar archive may be missing
        expect(name).toMatch(/tar$/);
        expect(container.value.files).toHaveLength(9);
      }
    },
  );

  test.each(["stored.zip", "deflated.zip", "sizes64.zip"])(
    "a changed byte of the content in %s",
    async (name) => {
      const bytes = new Uint8Array(sample(name));
      const from = name === "deflated.zip" ? 0x4b : 0x50;
      bytes[from]! ^= 1;
      const container = await openArchive(bytesSource(bytes), "changed");
      if (!container.ok) return expect(container.problems[0].code).toMatch(/^zip\//);
      const read = await Promise.all(container.value.files.map((file) => file.each(() => {})));
      expect(read.filter(({ ok }) => !ok)).toHaveLength(1);
    },
  );

  test("a header of a tar archive that does not agree with its checksum", async () => {
    const bytes = new Uint8Array(sample("gnu.tar"));
    bytes[0]! ^= 1;
    expect(await codesOf(bytes)).toEqual(["tar/damaged"]);
  });

  test("a file that is no archive", async () =>
    expect(await codesOf(strToU8("nothing"))).toEqual(["package/no-archive"]));

  test("an archive without a bag", async () => {
    const bag = await openBag(await opened(zipSync({ "a/b.txt": strToU8("x") })));
    expect(!bag.ok && bag.problems[0].code).toBe("package/no-bag");
  });
});
