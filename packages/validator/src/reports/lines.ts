const WIDTH = 100;

/** Text broken at blanks to lines of at most 100 characters, each after the given margin. */
export function wrap(text: string, first: string, margin = " ".repeat(first.length)): string[] {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of text.split(/\s+/).filter((each) => each !== "")) {
    if (!empty && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = margin;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return empty && lines.length > 0 ? lines : [...lines, line.trimEnd()];
}

/** "1 error", "3 errors", "no error". */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  count === 0 ? `no ${one}` : `${count} ${count === 1 ? one : many}`;
