import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { isProblem } from "../outcome/problem.ts";
import { newFunctionFiles } from "./new-function-files.ts";

/**
 * `npm run new-function -- FAMILY NAME` writes a function's file and its test from a template, and adds it to the
 * catalogue, to the spreadsheet's script and to README.md. Its test fails until its figures have been filled in.
 */
const [family = "", name = "", top = "."] = process.argv.slice(2);
const text = (file: string) => (existsSync(join(top, file)) ? readFileSync(join(top, file), "utf8") : null);
const files = newFunctionFiles(family, name, text);
if (isProblem(files)) {
  console.error(files.message);
  process.exitCode = 2;
} else {
  for (const [file, content] of files) {
    mkdirSync(join(top, dirname(file)), { recursive: true });
    writeFileSync(join(top, file), content);
    console.log(file);
  }
  console.log(
    "Now fill in what is marked TODO: what it answers in the function's file, a figure with its source in its test,\n" +
      "its words in README.md. The calculation itself belongs into src/club, src/flight, src/stats or src/shots.",
  );
}
