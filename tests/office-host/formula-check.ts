import { invalidArgument } from "./service-error.ts";
import type { HeldWorkbook } from "./workbook.ts";

/**
 * Refuses a formula that the spreadsheet would refuse on entry: open brackets or quotes, a sheet that is not there,
 * a table that is not there. What it calculates to is not worked out here.
 */
export function checkFormula(workbook: HeldWorkbook, formula: string): void {
  const refuse = () => {
    throw invalidArgument(`formula ${formula}`);
  };
  const sheets = workbook.sheets.map(({ bag }) => String(bag.Name).toLowerCase());
  const bare = formula.replace(/"(""|[^"])*"/g, '""').replace(/'((?:''|[^'])+)'!/g, (_, name: string) => {
    if (!sheets.includes(name.replaceAll("''", "'").toLowerCase())) refuse();
    return "";
  });
  for (const [, name] of bare.matchAll(/([A-Za-z_][\w.]*)!/g))
    if (!sheets.includes(name!.toLowerCase())) refuse();
  const tables = workbook.sheets.flatMap((sheet) =>
    sheet.tables.map(({ bag }) => String(bag.Name).toLowerCase()),
  );
  for (const [, name] of bare.matchAll(/([A-Za-z_]\w*)\[/g))
    if (!tables.includes(name!.toLowerCase())) refuse();
  const rest = bare.replace(/\[[^\]]*\]/g, "").replaceAll('""', "");
  let depth = 0;
  for (const sign of rest) {
    if (sign === "(" || sign === "{") depth++;
    if (sign === ")" || sign === "}") depth--;
    if (depth < 0) refuse();
  }
  if (depth !== 0 || /["']/.test(rest) || /[-+*/^&=<>,(]$/.test(rest)) refuse();
}
