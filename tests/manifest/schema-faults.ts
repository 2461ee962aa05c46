import { readFileSync } from "node:fs";
import { join } from "node:path";
import { validateXML } from "xmllint-wasm";

/** The main schema, and what it imports under the names it uses. */
const MAIN = "OfficeAppManifestV1_1.taskpane.xsd";
const IMPORTED = ["OfficeAppBasicTypesV1_0.xsd", "TaskPaneAppVersionOverridesV1_0.xsd"];

/** What the platform's published schemas, from a folder, find wrong with a manifest; nothing where it is valid. */
export async function schemaFaults(xml: string, folder: string): Promise<string[]> {
  const read = (name: string) => ({ fileName: name, contents: readFileSync(join(folder, name), "utf8") });
  const { valid, errors } = await validateXML({
    xml: [{ fileName: "manifest.xml", contents: xml }],
    schema: [read(MAIN)],
    preload: IMPORTED.map(read),
  });
  const found = errors.map(({ rawMessage }) => rawMessage);
  return valid || found.length > 0 ? found : ["The schemas refuse the manifest and give no reason."];
}
