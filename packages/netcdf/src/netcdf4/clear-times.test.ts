import { expect, test } from "vitest";
import { encodeText } from "../text.ts";
import { lookup3 } from "./clear-times.ts";

const checksum = (text: string) => {
  const bytes = encodeText(text);
  return lookup3(new DataView(bytes.buffer, bytes.byteOffset, bytes.length), 0, bytes.length);
};

// values printed by the driver of lookup3.c (B. Jenkins, 2006), hashlittle with start value 0; from memory
test.each([
  ["", 0xdeadbeef],
  ["Four score and seven years ago", 0x17770551],
])("checksum of %j", (text, want) => expect(checksum(text)).toBe(want));
