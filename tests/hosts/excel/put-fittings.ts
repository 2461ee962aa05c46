/** Puts a table "Fittings" of two shots onto a sheet, away from its corner. */
export function putFittings(sheet: Excel.Worksheet): void {
  sheet.getRange("B2:C4").formulas = [
    ["Build", "Carry"],
    ["'light", 151.25],
    ["'heavy", 152],
  ];
  sheet.tables.add("B2:C4", true).name = "Fittings";
}
