import { execFileSync } from "node:child_process";
import { copyFileSync, existsSync, mkdirSync, readFileSync } from "node:fs";
import { homedir } from "node:os";
import { dirname, resolve } from "node:path";
import { sideloadSteps } from "./sideload-steps.ts";

/** Puts the built manifest where the spreadsheet on this machine finds it: `sideload.ts [dist/manifest.xml]`. */
const manifest = resolve(process.argv[2] ?? "dist/manifest.xml");
if (!existsSync(manifest)) {
  console.error(`There is no ${manifest}; run "npm run build" first.`);
  process.exitCode = 1;
} else {
  const id = /<Id>(.*?)<\/Id>/.exec(readFileSync(manifest, "utf8"))?.[1] ?? "bay-and-bench";
  const { copyTo, run, next } = sideloadSteps(process.platform, homedir(), manifest, id);
  if (copyTo) {
    mkdirSync(dirname(copyTo), { recursive: true });
    copyFileSync(manifest, copyTo);
  }
  if (run) execFileSync(run[0]!, run.slice(1), { stdio: "inherit" });
  console.log(next);
}
