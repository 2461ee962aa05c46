import { execFile } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { gzipSync } from "node:zlib";

/** What a pane fetches before it stands. */
export const FIRST = ["pane.js", "pane.css"];
/** What the pane fetches by itself as soon as it stands. */
export const PICTURES = ["src_pane_session-parts_ts.js", "src_pane_analysis_ts.js"];

/** Builds the functions and the pane, as they are shipped, into a folder. */
export async function buildInto(output: string): Promise<void> {
  const parts = ["functions", "pane"].flatMap((part) => ["--config-name", part]);
  const webpack = ["node_modules/webpack/bin/webpack.js", ...parts, "--output-path", output];
  const cwd = fileURLToPath(new URL("../..", import.meta.url));
  await promisify(execFile)(process.execPath, webpack, { cwd });
}

/** Bytes of files as they travel. */
export function gzippedBytes(folder: string, files: readonly string[]): number {
  return files.reduce(
    (sum, file) => sum + gzipSync(readFileSync(join(folder, file)), { level: 9 }).length,
    0,
  );
}
