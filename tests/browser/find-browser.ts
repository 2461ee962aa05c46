import { existsSync } from "node:fs";
import { join } from "node:path";

/** Where Chrome, Edge and Chromium are installed on the systems people use. */
const USUAL_PLACES = [
  "/usr/bin/google-chrome",
  "/usr/bin/google-chrome-stable",
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/microsoft-edge",
  "/opt/google/chrome/chrome",
  "/snap/bin/chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  ...[process.env.PROGRAMFILES, process.env["PROGRAMFILES(X86)"], process.env.LOCALAPPDATA]
    .filter((folder) => folder !== undefined)
    .flatMap((folder) => [
      join(folder, "Google/Chrome/Application/chrome.exe"),
      join(folder, "Microsoft/Edge/Application/msedge.exe"),
    ]),
];

/**
 * A browser for the tests: the one CHROME_PATH names, else one that is installed, else the one that came with the
 * packages (Linux only).
 */
export async function findBrowser(): Promise<string> {
  const installed = [process.env.CHROME_PATH, ...USUAL_PLACES].find((path) => path && existsSync(path));
  if (installed) return installed;
  const { default: packaged } = await import("@sparticuz/chromium");
  return packaged.executablePath();
}
