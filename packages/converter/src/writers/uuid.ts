import { createHash } from "node:crypto";

/** Namespace of addresses (URL), RFC 9562 section 6.6. */
export const URL_NAMESPACE = "6ba7b811-9dad-11d1-80b4-00c04fd430c8";

/**
 * Name-based identifier, version 5.
 *
 * @param namespace a UUID in its usual text form
 * @param name      any text, taken as UTF-8
 * @throws RangeError if the namespace is not a UUID
 * @source RFC 9562 section 5.5; check value in its appendix A.4: "www.example.com" in the DNS namespace is
 *         2ed6657d-e927-568b-95e1-2665a8aea6a2
 */
export function uuidFromName(namespace: string, name: string): string {
  const hex = namespace.replaceAll("-", "");
  if (!/^[0-9a-f]{32}$/i.test(hex)) throw new RangeError(`${namespace} is not a UUID`);
  const bytes = createHash("sha1")
    .update(Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16)))
    .update(name, "utf8")
    .digest()
    .subarray(0, 16);
  bytes[6] = (bytes[6]! & 0x0f) | 0x50;
  bytes[8] = (bytes[8]! & 0x3f) | 0x80;
  const text = bytes.toString("hex");
  return [text.slice(0, 8), text.slice(8, 12), text.slice(12, 16), text.slice(16, 20), text.slice(20)].join(
    "-",
  );
}
