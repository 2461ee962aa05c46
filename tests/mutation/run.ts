import { existsSync } from "node:fs";
import { mutate } from "./mutate.ts";
import { MUTATED_FOLDERS } from "./mutated-folders.ts";
import { scoreOf } from "./score-of.ts";
import { survivorLine } from "./survivor-line.ts";

/**
 * `npm run mutation -- club shots` alters the code of these folders of `src` one place at a time and says which altered
 * places no test of theirs noticed. Without a name all folders of `MUTATED_FOLDERS` are tried; a path tries that file
 * alone. `--again` keeps what the last run with `--again` found of places whose code and tests have not changed;
 * `--count` says how many places there are. Ends with a failing code below the score that is asked for.
 */
const LEAST_SCORE = 90;

const flags = new Set(process.argv.slice(2).filter((one) => one.startsWith("--")));
const named = process.argv.slice(2).filter((one) => !one.startsWith("--"));
const wishes = (named.length > 0 ? named : Object.keys(MUTATED_FOLDERS)).map((name) => {
  const folder = name in MUTATED_FOLDERS ? name : /^src\/(\w+)\/.*\.ts$/.exec(name)?.[1];
  if (folder === undefined || !(folder in MUTATED_FOLDERS) || (name !== folder && !existsSync(name))) {
    console.error(`"${name}" is neither a file there nor one of ${Object.keys(MUTATED_FOLDERS).join(", ")}.`);
    process.exit(2);
  }
  return { name, folder };
});

const below: string[] = [];
for (const { name, folder } of wishes) {
  const began = Date.now();
  const mutants = await mutate(name === folder ? `src/${folder}/**/*.ts` : name, folder, flags);
  if (flags.has("--count")) continue;
  for (const mutant of mutants) {
    const line = survivorLine(mutant);
    if (line !== undefined) console.log(line);
  }
  const { score, counts } = scoreOf(mutants);
  const minutes = ((Date.now() - began) / 60_000).toFixed(1);
  console.log(
    `${name}: ${score.toFixed(1)} % of ${mutants.length} mutants (${counts}) in ${minutes} minutes`,
  );
  if (!(score >= LEAST_SCORE)) below.push(name);
}
if (below.length > 0) {
  console.log(`Below ${LEAST_SCORE} %: ${below.join(", ")}`);
  process.exitCode = 1;
}
