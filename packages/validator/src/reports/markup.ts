const SIGNS: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** A text for XML and HTML: signs of markup escaped, characters that XML 1.0 does not allow as U+FFFD. */
export const escaped = (text: string): string =>
  text
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what XML forbids
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Surrogate}/gu, "\ufffd")
    .replace(/[&<>"']/g, (sign: string) => SIGNS[sign] ?? sign);
