/** What stands in a workbook before something is written. */
export interface Standing {
  readonly sheets: readonly { readonly id: string; readonly name: string }[];
  readonly names: readonly string[];
  readonly tables: readonly string[];
  /** The sheet in front, by its identifier. */
  readonly active: string;
}

/** Reads the names of sheets, named areas and tables, and which sheet is in front, in one request. */
export async function readStanding(context: Excel.RequestContext): Promise<Standing> {
  const { worksheets, names, tables } = context.workbook;
  worksheets.load("items/id,items/name");
  names.load("items/name");
  tables.load("items/name");
  const front = worksheets.getActiveWorksheet();
  front.load("id");
  await context.sync();
  return {
    sheets: worksheets.items.map(({ id, name }) => ({ id, name })),
    names: names.items.map(({ name }) => name),
    tables: tables.items.map(({ name }) => name),
    active: front.id,
  };
}
