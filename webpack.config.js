import { existsSync, readdirSync, readFileSync } from "node:fs";
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
    copies({ "src/pane/pane.html": "pane.html", "manifest.xml": "manifest.xml", assets: "assets" }),
  ]),
].filter(({ entry }) => Object.values(entry).every((file) => existsSync(file)));

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

/** The names, arguments and help of the functions, read from their doc comments. */
function functionsJson() {
  const input = "./src/functions/spreadsheet.ts";
  return existsSync(input) ? new FunctionsMetadata({ output: "functions.json", input }) : { apply() {} };
}

/** The grid can hyphenate a hundred languages; its cells never do, and the dictionaries weigh 5 MB. */
function withoutHyphenation() {
  const dictionary = /^\.\/[a-z]{2,3}(-[a-z0-9]+)*-[\w-]{8}\.js$/;
  return new webpack.NormalModuleReplacementPlugin(dictionary, (module) => {
    if (/@univerjs.engine-render/.test(module.context)) module.request = "data:text/javascript,export {}";
  });
}

/** Puts files, or whole folders, beside the scripts. ADDRESS is where the add-in will be served from. */
function copies(files) {
  const address = process.env.ADDRESS ?? "https://localhost:3000";
  return {
    apply(compiler) {
      compiler.hooks.thisCompilation.tap("copies", (compilation) => {
        compilation.hooks.processAssets.tap("copies", () => {
          for (const [from, to] of Object.entries(files)) {
            for (const [source, target] of existsSync(from) ? filesUnder(from, to) : []) {
              compilation.fileDependencies.add(absolute(source));
              const bytes = readFileSync(source);
              const content = target.endsWith(".xml")
                ? bytes.toString("utf8").replaceAll("https://localhost:3000", address)
                : bytes;
              compilation.emitAsset(target, new webpack.sources.RawSource(content));
            }
          }
        });
      });
    },
  };
}

function filesUnder(from, to) {
  if (/\.\w+$/.test(from)) return [[from, to]];
  return readdirSync(from).flatMap((name) => filesUnder(`${from}/${name}`, `${to}/${name}`));
}

function absolute(path) {
  return fileURLToPath(new URL(path, import.meta.url));
}
