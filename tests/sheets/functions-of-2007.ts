/**
 * Functions that stand in our sheets and that a spreadsheet of 2007 knows, hence every newer one. Source: ECMA-376
 * (2006), Part 4, section 3.17.7, the function reference of the file format of that release. LibreOffice knows them too.
 */
export const FUNCTIONS_OF_2007: ReadonlySet<string> = new Set([
  "ABS",
  "AND",
  "AVERAGE",
  "BETAINV",
  "CHIINV",
  "COLUMN",
  "COS",
  "COUNT",
  "COUNTA",
  "COUNTIF",
  "EXP",
  "FINV",
  "FIND",
  "IF",
  "IFERROR",
  "INDEX",
  "INT",
  "ISBLANK",
  "ISERROR",
  "ISNUMBER",
  "ISTEXT",
  "LEFT",
  "LEN",
  "LN",
  "MATCH",
  "MAX",
  "MEDIAN",
  "MID",
  "MIN",
  "MOD",
  "N",
  "NA",
  "NOT",
  "OR",
  "PI",
  "RIGHT",
  "ROUND",
  "ROW",
  "ROWS",
  "SIGN",
  "SIN",
  "SQRT",
  "SUBSTITUTE",
  "SUM",
  "SUMPRODUCT",
  "TEXT",
  "TRIM",
  "UPPER",
  "VALUE",
]);

/** Names of the functions that a formula calls; text in quotes and names of sheets are not looked into. */
export function functionsIn(formula: string): string[] {
  const bare = formula.replace(/"(""|[^"])*"/g, '""').replace(/'(''|[^'])*'!/g, "");
  return [...bare.matchAll(/([A-Z_][A-Z0-9._]*)\(/gi)].map(([, name]) => name!.toUpperCase());
}
