import { execFile } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { gzipSync } from "node:zlib";

/** What a pane fetches before it stands. */
export const FIRST = ["pane.js", "pane.css"];
/** What the pane fetches by itself as soon as it stands. */
export const PICTURES = ["findings.js"];

const TOP = fileURLToPath(new URL("../..", import.meta.url));

/** Builds the functions and the pane, as they are shipped, into a folder. */
export async function buildInto(output: string): Promise<void> {
  const words = [
    "node_modules/rolldown/bin/cli.mjs",
    "-c",
    "src/hosts/excel/bundle-addin.js",
    "--dir",
    output,
    "--logLevel",
    "silent",
  ];
  await promisify(execFile)(process.execPath, words, { cwd: TOP });
}

/** Builds the page with the open grid into a folder. */
export async function buildPageInto(output: string): Promise<void> {
  const words = ["node_modules/webpack/bin/webpack.js", "--output-path", output];
  await promisify(execFile)(process.execPath, words, { cwd: TOP });
}

/** Bytes of files as they travel. */
export function gzippedBytes(folder: string, files: readonly string[]): number {
  return files.reduce(
    (sum, file) => sum + gzipSync(readFileSync(join(folder, file)), { level: 9 }).length,
    0,
  );
}
