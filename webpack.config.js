import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { EsbuildPlugin } from "esbuild-loader";
import webpack from "webpack";
import { functionsHelp, helpIcons } from "./src/hosts/excel/functions-help.js";
import { licenceNotices } from "./src/hosts/licence-notices.js";
import { longWorker } from "./src/pane/bundle-long-worker.js";
import { QUANTITY_SIZES_TEXT } from "./src/units/quantity-sizes-text.js";

const unitSizes = new webpack.NormalModuleReplacementPlugin(/\/quantity-sizes\.ts$/, (module) => {
  module.request = `data:text/javascript,${encodeURIComponent(QUANTITY_SIZES_TEXT)}`;
});

/**
 * Builds the page with the open grid and the pane beside it, all that `npm start` needs; the add-in is built by
 * `src/hosts/excel/bundle-addin.js`.
 */
export default [
  build("page", { page: "./src/hosts/workbench/page.ts" }, "dist/workbench", [
    copies("src/hosts/workbench/page.html", "index.html"),
    emits(functionsHelp),
    emits(helpIcons),
    emits(longWorker),
    withoutHyphenation(),
  ]),
];

function build(name, entry, folder, plugins) {
  return {
    name,
    entry,
    plugins: [unitSizes, ...plugins, notices(name)],
    mode: "production",
    target: ["web", "es2022"],
    // Scripts stand beside their page. Were they to look for where they are, they would try eval for it.
    output: { path: absolute(folder), filename: "[name].js", chunkFilename: "[name].js", publicPath: "" },
    resolve: { extensions: [".ts", ".tsx", ".js"] },
    experiments: { css: true },
    module: {
      rules: [
        {
          test: /\.tsx?$/,
          loader: "esbuild-loader",
          options: { target: "es2022", jsx: "automatic", jsxImportSource: "preact" },
        },
        // Nothing but the functions' own files does anything by being imported, so what nobody uses stays out.
        { test: /\.tsx?$/, include: absolute("src"), exclude: absolute("src/functions"), sideEffects: false },
        { test: /node_modules.simple-statistics/, sideEffects: false },
      ],
    },
    optimization: {
      // A chunk goes by the file that is fetched, whatever else the build holds.
      chunkIds: "named",
      splitChunks: {
        // Fixed names, for the pages name their scripts. The grid changes seldom, ours often.
        cacheGroups: {
          default: false,
          defaultVendors: false,
          grid: { test: /node_modules/, name: "grid", chunks: (chunk) => chunk.name === "page" },
        },
      },
      minimizer: [new EsbuildPlugin({ target: "es2022", css: true, legalComments: "none" })],
    },
    // The pages forbid eval, so no source map may use it.
    devtool: false,
    performance: { hints: false },
    stats: "errors-warnings",
  };
}

/** The grid can hyphenate a hundred languages; its cells never do, and the dictionaries weigh 5 MB. */
function withoutHyphenation() {
  const dictionary = /^\.\/[a-z]{2,3}(-[a-z0-9]+)*-[\w-]{8}\.js$/;
  return new webpack.NormalModuleReplacementPlugin(dictionary, (module) => {
    if (/@univerjs.engine-render/.test(module.context)) module.request = "data:text/javascript,export {}";
  });
}

/** Puts the licences of all that is in the scripts of a build beside them. */
function notices(name) {
  return emits((compilation) => {
    const shipped = [...compilation.modules].filter(
      (module) => compilation.chunkGraph.getNumberOfModuleChunks(module) > 0,
    );
    const within = shipped.flatMap((module) => module.modules ?? [module]);
    const files = within.map((module) => module.nameForCondition() ?? "");
    return { [`${name}-notices.txt`]: licenceNotices(files) };
  });
}

/** Puts files beside the scripts, by their names. */
function emits(files) {
  return {
    apply(compiler) {
      compiler.hooks.thisCompilation.tap("emits", (compilation) => {
        compilation.hooks.processAssets.tapPromise("emits", async () => {
          for (const [name, content] of Object.entries(await files(compilation)))
            compilation.emitAsset(name, new webpack.sources.RawSource(content));
        });
      });
    },
  };
}

/** Puts a file beside the scripts as it is. */
function copies(from, to) {
  return emits((compilation) => {
    compilation.fileDependencies.add(absolute(from));
    return { [to]: readFileSync(absolute(from)) };
  });
}

function absolute(path) {
  return fileURLToPath(new URL(path, import.meta.url));
}
