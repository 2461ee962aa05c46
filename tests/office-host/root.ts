import { cellName, sheetAreaName } from "../../src/sheets/a1.ts";
import { collection } from "./collection.ts";
import { type RangeObject, rangeAt, ranges } from "./range.ts";
import { invalidArgument, itemAlreadyExists, itemNotFound, ServiceError } from "./service-error.ts";
import { isNameTaken, tables } from "./tables.ts";
import { readOnly, type WireObject } from "./wire-object.ts";
import { cellKey, type HeldWorkbook } from "./workbook.ts";
import { worksheets } from "./worksheet.ts";

/** `Excel.Workbook`: the object that every path of a batch begins at. */
export function root(workbook: HeldWorkbook, references: Map<string, WireObject>): WireObject {
  const selected = () => {
    const sheet = workbook.sheets.find(({ id }) => id === workbook.active)!;
    if (!workbook.selection) {
      throw new ServiceError("InvalidSelection", "The current selection is invalid for this operation.");
    }
    return { sheet, areas: workbook.selection };
  };
  return {
    type: "Workbook",
    children: {
      Worksheets: () => worksheets(workbook),
      Tables: () => tables(workbook),
      Names: () => names(workbook),
      Settings: () => settings(workbook),
      Comments: () => comments(workbook),
      Application: application,
      Functions: functions,
    },
    methods: {
      _RemoveReference: (id: string) => void references.delete(id),
      GetSelectedRanges: () => {
        const { sheet, areas } = selected();
        return {
          type: "RangeAreas",
          kept: true,
          scalars: { AreaCount: readOnly(() => areas.length) },
          children: { Areas: () => ranges(workbook, sheet, areas) },
        };
      },
    },
  };
}

/** `Excel.Functions`, of which only MATCH for an equal text is asked for: it stands for any letters by ? and *. */
function functions(): WireObject {
  return {
    type: "Functions",
    methods: {
      Match: (sought: string, { sheet, area }: RangeObject, kind: number) => {
        if (kind !== 0 || area.columns !== 1) throw invalidArgument("a MATCH that this host does not know");
        const pattern = sought.replace(/~?[\s\S]/g, (one) =>
          one === "*" ? ".*" : one === "?" ? "." : one.at(-1)!.replace(/[\\^$.*+?()[\]{}|/]/, "\\$&"),
        );
        const like = new RegExp(`^${pattern}$`, "is");
        let place = 1;
        while (place <= area.rows) {
          const value = sheet.cells.get(cellKey(area.row + place - 1, area.column))?.value;
          if (typeof value === "string" && like.test(value)) break;
          place++;
        }
        const found = place <= area.rows;
        return {
          type: "FunctionResult",
          scalars: {
            Value: readOnly(() => (found ? place : null)),
            Error: readOnly(() => (found ? null : "#N/A")),
          },
        };
      },
    },
  };
}

function names(workbook: HeldWorkbook): WireObject {
  const find = (key: unknown) =>
    [...workbook.names.keys()].find((name) => name.toLowerCase() === String(key).toLowerCase());
  const item = (name: string): WireObject => ({
    type: "NamedItem",
    id: name,
    scalars: {
      Name: readOnly(() => name),
      Formula: readOnly(() => workbook.names.get(name)?.formula),
      Visible: readOnly(() => true),
    },
    methods: {
      Delete: () => void workbook.names.delete(name),
      GetRange: () => rangeAt(workbook, workbook.sheets[0]!, workbook.names.get(name)!.formula.slice(1)),
    },
  });
  return collection(
    "NamedItemCollection",
    () => [...workbook.names.keys()].map(item),
    (key) => {
      const name = find(key);
      return name === undefined ? undefined : item(name);
    },
    {
      Add: (name: string, given: RangeObject | string) => {
        // A name that reads as a cell, such as AB12 or R1C1, is refused, as is any other sign.
        const cell = /^[A-Za-z]{1,3}\d+$|^[rc]\d*$|^r\d*c\d*$/i.test(name);
        if (cell || !/^[A-Za-z_\\][\w.\\]*$/.test(name)) throw invalidArgument(`name ${name}`);
        if (isNameTaken(workbook, name)) throw itemAlreadyExists();
        const formula =
          typeof given === "string"
            ? given
            : `=${sheetAreaName({ sheet: String(given.sheet.bag.Name), area: given.area })}`;
        workbook.names.set(name, { formula });
        return item(name);
      },
    },
  );
}

function settings(workbook: HeldWorkbook): WireObject {
  const item = (key: string): WireObject => ({
    type: "Setting",
    id: key,
    scalars: {
      Key: readOnly(() => key),
      Value: {
        get: () => workbook.settings.get(key),
        set: (value) => void workbook.settings.set(key, value),
      },
    },
    methods: {
      Delete: () => {
        if (!workbook.settings.delete(key)) throw itemNotFound();
      },
    },
  });
  return collection(
    "SettingCollection",
    () => [...workbook.settings.keys()].map(item),
    (key) => (workbook.settings.has(String(key)) ? item(String(key)) : undefined),
    {
      // Adding a key that is there replaces its value.
      Add: (key: string, value: unknown) => {
        workbook.settings.set(key, value);
        return item(key);
      },
    },
  );
}

function comments(workbook: HeldWorkbook): WireObject {
  return collection("CommentCollection", () => [], undefined, {
    Add: (given: RangeObject | string, content: string) => {
      const { sheet, area } =
        typeof given === "string" ? rangeAt(workbook, workbook.sheets[0]!, given) : given;
      const name = cellName(area.row, area.column);
      if (sheet.comments.has(name)) throw itemAlreadyExists();
      sheet.comments.set(name, content);
      return {
        type: "Comment",
        id: `{comment${++workbook.last}}`,
        scalars: { Content: readOnly(() => content) },
      };
    },
  });
}

/** Calculation and screen updating have no effect to see here; that they were suspended shows in the requests. */
function application(): WireObject {
  return {
    type: "Application",
    methods: { SuspendApiCalculationUntilNextSync: () => {}, SuspendScreenUpdatingUntilNextSync: () => {} },
  };
}
