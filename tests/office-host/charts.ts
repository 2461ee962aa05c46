import { areaName, sheetAreaName } from "../../src/sheets/a1.ts";
import { checked, parseCells, splitAddress } from "./addresses.ts";
import { CHART, LEGEND, LEGEND_ENTRY, SERIES, seriesName } from "./chart-shapes.ts";
import { collection } from "./collection.ts";
import type { RangeObject } from "./range.ts";
import { invalidArgument, itemAlreadyExists } from "./service-error.ts";
import { bagStore, shaped } from "./shapes.ts";
import { readOnly, type WireObject } from "./wire-object.ts";
import type { HeldChart, HeldSeries, HeldSheet, HeldWorkbook } from "./workbook.ts";

/** `Excel.ChartCollection` of a sheet. */
export function charts(workbook: HeldWorkbook, sheet: HeldSheet): WireObject {
  const find = (key: unknown) => sheet.charts.find(({ id, bag }) => id === key || bag.Name === key);
  return collection(
    "ChartCollection",
    () => sheet.charts.map((held) => chart(sheet, held)),
    (key) => {
      const held = find(key);
      return held && chart(sheet, held);
    },
    {
      Add: (kind: string, from: RangeObject, by = "Auto") => {
        const held: HeldChart = { id: `{chart${++workbook.last}}`, bag: {}, series: [], entries: [] };
        const plain = chart(sheet, held);
        plain.scalars!.ChartType!.set!(kind);
        held.bag.Name = `Chart ${workbook.last}`;
        for (const area of sourceColumns(from, by)) {
          addSeries(held, { X: null, Y: sheetAreaName({ sheet: String(from.sheet.bag.Name), area }) });
        }
        sheet.charts.push(held);
        return chart(sheet, held);
      },
    },
  );
}

/** One series for each column or row of the source, as the spreadsheet makes them before anyone says more. */
function sourceColumns({ area }: RangeObject, by: string) {
  const byRows = by === "Rows" || (by === "Auto" && area.columns > area.rows);
  return byRows
    ? Array.from({ length: area.rows }, (_, i) => ({ ...area, row: area.row + i, rows: 1 }))
    : Array.from({ length: area.columns }, (_, i) => ({ ...area, column: area.column + i, columns: 1 }));
}

function addSeries(held: HeldChart, bag: Record<string, unknown>): HeldSeries {
  const series = { bag: { Name: `Series${held.series.length + 1}`, ...bag } };
  held.series.push(series);
  held.entries.push({ Visible: true });
  return series;
}

function chart(sheet: HeldSheet, held: HeldChart): WireObject {
  const plain = shaped("Chart", CHART, bagStore(held.bag));
  const cells = (given: RangeObject | string) =>
    typeof given === "string" ? checked(parseCells(splitAddress(given).cells)) : given.area;
  return {
    ...plain,
    id: held.id,
    scalars: {
      ...plain.scalars,
      Id: readOnly(() => held.id),
      Name: {
        get: () => held.bag.Name,
        set: (name) => {
          if (sheet.charts.some((other) => other !== held && other.bag.Name === name))
            throw itemAlreadyExists();
          held.bag.Name = name;
        },
      },
    },
    children: {
      ...plain.children,
      Series: () => seriesOf(held),
      Legend: () => legend(held),
    },
    methods: {
      SetPosition: (first: RangeObject | string, last: RangeObject | string = first) => {
        const [start, end] = [cells(first), cells(last)];
        const rows = end.row + end.rows - start.row;
        const columns = end.column + end.columns - start.column;
        if (rows < 1 || columns < 1) throw invalidArgument("chart position");
        held.bag.Area = areaName({ row: start.row, column: start.column, rows, columns });
      },
      Delete: () => void sheet.charts.splice(sheet.charts.indexOf(held), 1),
    },
  };
}

function seriesOf(held: HeldChart): WireObject {
  return collection(
    "ChartSeriesCollection",
    () => held.series.map((one) => oneSeries(held, one)),
    undefined,
    {
      Add: (name?: string) => {
        if (name && !seriesName(name)) throw invalidArgument(`series name ${name}`);
        return oneSeries(held, addSeries(held, { X: null, Y: null, ...(name && { Name: name }) }));
      },
    },
  );
}

function oneSeries(held: HeldChart, series: HeldSeries): WireObject {
  const plain = shaped("ChartSeries", SERIES, bagStore(series.bag));
  const at = ({ sheet, area }: RangeObject) => sheetAreaName({ sheet: String(sheet.bag.Name), area });
  return {
    ...plain,
    methods: {
      SetXAxisValues: (given: RangeObject) => {
        series.bag.X = at(given);
      },
      SetValues: (given: RangeObject) => {
        series.bag.Y = at(given);
      },
      Delete: () => {
        const index = held.series.indexOf(series);
        held.series.splice(index, 1);
        held.entries.splice(index, 1);
      },
    },
  };
}

function legend(held: HeldChart): WireObject {
  const store = bagStore(held.bag);
  const plain = shaped("ChartLegend", LEGEND, store, "Legend");
  return {
    ...plain,
    children: {
      ...plain.children,
      LegendEntries: () =>
        collection("ChartLegendEntryCollection", () =>
          held.entries.map((bag) => shaped("ChartLegendEntry", LEGEND_ENTRY, bagStore(bag))),
        ),
    },
  };
}
