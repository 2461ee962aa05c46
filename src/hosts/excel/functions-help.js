import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { tsImport } from "tsx/esm/api";

const FUNCTIONS_FOLDER = fileURLToPath(new URL("../../functions/", import.meta.url));

/** The files of the functions, one for each, in folders by family. */
function functionFiles() {
  const families = readdirSync(FUNCTIONS_FOLDER, { withFileTypes: true }).filter((entry) =>
    entry.isDirectory(),
  );
  return families.flatMap(({ name }) =>
    readdirSync(FUNCTIONS_FOLDER + name).map((file) => `${FUNCTIONS_FOLDER}${name}/${file}`),
  );
}

/** What the doc comments of the functions say: functions.json, and which function of which file has which name. */
export async function functionsMetadata() {
  const { metadataJson, associate, errors } = await generateCustomFunctionsMetadata(functionFiles(), true);
  if (errors.length > 0) throw new Error(errors.join("\n"));
  return { json: metadataJson, associate };
}

/** Functions.json, the page that the help addresses of the functions open, and its style, by file name. */
export async function functionsHelp() {
  const { json } = await functionsMetadata();
  const { functionPage } = await tsImport("../../functions/function-page.ts", import.meta.url);
  const { FUNCTIONS } = await tsImport("../../functions/catalogue.ts", import.meta.url);
  return {
    "functions.json": json,
    "functions.html": functionPage(FUNCTIONS, JSON.parse(json).functions),
    "functions.css": readFileSync(`${FUNCTIONS_FOLDER}function-page.css`, "utf8"),
  };
}

/** The two icons that the help page shows, for a build that has not got every icon beside it (`build-addin.ts`). */
export async function helpIcons() {
  const { renderIcon } = await tsImport("./icons/render-icons.ts", import.meta.url);
  return {
    "assets/pane-64-light.png": renderIcon("pane", 64, "light").asPng(),
    "assets/pane-64-dark.png": renderIcon("pane", 64, "dark").asPng(),
  };
}
