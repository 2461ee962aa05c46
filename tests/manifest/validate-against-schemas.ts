import { readFileSync } from "node:fs";
import { schemaFaults } from "./schema-faults.ts";

/**
 * `tsx tests/manifest/validate-against-schemas.ts <folder of schemas> [manifest]`: exit 0 where the manifest is
 * valid, 1 with the faults where it is not. It also tries a broken copy, so that a validator that passes everything
 * is found out.
 */
const [folder, file = "manifest.xml"] = process.argv.slice(2);
if (!folder) {
  console.error("Give the folder that holds the schemas.");
  process.exit(2);
}
const xml = readFileSync(file, "utf8");
const faults = await schemaFaults(xml, folder);
const broken = await schemaFaults(
  xml.replace("<Permissions>", "<Permission>").replace("</Permissions>", "</Permission>"),
  folder,
);
if (broken.length === 0) faults.push("The schemas find nothing wrong with a manifest that is broken.");
for (const fault of faults) console.error(fault);
if (faults.length === 0) console.log(`${file} is valid.`);
process.exitCode = faults.length === 0 ? 0 : 1;
