import fc from "fast-check";
import { expect, test } from "vitest";
import { charData, fitsFloat, store } from "./storage.ts";

const numberOf = (text: string) => Number(text);

test("what was printed can be recovered from what is stored", () => {
  const printed = fc
    .tuple(
      fc.integer({ min: 0, max: 10 }),
      fc.array(fc.bigInt({ min: -(10n ** 13n), max: 10n ** 13n }), { minLength: 1, maxLength: 20 }),
    )
    .map(([decimals, digits]) => ({
      decimals,
      texts: digits.map((number) => {
        const sign = number < 0n ? "-" : "";
        const all = (number < 0n ? -number : number).toString().padStart(decimals + 1, "0");
        const point = all.length - decimals;
        return sign + all.slice(0, point) + (decimals > 0 ? `.${all.slice(point)}` : "");
      }),
    }));
  let singles = 0;
  fc.assert(
    fc.property(printed, ({ decimals, texts }) => {
      const values = Float64Array.from(texts, numberOf);
      const type = fitsFloat(values, 10 ** -decimals) ? "float" : "double";
      if (type === "float") singles++;
      const { data } = store(values, type);
      const recovered = Array.from(data, (value) => value.toFixed(decimals).replace(/^-(0(\.0*)?)$/, "$1"));
      expect(recovered).toEqual(texts.map((text) => text.replace(/^-(0(\.0*)?)$/, "$1")));
    }),
    { numRuns: 1000 },
  );
  expect(singles).toBeGreaterThan(0);
});

test("seven digits that single precision loses are stored in double", () => {
  expect(fitsFloat(Float64Array.of(8388.6085), 1e-4)).toBe(false);
  expect(fitsFloat(Float64Array.of(83.886085), 1e-3)).toBe(true);
  expect(fitsFloat(Float64Array.of(1e39), Number.NaN)).toBe(false);
});

test("the fill value is never a value", () => {
  const { data, fill, missing, range } = store([-9999, Number.NaN, 3], "float");
  expect(fill).not.toBe(-9999);
  expect([...data]).toEqual([-9999, fill, 3]);
  expect(missing).toBe(1);
  expect(range).toEqual([-9999, 3]);
  expect(store([Number.NaN], "double").range).toBeNull();
});

test("texts are padded to the longest in bytes", () => {
  expect(charData(["a", "né"])).toEqual({ length: 3, data: Uint8Array.of(97, 0, 0, 110, 0xc3, 0xa9) });
  expect(charData([""]).length).toBe(1);
});
