import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import FunctionsMetadata from "custom-functions-metadata-plugin";
import { EsbuildPlugin } from "esbuild-loader";
import webpack from "webpack";

/**
 * What `npm run build` makes, each part by its name: `page` is the open grid with the pane beside it, all that
 * `npm start` needs; `functions` and `pane` are the add-in. `webpack --config-name page` builds one of them.
 */
export default [
  build("page", { page: "./src/hosts/workbench/page.ts" }, "dist/workbench", [
    copies({ "src/hosts/workbench/page.html": "index.html" }),
    functionsJson(),
    withoutHyphenation(),
  ]),
  build("functions", { functions: "./src/functions/spreadsheet.ts" }, "dist", [functionsJson()]),
  build("pane", { pane: "./src/pane/spreadsheet.tsx" }, "dist", [
    copies({ "src/pane/pane.html": "pane.html" }),
  ]),
];

function build(name, entry, folder, plugins) {
  return {
    name,
    entry,
    plugins,
    mode: "production",
    output: { path: absolute(folder), filename: "[name].js", chunkFilename: "[name].js" },
    resolve: {
      extensions: [".ts", ".tsx", ".js"],
      // A number library tries out by eval what the browser can do; the pages forbid it, so let it fail quietly.
      alias: { "@stdlib/utils-eval": false },
    },
    experiments: { css: true },
    module: {
      rules: [
        {
          test: /\.tsx?$/,
          loader: "esbuild-loader",
          options: { target: "es2022", jsx: "automatic", jsxImportSource: "preact" },
        },
      ],
    },
    optimization: {
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

/** The names, arguments and help of the functions, read from the doc comments of a file for each. */
function functionsJson() {
  const folder = "src/functions";
  const families = readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  const input = families.flatMap(({ name }) =>
    readdirSync(`${folder}/${name}`).map((file) => absolute(`${folder}/${name}/${file}`)),
  );
  return new FunctionsMetadata({ output: "functions.json", input });
}

/** The grid can hyphenate a hundred languages; its cells never do, and the dictionaries weigh 5 MB. */
function withoutHyphenation() {
  const dictionary = /^\.\/[a-z]{2,3}(-[a-z0-9]+)*-[\w-]{8}\.js$/;
  return new webpack.NormalModuleReplacementPlugin(dictionary, (module) => {
    if (/@univerjs.engine-render/.test(module.context)) module.request = "data:text/javascript,export {}";
  });
}

/** Puts files beside the scripts as they are. */
function copies(files) {
  return {
    apply(compiler) {
      compiler.hooks.thisCompilation.tap("copies", (compilation) => {
        compilation.hooks.processAssets.tap("copies", () => {
          for (const [from, to] of Object.entries(files)) {
            compilation.fileDependencies.add(absolute(from));
            compilation.emitAsset(to, new webpack.sources.RawSource(readFileSync(absolute(from))));
          }
        });
      });
    },
  };
}

function absolute(path) {
  return fileURLToPath(new URL(path, import.meta.url));
}
