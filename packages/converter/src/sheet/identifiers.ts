/** The bare form of an identifier, without the address of its registry. */
const bare = (text: string): string => text.replace(/^https:\/\/[^/]+\//, "");

/**
 * Whether the last character of an ORCID is the one that its digits call for.
 *
 * @source ISO/IEC 7064:2003, MOD 11-2, as the ORCID registry uses it
 */
export function isOrcid(text: string): boolean {
  const digits = bare(text).replaceAll("-", "");
  if (!/^\d{15}[\dX]$/.test(digits)) return false;
  let total = 0;
  for (const digit of digits.slice(0, 15)) total = (total + Number.parseInt(digit, 10)) * 2;
  const check = (12 - (total % 11)) % 11;
  return digits[15] === (check === 10 ? "X" : String(check));
}

/** Base 32 without the letters that look like others. */
const CROCKFORD = "0123456789abcdefghjkmnpqrstvwxyz";

/**
 * Whether the last two digits of a ROR are the ones that the rest calls for.
 *
 * @source ISO/IEC 7064:2003, MOD 97-10, over the number that the first seven characters write; from memory, and in
 *         keeping with the identifiers that the registry's documentation shows
 */
export function isRor(text: string): boolean {
  const id = bare(text);
  if (!/^0[a-z0-9]{6}\d{2}$/.test(id)) return false;
  let number = 0;
  for (const character of id.slice(0, 7)) {
    const value = CROCKFORD.indexOf(character);
    if (value < 0) return false;
    number = number * 32 + value;
  }
  return id.slice(7) === String(98 - ((number * 100) % 97)).padStart(2, "0");
}

/** The address of an ORCID. */
export const orcidAddress = (text: string): string => `https://orcid.org/${bare(text)}`;

/** The address of a ROR. */
export const rorAddress = (text: string): string => `https://ror.org/${bare(text)}`;
