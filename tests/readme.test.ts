import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { planSet } from "../src/club/plan-set.ts";
import { readSetFile } from "../src/club/read-set.ts";
import { FUNCTIONS } from "../src/functions/catalogue.ts";
import { USAGE } from "../src/hosts/file/command-line.ts";
import { answer } from "./club/answer.ts";

// What README.md tells is held to what there is.
const top = new URL("../", import.meta.url);
const readme = readFileSync(new URL("README.md", top), "utf8");
const { scripts, dependencies, devDependencies } = JSON.parse(
  readFileSync(new URL("package.json", top), "utf8"),
);

it("has every function in its tables with the arguments it takes, and no other", () => {
  const told = [...readme.matchAll(/^\| `CLUB\.([A-Z.]+)\(([^)]*)\)`/gm)].map(
    ([, id, list]) => `${id}(${list})`,
  );
  const there = FUNCTIONS.map(({ id, arguments: all }) => {
    const list = all.map(({ name, otherwise }) => (otherwise === undefined ? name : `[${name}]`));
    return `${id}(${list.join(", ")})`;
  });
  expect(told.sort()).toEqual(there.sort());
});

it("shows a set file that can be read and planned as it stands", () => {
  const [, example] = /```text\n([^`]*)```/.exec(readme)!;
  const request = answer(readSetFile(example!));
  expect(answer(planSet(request)).clubs.map(({ club }) => club)).toEqual(["6", "7"]);
});

it("names only scripts that there are, and each that a user needs", () => {
  const told = new Set(
    [...readme.matchAll(/npm (?:run (?:--silent )?)?(start|[a-z]+(?::[a-z]+)?)\b/g)].map(([, name]) => name!),
  );
  for (const name of told) if (!["ci", "cit"].includes(name)) expect(Object.keys(scripts)).toContain(name);
  for (const name of ["start", "compare", "certs", "dev:https", "sideload"])
    expect([...told]).toContain(name);
});

it("explains every option of the command line, and none that is not there", () => {
  const options = (text: string) => new Set([...text.matchAll(/--([a-z]+)/g)].map(([, name]) => name!));
  for (const name of options(USAGE)) expect(readme).toContain(`| \`--${name}`);
  const told = [...readme.matchAll(/^\| `--([a-z]+)/gm)].map(([, name]) => name!);
  expect(told.filter((name) => !options(USAGE).has(name))).toEqual([]);
});

it("says in DEVELOPERS.md of every package why it is there", () => {
  const reasons = readFileSync(new URL("DEVELOPERS.md", top), "utf8");
  const [, table] = /^## Libraries and why\n([\s\S]*?)\n#/m.exec(reasons)!;
  const told = [...table!.matchAll(/^\| (`[^|]+`) \| \S/gm)].flatMap(
    ([, names]) => names!.match(/[^`, ]+/g)!,
  );
  const named = (name: string) => told.some((one) => one === name || one === name.replace(/\/.*/, "/*"));
  const packages = Object.keys({ ...dependencies, ...devDependencies });
  expect(packages.filter((name) => !named(name))).toEqual([]);
  const there = (one: string) =>
    packages.some((name) => name === one || (one.endsWith("/*") && name.startsWith(one.slice(0, -1))));
  expect(told.filter((one) => !there(one))).toEqual([]);
});
