import { readFileSync } from "node:fs";
import { relative } from "node:path";
import { defineConfig } from "rolldown";
import { longWorker } from "../../pane/bundle-long-worker.js";
import { quantitySizes } from "../../units/quantity-sizes-text.js";
import { licenceNotices } from "../licence-notices.js";
import { functionsHelp, functionsMetadata } from "./functions-help.js";

/**
 * Builds the add-in, the pane and the functions: `rolldown -c` of this file, into another folder with `--dir FOLDER`. This bundler
 * lets every part be one scope with what it shares with others; webpack, which builds the page, wraps each shared
 * module by itself, and both came to a fifth more bytes.
 */
export default defineConfig([
  {
    input: { pane: "src/pane/spreadsheet.tsx" },
    transform: { target: "es2022" },
    treeshake: onlyWhatIsUsed(/[\\/]src[\\/]pane[\\/]spreadsheet\.tsx$/),
    plugins: [
      quantitySizes(),
      emits(async () => ({ "pane.html": read("pane/pane.html"), "pane.css": read("pane/pane.css") })),
      emits(longWorker),
      notices("pane"),
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
  },
  {
    input: { functions: "src/functions/spreadsheet.ts" },
    transform: { target: "es2022" },
    treeshake: onlyWhatIsUsed(/[\\/]src[\\/]functions[\\/]/),
    plugins: [quantitySizes(), functionsTied(), notices("functions")],
    // One script that needs no page: cells also calculate where none is open.
    output: { dir: "dist", format: "iife", minify: true, entryFileNames: "[name].js" },
  },
]);

function read(file) {
  return readFileSync(`src/${file}`, "utf8");
}

/** Nothing but what `acting` names does anything by being imported, so what nobody uses stays out. */
function onlyWhatIsUsed(acting) {
  return {
    moduleSideEffects: [
      { test: acting, sideEffects: true },
      { test: /[\\/]src[\\/]|node_modules[\\/]simple-statistics/, sideEffects: false },
    ],
  };
}

/** Ties each function in the script to its name in the spreadsheet, and puts its metadata and its help beside it. */
function functionsTied() {
  const found = functionsMetadata();
  return [
    emits(functionsHelp),
    {
      name: "functions tied to their names",
      async transform(code, id) {
        const own = (await found).associate.filter(
          ({ sourceFileName }) => relative(sourceFileName, id) === "",
        );
        if (own.length === 0) return null;
        const calls = own.map(
          ({ id: name, functionName }) => `CustomFunctions.associate("${name}", ${functionName});`,
        );
        return { code: [code, ...calls].join("\n"), map: null };
      },
    },
  ];
}

/** Puts the licences of all that is in the scripts of a build beside them. */
function notices(name) {
  return {
    name: "licences of what is in the scripts",
    generateBundle(_options, bundle) {
      const modules = Object.values(bundle).flatMap((part) => (part.type === "chunk" ? part.moduleIds : []));
      this.emitFile({ type: "asset", fileName: `${name}-notices.txt`, source: licenceNotices(modules) });
    },
  };
}

/** Puts files beside the scripts. */
function emits(files) {
  return {
    name: "files beside the scripts",
    async generateBundle() {
      for (const [fileName, source] of Object.entries(await files()))
        this.emitFile({ type: "asset", fileName, source });
    },
  };
}
