import { describe, expect, test } from "vitest";
import { isOrcid, isRor } from "./identifiers.ts";
import { isOpenLicence, licenceOf } from "./licence.ts";

describe("ORCID", () => {
  test.each([
    ["0000-0002-1825-0097", "the example of the registry's own documentation"],
    ["https://orcid.org/0000-0002-1694-233X", "an example there with the check character X"],
  ])("%s holds: %s", (id) => expect(isOrcid(id)).toBe(true));

  test("one digit changed anywhere does not hold", () => {
    const id = "0000-0002-1825-0097";
    for (let k = 0; k < id.length; k++) {
      if (id[k] === "-") continue;
      const changed = id.slice(0, k) + ((Number.parseInt(id[k]!, 10) + 1) % 10) + id.slice(k + 1);
      expect(isOrcid(changed), changed).toBe(false);
    }
  });
});

describe("ROR", () => {
  // identifiers of institutions as the registry shows them, which were not made by this code
  test.each(["https://ror.org/03yrm5c26", "https://ror.org/04wxnsj81", "042nb2s44", "052gg0110"])(
    "%s holds",
    (id) => expect(isRor(id)).toBe(true),
  );

  test.each(["https://ror.org/03yrm5c27", "03yrn5c26", "03yrm5c62", "13yrm5c26", "0oyrm5c26"])(
    "%s does not",
    (id) => expect(isRor(id)).toBe(false),
  );
});

describe("licences", () => {
  test.each([
    ["CC-BY-4.0", "CC-BY-4.0"],
    ["cc0-1.0", "CC0-1.0"],
    ["https://creativecommons.org/publicdomain/zero/1.0/", "CC0-1.0"],
    ["http://creativecommons.org/licenses/by/4.0/deed.en", "CC-BY-4.0"],
    ["https://spdx.org/licenses/ODbL-1.0.html", "ODbL-1.0"],
  ])("%s is %s of the SPDX list", (text, id) => expect(licenceOf(text)?.id).toBe(id));

  test.each(["None", "Freely Distributed", "https://example.org/licence", "CC-BY-9.9"])(
    "%s is none of them",
    (text) => expect(licenceOf(text)).toBeNull(),
  );

  test("data under a licence without trade or change are not open", () => {
    const open = (id: string) => isOpenLicence(licenceOf(id)!);
    expect(["CC0-1.0", "CC-BY-4.0", "CC-BY-SA-4.0", "ODC-By-1.0"].map(open)).toEqual([
      true,
      true,
      true,
      true,
    ]);
    expect(["CC-BY-NC-4.0", "CC-BY-ND-4.0", "CC-BY-NC-SA-4.0"].map(open)).toEqual([false, false, false]);
  });
});
