import { expect, test } from "vitest";
import { URL_NAMESPACE, uuidFromName } from "./uuid.ts";

test("RFC 9562 appendix A.4", () => {
  const dnsNamespace = "6ba7b810-9dad-11d1-80b4-00c04fd430c8";
  expect(uuidFromName(dnsNamespace, "www.example.com")).toBe("2ed6657d-e927-568b-95e1-2665a8aea6a2");
});

test("another name or namespace gives another identifier", () => {
  expect(uuidFromName(URL_NAMESPACE, "a")).not.toBe(uuidFromName(URL_NAMESPACE, "b"));
  expect(() => uuidFromName("not-a-uuid", "a")).toThrow(RangeError);
});
