import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";

const NAMES = ["soffice", "libreoffice", "soffice.com"];
const USUAL_FOLDERS = [
  "/usr/bin",
  "/usr/lib/libreoffice/program",
  "/Applications/LibreOffice.app/Contents/MacOS",
  "C:\\Program Files\\LibreOffice\\program",
];

/** Where LibreOffice stands on this machine, or null. */
export function findLibreOffice(): string | null {
  const folders = [...(process.env.PATH ?? "").split(delimiter).filter(Boolean), ...USUAL_FOLDERS];
  return folders.flatMap((folder) => NAMES.map((name) => join(folder, name))).find(canRun) ?? null;
}

function canRun(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
