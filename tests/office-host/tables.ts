import { overlap } from "./addresses.ts";
import { collection } from "./collection.ts";
import { homeOf, type RangeObject, range, rangeAt } from "./range.ts";
import { invalidArgument, itemAlreadyExists } from "./service-error.ts";
import { bagStore, flag, type Shape, shaped, text } from "./shapes.ts";
import { readOnly, type WireObject } from "./wire-object.ts";
import { cellKey, type HeldSheet, type HeldTable, type HeldWorkbook } from "./workbook.ts";

const TABLE: Shape = {
  scalars: { Style: text, ShowFilterButton: flag, ShowBandedRows: flag },
};

/** `Excel.TableCollection` of one sheet, or of the whole workbook. */
export function tables(workbook: HeldWorkbook, sheet?: HeldSheet): WireObject {
  const all = () =>
    (sheet ? [sheet] : workbook.sheets).flatMap((home) => home.tables.map((held) => ({ home, held })));
  return collection(
    "TableCollection",
    () => all().map(({ home, held }) => table(workbook, home, held)),
    (key) =>
      all()
        .filter(
          ({ held }) => held.id === key || String(held.bag.Name).toLowerCase() === String(key).toLowerCase(),
        )
        .map(({ home, held }) => table(workbook, home, held))[0],
    {
      Add: (given: RangeObject | string, headings: boolean) => {
        const from =
          typeof given === "string" ? rangeAt(workbook, sheet ?? workbook.sheets[0]!, given) : given;
        const { sheet: home, area } = from;
        if (home.tables.some((other) => overlap(other.area, area)))
          throw invalidArgument("table over a table");
        if (home.merges.some((merge) => overlap(merge, area))) throw invalidArgument("table over a merge");
        if (!headings || area.rows < 2) throw invalidArgument("a table without headings or rows");
        const id = ++workbook.last;
        const held: HeldTable = {
          id: String(id),
          area,
          bag: {
            Name: `Table${id}`,
            Style: "TableStyleMedium2",
            ShowFilterButton: true,
            ShowBandedRows: true,
          },
        };
        // Headings are always text; an empty one gets a name.
        for (let c = 0; c < area.columns; c++) {
          const key = cellKey(area.row, area.column + c);
          home.cells.set(key, { value: String(home.cells.get(key)?.value ?? `Column${c + 1}`) });
        }
        home.tables.push(held);
        return table(workbook, home, held);
      },
    },
  );
}

/** Table names and defined names share one set. */
export const isNameTaken = (workbook: HeldWorkbook, name: string) =>
  [
    ...workbook.names.keys(),
    ...workbook.sheets.flatMap((sheet) => sheet.tables.map(({ bag }) => String(bag.Name))),
  ].some((other) => other.toLowerCase() === name.toLowerCase());

function table(workbook: HeldWorkbook, sheet: HeldSheet, held: HeldTable): WireObject {
  const plain = shaped("Table", TABLE, bagStore(held.bag));
  return {
    ...plain,
    id: held.id,
    scalars: {
      ...plain.scalars,
      Id: readOnly(() => held.id),
      Name: {
        get: () => held.bag.Name,
        set: (name) => {
          if (!/^[A-Za-z_\\][\w.\\]*$/.test(String(name))) throw invalidArgument(`table name ${name}`);
          if (held.bag.Name !== name && isNameTaken(workbook, String(name))) throw itemAlreadyExists();
          held.bag.Name = name;
        },
      },
    },
    children: { Worksheet: () => homeOf(workbook, sheet) },
    methods: {
      GetRange: () => range(workbook, sheet, held.area),
      GetHeaderRowRange: () => range(workbook, sheet, { ...held.area, rows: 1 }),
      // Of ExcelApi 1.13: the headings stay in their row, and the new area overlaps the old one.
      Resize: (given: RangeObject | string) => {
        const { sheet: home, area } = typeof given === "string" ? rangeAt(workbook, sheet, given) : given;
        const { row, column } = held.area;
        if (home !== sheet || area.row !== row || area.column !== column || area.rows < 2) {
          throw invalidArgument("a table resized away from its headings");
        }
        if (sheet.tables.some((other) => other !== held && overlap(other.area, area)))
          throw invalidArgument("table over a table");
        held.area = area;
        for (let c = 0; c < area.columns; c++) {
          const key = cellKey(row, column + c);
          sheet.cells.set(key, { value: String(sheet.cells.get(key)?.value ?? `Column${c + 1}`) });
        }
      },
      Delete: () => void sheet.tables.splice(sheet.tables.indexOf(held), 1),
    },
  };
}
