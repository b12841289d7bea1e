import fc from "fast-check";
import { SaxesParser } from "saxes";
import { expect, test } from "vitest";
import { element, withAttributes, xmlText } from "./xml.ts";

/** What an independent strict parser reads of a document: texts of the element `t`, and of its attribute `a`. */
function readBack(text: string): { text: string; attribute: string } {
  const parser = new SaxesParser({ xmlns: false });
  let inside = false;
  const read = { text: "", attribute: "" };
  parser.on("error", (error) => {
    throw error;
  });
  parser.on("opentag", ({ name, attributes }) => {
    inside = name === "t";
    if (inside) read.attribute = String(attributes.a ?? "");
  });
  parser.on("text", (part) => {
    if (inside) read.text += part;
  });
  parser.on("closetag", () => {
    inside = false;
  });
  parser.write(text).close();
  return read;
}

const documentOf = (text: string) => {
  const root = element("root", withAttributes("t", { a: "" }, text), element("left-out", ""));
  if (root === null) throw new Error("no root");
  return xmlText(root);
};

test.each([
  "<script>alert(1)</script>",
  "]]> & &amp; \"quoted\" 'single'",
  "line\nline\r\nline\ttab",
  "\u202eright to left\u2069",
  "\ud83d\udc1f fish",
  "x".repeat(1_000_000),
])("%.40s comes back as it was", (text) => expect(readBack(documentOf(text)).text).toBe(text));

test("characters that XML forbids become the replacement character", () => {
  expect(readBack(documentOf("a\u0000b\u001bc\ufffed\ud800e")).text).toBe("a\ufffdb\ufffdc\ufffdd\ufffde");
});

test("any text gives a document that a strict parser reads, with that text in it", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary", minLength: 1 }), (text) => {
      // XML 1.0, section 2.2: what is left of a text without the characters it does not have
      const allowed = [...text]
        .map((character) => {
          const code = character.codePointAt(0)!;
          const held =
            code === 9 ||
            code === 10 ||
            code === 13 ||
            (code >= 32 && code < 0xd800) ||
            (code > 0xdfff && code < 0xfffe) ||
            code > 0xffff;
          return held ? character : "\ufffd";
        })
        .join("");
      expect(readBack(documentOf(text)).text).toBe(allowed);
    }),
  );
});

test("attributes are escaped too", () => {
  const root = withAttributes("t", { a: '"><evil b="' });
  expect(readBack(xmlText(root!)).attribute).toBe('"><evil b="');
});

test("an element with nothing in it is left out", () =>
  expect(element("a", null, "", element("b", []))).toBeNull());
