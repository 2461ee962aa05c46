import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { tsImport } from "tsx/esm/api";

/** The files of the functions, one for each, in folders by family. */
function functionFiles() {
  const folder = fileURLToPath(new URL("src/functions", import.meta.url));
  const families = readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  return families.flatMap(({ name }) =>
    readdirSync(`${folder}/${name}`).map((file) => `${folder}/${name}/${file}`),
  );
}

/** What the doc comments of the functions say: functions.json, and which function of which file has which name. */
export async function functionsMetadata() {
  const { metadataJson, associate, errors } = await generateCustomFunctionsMetadata(functionFiles(), true);
  if (errors.length > 0) throw new Error(errors.join("\n"));
  return { json: metadataJson, associate };
}

/** The page that the help addresses of the functions open. */
export async function functionsPage(json) {
  const { functionPage } = await tsImport("./src/functions/function-page.ts", import.meta.url);
  const { FUNCTIONS } = await tsImport("./src/functions/catalogue.ts", import.meta.url);
  return functionPage(FUNCTIONS, JSON.parse(json).functions);
}
