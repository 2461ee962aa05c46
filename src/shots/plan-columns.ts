import { isProblem } from "../outcome/problem.ts";
import { factor } from "../units/factor.ts";
import { unitOf } from "../units/unit-of.ts";
import { COLUMN_NAMES, type ColumnKey } from "./column-names.ts";
import { bareUnit } from "./header-row.ts";
import { metricOf } from "./metrics.ts";
import { isMetricKey, type PlannedColumn } from "./planned-column.ts";
import { type Heading, readHeader } from "./read-header.ts";
import type { ReadOptions } from "./read-options.ts";
import type { TableProblem } from "./shot-table.ts";

export interface ColumnPlan {
  readonly columns: PlannedColumn[];
  readonly problems: TableProblem[];
}

const KEYS: ReadonlySet<string> = new Set([...COLUMN_NAMES.values()].map((name) => name.key));

/**
 * Decides what each column holds. One column stands for one thing: the first with a proper name, or else the first
 * with a weak one such as "Shaft" for the build. What the fitter says goes before what the headings say.
 *
 * @param line the line of the text the header stands in, for the problems
 * @param unitCells the row of units below the header, if there is one
 */
export function planColumns(
  headers: readonly string[],
  unitCells: readonly string[] | null,
  line: number,
  options: ReadOptions,
): ColumnPlan {
  const problems: TableProblem[] = [];
  const headings = headers.map((header, index) => asked(readHeader(header), index, options));
  const taken = takeKeys(headings, options);
  const columns = headings.map((heading, index): PlannedColumn => {
    const header = headers[index]!.trim();
    const tell = (found: string, message: string) =>
      problems.push({
        row: line,
        column: index + 1,
        found,
        message: `Row ${line}, column ${index + 1}: ${message}`,
      });
    const key = taken.get(index) ?? null;
    if (key === null && heading.key !== null && !heading.weak) {
      tell(
        header,
        `"${header}" stands for what column ${firstOf(taken, heading.key)} already holds; it is kept as it is.`,
      );
    }
    const plan = { index, header, key, decimal: ".", leftPositive: heading.leftPositive } as const;
    if (!isMetricKey(key)) return { ...plan, unit: "", unitFrom: "none" };
    const { unit: usual } = metricOf(key);
    if (usual === "") return { ...plan, unit: "", unitFrom: "none" };
    const stated: [string | undefined, PlannedColumn["unitFrom"]][] = [
      [options.units?.[index + 1], "header"],
      [heading.unit, "header"],
      [unitCells?.[index], "row"],
    ];
    for (const [spelling, unitFrom] of stated) {
      if (!spelling?.trim()) continue;
      const unit = unitOf(bareUnit(spelling));
      if (unit && !isProblem(factor(unit.name, usual))) return { ...plan, unit: unit.name, unitFrom };
      tell(
        spelling,
        `found "${spelling.trim()}" as the unit of "${header}"; ${usual} would do, and is taken.`,
      );
    }
    return { ...plan, unit: usual, unitFrom: "assumed" };
  });
  return { columns, problems };
}

/** Whose corrections name a key that there is no such thing as are left aside. */
function asked(heading: Heading, index: number, options: ReadOptions): Heading {
  const wish = options.columns?.[index + 1];
  if (wish === undefined || (wish !== null && !KEYS.has(wish))) return heading;
  return { ...heading, key: wish, weak: false };
}

function takeKeys(headings: readonly Heading[], options: ReadOptions): Map<number, ColumnKey> {
  const taken = new Map<number, ColumnKey>();
  const held = new Set<ColumnKey>();
  const take = (wanted: (heading: Heading, index: number) => boolean) => {
    headings.forEach((heading, index) => {
      if (heading.key === null || held.has(heading.key) || taken.has(index) || !wanted(heading, index))
        return;
      held.add(heading.key);
      taken.set(index, heading.key);
    });
  };
  take((_, index) => options.columns?.[index + 1] !== undefined);
  take((heading) => !heading.weak);
  take(() => true);
  return taken;
}

function firstOf(taken: ReadonlyMap<number, ColumnKey>, key: ColumnKey): number {
  for (const [index, held] of taken) if (held === key) return index + 1;
  return 0;
}
