import { fileURLToPath } from "node:url";
import { build } from "rolldown";
import { licenceNotices } from "../hosts/licence-notices.js";
import { quantitySizes } from "../units/quantity-sizes-text.js";

/**
 * The script that reads long tables beside a page and its notices, by their file names: bundled by itself, for the page
 * and the add-in alike.
 */
export async function longWorker() {
  const { output } = await build({
    input: { "long-worker": fileURLToPath(new URL("long-worker.ts", import.meta.url)) },
    transform: { target: "es2022" },
    treeshake: {
      moduleSideEffects: [
        { test: /[\\/]long-worker\.ts$/, sideEffects: true },
        { test: /[\\/]src[\\/]|node_modules[\\/]simple-statistics/, sideEffects: false },
      ],
    },
    plugins: [quantitySizes()],
    output: { format: "iife", minify: true },
    write: false,
    logLevel: "silent",
  });
  const [{ code, moduleIds }] = output;
  return { "long-worker.js": code, "long-worker-notices.txt": licenceNotices(moduleIds) };
}
