import { checkColumns } from "../flight/impact/check-columns.ts";
import type { MetricKey } from "../shots/metrics.ts";
import type { Session } from "./session.ts";

/** A shot whose delivery and launch figures do not fit each other by the geometry of impact. */
export interface DeliveryDoubt {
  /** The shot, counted from 0. */
  readonly index: number;
  readonly message: string;
}

const KEYS = [
  "dynamicLoft",
  "attack",
  "face",
  "path",
  "spinLoft",
  "launch",
  "direction",
  "spinAxis",
] as const satisfies readonly MetricKey[];

/**
 * Holds each shot's delivery against its launch (`checkColumns`): spin loft against loft and attack, launch between
 * them, direction between face and path, spin axis on the side of face to path. Pointed out, never changed.
 */
export function deliveryDoubts({ table }: Session): DeliveryDoubt[] {
  const columns = KEYS.flatMap((key) => {
    const column = table.values.get(key);
    return column ? [{ key, column }] : [];
  });
  if (columns.length < 3) return [];
  const shots = Array.from({ length: table.size }, (_, i) =>
    Object.fromEntries(columns.map(({ key, column }) => [key, column[i]!])),
  );
  return checkColumns(shots).map(({ shot, message }) => ({
    index: shot,
    message: `Row ${table.row[shot]}: ${message} degrees. All are left as they are.`,
  }));
}
