import { readFileSync } from "node:fs";
import { defineConfig } from "rolldown";
import { tsImport } from "tsx/esm/api";

/** The sizes of units as numbers, worked out now, so that no script has to carry the units library. */
const { QUANTITY_SIZES } = await tsImport("./src/units/quantity-sizes.ts", import.meta.url);

/**
 * Builds the pane of the add-in: `rolldown -c`, into another folder with `--dir FOLDER`. Its parts are fetched as they
 * are needed and share much. This bundler lets every part be one scope with what it shares; webpack, which builds the
 * rest, wraps each shared module by itself, and the pane came to a fifth more bytes.
 */
export default defineConfig({
  input: { pane: "src/pane/spreadsheet.tsx" },
  transform: { target: "es2022" },
  // Nothing but the entry does anything by being imported, so what nobody uses stays out.
  treeshake: {
    moduleSideEffects: [
      { test: /[\\/]src[\\/]pane[\\/]spreadsheet\.tsx$/, sideEffects: true },
      { test: /[\\/]src[\\/]|node_modules[\\/]simple-statistics/, sideEffects: false },
    ],
  },
  plugins: [
    {
      name: "unit sizes",
      load: (id) =>
        /[\\/]quantity-sizes\.ts$/.test(id)
          ? `export const QUANTITY_SIZES = ${JSON.stringify(QUANTITY_SIZES)}`
          : null,
    },
    {
      name: "page of the pane",
      buildStart() {
        for (const fileName of ["pane.html", "pane.css"])
          this.emitFile({ type: "asset", fileName, source: readFileSync(`src/pane/${fileName}`) });
      },
    },
  ],
  output: {
    dir: "dist",
    minify: true,
    entryFileNames: "[name].js",
    chunkFileNames: "[name].js",
    codeSplitting: {
      groups: [
        { name: "pane", tags: ["$initial"], priority: 2 },
        // What is fetched as soon as the pane stands.
        { name: "findings", test: /[\\/]pane[\\/](session-parts|analysis)\.ts$/, priority: 1 },
      ],
    },
  },
});
