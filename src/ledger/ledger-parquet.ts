import { invalid, type Outcome } from "../outcome/problem.ts";
import type { Cell, Row } from "./cell.ts";
import { type Column, type ColumnType, LEDGER, SCHEMA_VERSION, type Schema } from "./schema.ts";

/** How a column lies in the file. Days are day numbers that engines show as dates. */
const PHYSICAL: Readonly<Record<ColumnType, object>> = {
  text: { type: "BYTE_ARRAY", converted_type: "UTF8" },
  number: { type: "DOUBLE" },
  whole: { type: "INT32" },
  day: { type: "INT32", converted_type: "DATE" },
  truth: { type: "BOOLEAN" },
};

/**
 * Rows as a Parquet file: columns named by their keys, typed as the schema says, the form and the headings in the
 * file's own metadata. Figures keep every bit. The library loads when it is first needed.
 */
export async function ledgerParquet(
  rows: readonly Row[],
  schema: Schema = LEDGER,
): Promise<Outcome<Uint8Array>> {
  for (const column of schema.columns) {
    const wrong = rows.findIndex((row) => !fits(row[column.key] ?? null, column.type));
    if (wrong >= 0) {
      return invalid(
        `Row ${wrong + 1} has "${rows[wrong]![column.key]}" under ${column.heading}, where a ${column.type} belongs; put it right first.`,
      );
    }
  }
  const { parquetWriteBuffer } = await import("hyparquet-writer");
  const fields = schema.columns.map(({ key, type }) => ({
    name: key,
    repetition_type: "OPTIONAL",
    ...PHYSICAL[type],
  }));
  const buffer = parquetWriteBuffer({
    columnData: schema.columns.map((column) => ({
      name: column.key,
      data: rows.map((row) => stored(row[column.key] ?? null, column)),
    })),
    schema: [{ name: "root", num_children: fields.length }, ...fields] as never,
    kvMetadata: [
      { key: "form", value: String(SCHEMA_VERSION) },
      { key: "table", value: schema.table },
      {
        key: "headings",
        value: JSON.stringify(schema.columns.map(({ key, heading, unit }) => [key, heading, unit])),
      },
    ],
  });
  return new Uint8Array(buffer);
}

/** Rows from a Parquet file that `ledgerParquet` wrote, or one with the same column names. */
export async function readLedgerParquet(bytes: Uint8Array, schema: Schema = LEDGER): Promise<Outcome<Row[]>> {
  try {
    const { parquetMetadataAsync, parquetReadObjects } = await import("hyparquet");
    const file = bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer;
    const metadata = await parquetMetadataAsync(file);
    const form = Number(
      metadata.key_value_metadata?.find(({ key }) => key === "form")?.value ?? SCHEMA_VERSION,
    );
    if (form > SCHEMA_VERSION) {
      return invalid(
        `The file is in form ${form} of the ledger, and this version knows forms up to ${SCHEMA_VERSION}; update it first.`,
      );
    }
    const found = await parquetReadObjects({ file, metadata });
    if (found.length > 0 && !(schema.key in found[0]!)) {
      return invalid(`The file has no column "${schema.key}", so it is no ${schema.table}.`);
    }
    return found.map((one) =>
      Object.fromEntries(schema.columns.map((column) => [column.key, read(one[column.key])])),
    );
  } catch (error) {
    return invalid(
      `The file could not be read as Parquet: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
}

function fits(cell: Cell, type: ColumnType): boolean {
  if (cell === null) return true;
  if (type === "text") return typeof cell === "string";
  if (type === "truth") return typeof cell === "boolean";
  if (type === "day") return typeof cell === "string" && /^\d{4}-\d{2}-\d{2}$/.test(cell);
  if (typeof cell !== "number" || !Number.isFinite(cell)) return false;
  return type === "number" || (Number.isInteger(cell) && Math.abs(cell) < 2 ** 31);
}

const stored = (cell: Cell, { type }: Column) =>
  type === "day" && cell !== null ? new Date(`${cell}T00:00:00Z`) : (cell ?? undefined);

function read(value: unknown): Cell {
  if (value === null || value === undefined) return null;
  if (value instanceof Date) return value.toISOString().slice(0, 10);
  return typeof value === "bigint" ? Number(value) : (value as Cell);
}
