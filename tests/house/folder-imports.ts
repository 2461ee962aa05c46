import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";

const SOURCE = fileURLToPath(new URL("../../src", import.meta.url));

/** The folder that a file counts to: the first below src, or one host. Files of `hosts` itself are the interface. */
function folderOf(file: string): string {
  const [first, second, ...rest] = relative(SOURCE, file).split(sep);
  return first === "hosts" && rest.length > 0 ? `hosts/${second}` : first!;
}

/** Which folders of src import which, with a file of each pair to look at. */
export function folderImports(): Map<string, Map<string, string>> {
  const imports = new Map<string, Map<string, string>>();
  const files = readdirSync(SOURCE, { recursive: true, encoding: "utf8" }).filter((name) =>
    /\.tsx?$/.test(name),
  );
  for (const name of files) {
    const file = join(SOURCE, name);
    const from = folderOf(file);
    const seen = imports.get(from) ?? new Map<string, string>();
    imports.set(from, seen);
    for (const [, path] of readFileSync(file, "utf8").matchAll(/(?:from|import)\s*\(?\s*"(\.[^"]+)"/g)) {
      const to = folderOf(resolve(dirname(file), path!));
      if (to !== from && !seen.has(to)) seen.set(to, name);
    }
  }
  return imports;
}

/** The first circle among folders, as a path that comes back to its start; null where there is none. */
export function circleAmong(imports: ReadonlyMap<string, ReadonlyMap<string, string>>): string[] | null {
  const walk = (path: readonly string[]): string[] | null => {
    for (const next of imports.get(path.at(-1)!)?.keys() ?? []) {
      if (path.includes(next)) return [...path.slice(path.indexOf(next)), next];
      const found = walk([...path, next]);
      if (found) return found;
    }
    return null;
  };
  for (const folder of imports.keys()) {
    const found = walk([folder]);
    if (found) return found;
  }
  return null;
}
