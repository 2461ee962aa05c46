import type { ColumnKey } from "./column-names.ts";

/** What the fitter puts right by hand where the reader took something for something else. Columns count from 1. */
export interface ReadOptions {
  /** What a column holds; null keeps it as an unknown one. */
  readonly columns?: Readonly<Record<number, ColumnKey | null>>;
  /** The unit of a column's figures, by any usual spelling. */
  readonly units?: Readonly<Record<number, string>>;
  readonly decimal?: "." | ",";
  readonly delimiter?: string;
  /** The build of shots for which the table names none. */
  readonly build?: string;
  /** Changes no figure, as right is right of the target for everyone; the notes say so. */
  readonly leftHanded?: boolean;
}
