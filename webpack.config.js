import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import FunctionsMetadata from "custom-functions-metadata-plugin";
import { EsbuildPlugin } from "esbuild-loader";
import { tsImport } from "tsx/esm/api";
import webpack from "webpack";

/** The sizes of units as numbers, worked out now, so that no script has to carry the units library. */
const { QUANTITY_SIZES } = await tsImport("./src/units/quantity-sizes.ts", import.meta.url);
const unitSizes = new webpack.NormalModuleReplacementPlugin(/\/quantity-sizes\.ts$/, (module) => {
  const text = `export const QUANTITY_SIZES = ${JSON.stringify(QUANTITY_SIZES)}`;
  module.request = `data:text/javascript,${encodeURIComponent(text)}`;
});

/**
 * What `npm run build` makes, each part by its name: `page` is the open grid with the pane beside it, all that
 * `npm start` needs; `functions` and `pane` are the add-in. `webpack --config-name page` builds one of them.
 */
export default [
  build("page", { page: "./src/hosts/workbench/page.ts" }, "dist/workbench", [
    copies("src/hosts/workbench/page.html", "index.html"),
    functionsHelp(),
    ...functionsPage(),
    withoutHyphenation(),
  ]),
  build("functions", { functions: "./src/functions/spreadsheet.ts" }, "dist", [
    functionsTied(),
    ...functionsPage(),
  ]),
];

function build(name, entry, folder, plugins) {
  return {
    name,
    entry,
    plugins: [unitSizes, ...plugins],
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

/** The files of the functions, one for each, in folders by family. */
function functionFiles() {
  const folder = "src/functions";
  const families = readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  return families.flatMap(({ name }) =>
    readdirSync(`${folder}/${name}`).map((file) => absolute(`${folder}/${name}/${file}`)),
  );
}

/** Emits functions.json, and ties each function in the script to its name in the spreadsheet. */
function functionsTied() {
  return new FunctionsMetadata({ output: "functions.json", input: functionFiles() });
}

/** Emits functions.json alone: the page has its own way of tying functions, but shows the same help. */
function functionsHelp() {
  return emits("functions.json", metadataText);
}

async function metadataText() {
  const { metadataJson, errors } = await generateCustomFunctionsMetadata(functionFiles(), true);
  if (errors.length > 0) throw new Error(errors.join("\n"));
  return metadataJson;
}

/** The page that the help addresses of the functions open, with its styles. */
function functionsPage() {
  const page = emits("functions.html", async () => {
    const { functionPage } = await tsImport("./src/functions/function-page.ts", import.meta.url);
    const { FUNCTIONS } = await tsImport("./src/functions/catalogue.ts", import.meta.url);
    return functionPage(FUNCTIONS, JSON.parse(await metadataText()).functions);
  });
  return [page, copies("src/functions/function-page.css", "functions.css")];
}

/** The grid can hyphenate a hundred languages; its cells never do, and the dictionaries weigh 5 MB. */
function withoutHyphenation() {
  const dictionary = /^\.\/[a-z]{2,3}(-[a-z0-9]+)*-[\w-]{8}\.js$/;
  return new webpack.NormalModuleReplacementPlugin(dictionary, (module) => {
    if (/@univerjs.engine-render/.test(module.context)) module.request = "data:text/javascript,export {}";
  });
}

/** Puts a file beside the scripts. */
function emits(name, content) {
  return {
    apply(compiler) {
      compiler.hooks.thisCompilation.tap("emits", (compilation) => {
        compilation.hooks.processAssets.tapPromise("emits", async () => {
          compilation.emitAsset(name, new webpack.sources.RawSource(await content(compilation)));
        });
      });
    },
  };
}

/** Puts a file beside the scripts as it is. */
function copies(from, to) {
  return emits(to, async (compilation) => {
    compilation.fileDependencies.add(absolute(from));
    return readFileSync(absolute(from));
  });
}

function absolute(path) {
  return fileURLToPath(new URL(path, import.meta.url));
}
