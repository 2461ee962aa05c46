import { execFile } from "node:child_process";
import { mkdtemp, readdir, readFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { buildInto } from "../build/build-into.ts";

const TOP = fileURLToPath(new URL("../..", import.meta.url));
const run = promisify(execFile);

export interface BuiltFile {
  readonly body: Buffer;
  readonly contentType: string;
}

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
  ".json": "application/json",
  ".xml": "text/xml",
  ".png": "image/png",
};

/** Builds the add-in as `npm run build` does, into a folder of its own. Answers that folder. */
export async function buildAddin(address?: string): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), "addin-"));
  await buildInto(folder);
  await run(process.execPath, ["--import", "tsx", "src/hosts/excel/build-addin.ts", folder], {
    cwd: TOP,
    env: { ...process.env, ...(address ? { ADDIN_URL: address } : {}) },
  });
  return folder;
}

/** The files of a folder by their path in it, as a web server hands them out. */
export async function builtFiles(folder: string): Promise<Map<string, BuiltFile>> {
  const found = await readdir(folder, { recursive: true, withFileTypes: true });
  const paths = found.filter((entry) => entry.isFile()).map(({ parentPath, name }) => join(parentPath, name));
  const files = paths.map(async (path): Promise<[string, BuiltFile]> => {
    const contentType = TYPES[extname(path)] ?? "application/octet-stream";
    return [path.slice(folder.length + 1).replaceAll("\\", "/"), { body: await readFile(path), contentType }];
  });
  return new Map(await Promise.all(files));
}
