// A plugin of the bundler. The public face of a package (src/index.ts) joins all of its files, so that a command that
// needs one of them would load all. Here imports from a face become imports from the files behind it.
import { readFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { fileURLToPath } from "node:url";

const faceOf = (name) =>
  fileURLToPath(new URL(`../${name.slice("@wherry/".length)}/src/index.ts`, import.meta.url));
const pathOf = (specifier, from) =>
  specifier.startsWith("@wherry/") ? faceOf(specifier) : resolve(dirname(from), specifier);

/** Values in the braces of an import or export, as [name there, name here]; types are gone after compiling. */
const valuesIn = (list) =>
  list
    .split(",")
    .map((part) => part.trim())
    .filter((part) => part !== "" && !part.startsWith("type "))
    .map((part) => part.split(/\s+as\s+/))
    .map(([there, here = there]) => [there, here]);

const kept = new Map();

/** Where each value that a file exports is made: name to [path, name there]. */
function valuesOf(path) {
  let values = kept.get(path);
  if (values !== undefined) return values;
  values = new Map();
  kept.set(path, values);
  const text = readFileSync(path, "utf8");
  for (const [, name] of text.matchAll(/^export (?:async )?(?:function\*?|const|class) (\w+)/gm))
    values.set(name, [path, name]);
  for (const [, specifier] of text.matchAll(/^export \* from "([^"]+)"/gm))
    for (const [name, made] of valuesOf(pathOf(specifier, path))) values.set(name, made);
  for (const [, list, specifier] of text.matchAll(/^export \{([^}]*)\} from "([^"]+)"/gm)) {
    const target = pathOf(specifier, path);
    for (const [there, here] of valuesIn(list))
      values.set(here, target.endsWith(".json") ? [target, there] : valuesOf(target).get(there));
  }
  return values;
}

function direct(path) {
  const text = readFileSync(path, "utf8");
  return text.replace(/^import \{([^}]*)\} from "(@wherry\/\w+)";/gm, (_, list, specifier) =>
    valuesIn(list)
      .map(([there, here]) => {
        const made = valuesOf(faceOf(specifier)).get(there);
        if (made === undefined) throw new Error(`${path}: ${specifier} exports no value ${there}`);
        const [file, name] = made;
        return `import { ${name} as ${here} } from ${JSON.stringify(file)};`;
      })
      .join(" "),
  );
}

export const directImports = {
  name: "direct-imports",
  setup: (build) =>
    build.onLoad({ filter: /packages[\\/]\w+[\\/]src[\\/].*\.ts$/ }, ({ path }) => ({
      contents: direct(path),
      loader: "ts",
    })),
};
