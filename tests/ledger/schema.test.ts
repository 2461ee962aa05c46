import { readFileSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import { LEDGER, SCHEMA_VERSION, type Schema, SHOTS } from "../../src/ledger/schema.ts";

const table = ({ table: name, sheet, key, columns }: Schema) =>
  [
    `## ${name}`,
    "",
    `On the sheet "${sheet}"; no two rows share ${columns.find((column) => column.key === key)!.heading}.`,
    "",
    "| heading | key | type | unit | meaning |",
    "|---|---|---|---|---|",
    ...columns.map(({ heading, key: own, type, unit, meaning }) =>
      `| ${[heading, `\`${own}\``, type, unit, meaning].join(" | ")} |`.replace(/ +/g, " "),
    ),
    "",
  ].join("\n");

/** The document that README.md links; `WRITE=yes npx vitest run tests/ledger/schema.test.ts` writes it anew. */
const DOCUMENT = `# Columns of the ledger

Form ${SCHEMA_VERSION}. Workbooks and delimited text have the headings, Parquet the keys; columns stand in any order, and
columns of a shop's own may stand between them. Types: \`text\`; \`number\`, kept to full double precision; \`whole\` for
counts; \`day\` as \`yyyy-mm-dd\`, in a workbook a date; \`truth\` for yes and no. Units are these whatever a session was
shown in, so that the tables of all shops are of one kind; sheets and the pane speak in the units that were chosen.

${table(LEDGER)}
${table(SHOTS)}`;

test("the schema is documented column by column, in a file that README.md links", () => {
  const file = "src/ledger/columns.md";
  if (process.env.WRITE === "yes") writeFileSync(file, DOCUMENT);
  expect(readFileSync(file, "utf8")).toBe(DOCUMENT);
  expect(readFileSync("README.md", "utf8")).toContain(file);
});

test("no two columns of a table have the same key or heading", () => {
  for (const { columns } of [LEDGER, SHOTS])
    for (const of of ["key", "heading"] as const)
      expect(new Set(columns.map((column) => column[of])).size).toBe(columns.length);
});
