import { isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import type { ReadOptions } from "../shots/read-options.ts";
import type { Host } from "./host.ts";
import { isRecord } from "./is-record.ts";

/** What the columns of one kind of table hold, as the fitter once put it right. */
export type Mapping = Pick<ReadOptions, "columns" | "units">;

const KEY = "bench-mappings";

/** A shop has a handful of tables; beyond this the one that was not used for longest goes. */
const MOST = 40;

/** The mapping that was remembered in this workbook for tables with this signature, or null. */
export async function recallMapping(host: Host, signature: string): Promise<Mapping | null> {
  if (signature === "") return null;
  const all = await recallAll(host);
  return isProblem(all) ? null : (all.find(([known]) => known === signature)?.[1] ?? null);
}

/**
 * Remembers a mapping for all tables with this signature; an empty mapping forgets it. A table without headings has
 * no signature and is not remembered. Where what is remembered cannot be fetched nothing is, for it would be lost.
 */
export async function rememberMapping(
  host: Host,
  signature: string,
  mapping: Mapping,
): Promise<Outcome<true>> {
  if (signature === "") return true;
  const before = await recallAll(host);
  if (isProblem(before)) return before;
  const others = before.filter(([known]) => known !== signature);
  const { columns = {}, units = {} } = mapping;
  const empty = Object.keys(columns).length === 0 && Object.keys(units).length === 0;
  const after = empty ? others : [...others, [signature, { columns, units }] as const].slice(-MOST);
  if (JSON.stringify(after) === JSON.stringify(before)) return true;
  const kept = await host.keep(KEY, JSON.stringify({ version: 1, mappings: after }));
  return isProblem(kept) ? kept : true;
}

async function recallAll(host: Host): Promise<Outcome<readonly (readonly [string, Mapping])[]>> {
  const text = await host.recall(KEY).catch((error) => unavailable(String(error)));
  if (isProblem(text)) return text;
  try {
    const found: unknown = JSON.parse(text ?? "null");
    if (!isRecord(found) || found.version !== 1 || !Array.isArray(found.mappings)) return [];
    return found.mappings.flatMap(toEntry);
  } catch {
    return [];
  }
}

/** Leaves out whatever has not the shape it should have: others may have written into the workbook's settings. */
function toEntry(found: unknown): (readonly [string, Mapping])[] {
  if (!Array.isArray(found) || typeof found[0] !== "string" || !isRecord(found[1])) return [];
  const { columns, units } = found[1];
  return [
    [
      found[0],
      {
        columns: numbered(columns, (value) => value === null || typeof value === "string") as NonNullable<
          Mapping["columns"]
        >,
        units: numbered(units, (value) => typeof value === "string") as NonNullable<Mapping["units"]>,
      },
    ],
  ];
}

function numbered(found: unknown, allowed: (value: unknown) => boolean): Record<number, unknown> {
  if (!isRecord(found)) return {};
  return Object.fromEntries(
    Object.entries(found).filter(([column, value]) => /^[1-9]\d*$/.test(column) && allowed(value)),
  );
}
