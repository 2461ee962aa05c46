import { execFileSync } from "node:child_process";
import { copyFileSync, existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { homedir } from "node:os";
import { dirname, resolve } from "node:path";
import { sideloadSteps } from "./sideload-steps.ts";

/**
 * Puts the built manifest where the spreadsheet on this machine finds it: `sideload.ts [dist/manifest.xml]`. With
 * `--stop` it goes from there again.
 */
const stop = process.argv.includes("--stop");
const manifest = resolve(process.argv.slice(2).find((word) => word !== "--stop") ?? "dist/manifest.xml");
if (!existsSync(manifest)) {
  console.error(`There is no ${manifest}; run "npm run build" first.`);
  process.exitCode = 1;
} else {
  const id = /<Id>(.*?)<\/Id>/.exec(readFileSync(manifest, "utf8"))?.[1] ?? "bay-and-bench";
  const { copy, add, remove, next } = sideloadSteps(process.platform, homedir(), manifest, id);
  if (copy && stop) rmSync(copy, { force: true });
  if (copy && !stop) {
    mkdirSync(dirname(copy), { recursive: true });
    copyFileSync(manifest, copy);
  }
  const command = stop ? remove : add;
  if (command) execFileSync(command[0]!, command.slice(1), { stdio: "inherit" });
  console.log(stop ? "The spreadsheet forgets Bay & Bench when it starts anew." : next);
}
