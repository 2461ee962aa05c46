import { invalid, type Outcome } from "../outcome/problem.ts";

/**
 * The files that a new function needs, by path: its own, its test, and those that list it, as they are with it.
 *
 * @param family one of the catalogue's families: balance, set, shots, flight
 * @param name as in a workbook, without the namespace, such as `LIE.CHANGE`
 * @param text what a file holds now; null where there is none
 */
export function newFunctionFiles(
  family: string,
  name: string,
  text: (file: string) => string | null,
): Outcome<ReadonlyMap<string, string>> {
  const heading = FAMILIES.get(family);
  if (!heading) return invalid(`FAMILY is "${family}"; one of ${[...FAMILIES.keys()].join(", ")} would do.`);
  if (!/^[A-Z][A-Z0-9]*(\.[A-Z][A-Z0-9]*)*$/.test(name))
    return invalid(`NAME is "${name}"; capital letters, parted by points, would do: LIE.CHANGE.`);
  const file = name.toLowerCase().replaceAll(".", "-");
  const own = `src/functions/${family}/${file}.ts`;
  const [catalogue, spreadsheet, readme] = [CATALOGUE, SPREADSHEET, README].map((path) => text(path) ?? "");
  const spec = name.replaceAll(".", "_");
  if (text(own) !== null || catalogue!.includes(`\n  ${spec},`))
    return invalid(`There is a function ${name} already; another name would do.`);
  return new Map([
    [own, functionFile(name, spec)],
    [`tests/functions/${family}/${file}.test.ts`, testFile(family, file, name, spec)],
    [
      CATALOGUE,
      withLine(
        withImport(catalogue!, `import { ${spec} } from "./${family}/${file}.ts";`),
        `  // ${heading}\n`,
        /^ {2}[A-Z][A-Z_0-9]*,\n/,
        `  ${spec},\n`,
      ),
    ],
    [SPREADSHEET, withImport(spreadsheet!, `import "./${family}/${file}.ts";`)],
    [
      README,
      withLine(
        readme!,
        `| ${heading} | |\n`,
        /^\|[^\n]*\n/,
        `| \`CLUB.${name}(value)\` | TODO: what it answers. |\n`,
      ),
    ],
  ]);
}

const CATALOGUE = "src/functions/catalogue.ts";
const SPREADSHEET = "src/functions/spreadsheet.ts";
const README = "README.md";
const FAMILIES: ReadonlyMap<string, string> = new Map([
  ["balance", "Balance"],
  ["set", "Set"],
  ["shots", "Shots"],
  ["flight", "Flight"],
]);

/** Adds an import among the others, in the order of their files. */
function withImport(text: string, line: string): string {
  const from = (one: string) => /"([^"]+)"/.exec(one)?.[1]?.replace(/\.ts$/, "") ?? "";
  const lines = text.split("\n");
  const imports = lines.flatMap((one, at) => (/^import .*"\.\//.test(one) ? [at] : []));
  const before = imports.find((at) => from(lines[at]!) > from(line)) ?? imports.at(-1)! + 1;
  return [...lines.slice(0, before), line, ...lines.slice(before)].join("\n");
}

/** Adds a line at the end of the run of lines of a kind that follows a heading. */
function withLine(text: string, heading: string, more: RegExp, line: string): string {
  let at = text.indexOf(heading) + heading.length;
  for (let found = more.exec(text.slice(at)); found; found = more.exec(text.slice(at))) at += found[0].length;
  return text.slice(0, at) + line + text.slice(at);
}

function functionFile(name: string, spec: string): string {
  const call = `${name[0]!.toLowerCase()}${name
    .slice(1)
    .toLowerCase()
    .replace(/\.([a-z0-9])/g, (_, letter: string) => letter.toUpperCase())}`;
  return `import { unavailable } from "../../outcome/problem.ts";
import { answerCells } from "../answer-cells.ts";
import { figure } from "../common-arguments.ts";
import type { FunctionSpec } from "../define-function.ts";

export const ${spec}: FunctionSpec = {
  id: "${name}",
  arguments: [figure("value", "TODO: what would do")],
  shape: "one",
  example: { call: [1], answer: "TODO", source: "TODO: where the figure comes from" },
  // TODO: one call into the folder that does the work.
  answer: () => unavailable("${name} is not written yet."),
};

/**
 * TODO: what it answers, in one sentence.
 * @customfunction ${name}
 * @helpurl https://localhost:3000/functions.html#${name}
 * @param {any[][]} value TODO: what it is, and its unit.
 * @returns {any[][]} TODO: what is answered, and its unit.
 */
export function ${call}(value: any[][]): any[][] {
  return answerCells(${spec}, [value]);
}
`;
}

function testFile(family: string, file: string, name: string, spec: string): string {
  const imports = [
    `import { callFunction } from "../../../src/functions/define-function.ts";`,
    `import { ${spec} } from "../../../src/functions/${family}/${file}.ts";`,
  ];
  // The linter wants imports in the order of their files.
  if (family < "define-function") imports.reverse();
  return `import { expect, test } from "vitest";
${imports.join("\n")}

test("${name} answers a published figure", () => {
  // TODO: source, and a figure that is not the worked example's.
  expect(callFunction(${spec}, [2])).toBe("TODO");
});

test("${name} says which argument is wrong", () => {
  expect(callFunction(${spec}, ["heavy"])).toMatchObject({ message: expect.stringContaining("value") });
});
`;
}
