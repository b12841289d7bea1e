/** File name without folders and extension, in the characters of an id. */
export function fileStem(path: string): string {
  const name = path.split(/[/\\]/).at(-1) ?? path;
  return (
    name
      .replace(/(.)\.[^.]*$/, "$1")
      .normalize("NFD")
      .replace(/[\u0300-\u036f]/g, "")
      .replace(/[^A-Za-z0-9._-]+/g, "_")
      .slice(0, 90) || "cast"
  );
}
