/** The oldest requirement set that a workbook can be written with; the manifest asks for it. */
export const FLOOR = "1.9";

/** Whether this spreadsheet knows a requirement set of ExcelApi, such as "1.18". */
export function supports(version: string): boolean {
  return Office.context.requirements.isSetSupported("ExcelApi", version);
}
