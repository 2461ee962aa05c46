import { mkdtempSync, readdirSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildInto, FIRST, gzippedBytes, PICTURES } from "../build/build-into.ts";
import type { BenchLine } from "./run.ts";

/** Bytes of what the add-in's pages fetch, plain and as they travel, beside the project's own budgets. */
export async function* bench(): AsyncGenerator<BenchLine> {
  const folder = mkdtempSync(join(tmpdir(), "built-"));
  try {
    await buildInto(folder);
    yield sizeOf(folder, "script of the functions", ["functions.js"], 40_000);
    yield sizeOf(folder, "pane before pictures, script and style", FIRST, 60_000);
    yield sizeOf(folder, "pane with pictures", [...FIRST, ...PICTURES], 100_000);
    const scripts = readdirSync(folder).filter((file) => file.endsWith(".js"));
    yield sizeOf(folder, "all scripts, fetched when first needed", scripts);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function sizeOf(folder: string, what: string, files: readonly string[], goal?: number): BenchLine {
  const bytes = files.reduce((sum, file) => sum + statSync(join(folder, file)).size, 0);
  const gzipped = gzippedBytes(folder, files);
  return { what, files: files.length, bytes, gzipped, ...(goal ? { goal, met: gzipped <= goal } : {}) };
}
