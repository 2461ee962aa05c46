/** What a cell is given; null leaves it as it is. */
export type Entry = string | number | boolean | null;

/** The client library cuts a larger array into calls of this many cells. */
const LIBRARY_CELLS = 1_500;

/** What each of these calls carries besides the cells. */
const LIBRARY_BYTES = 1_100;

/** About how many bytes the calls of an array of cells add to what the cells themselves take. */
export const bytesAround = (cells: number) => (1 + Math.ceil(cells / LIBRARY_CELLS)) * LIBRARY_BYTES;

/** Rows travel in pieces of about this size, so that pieces of several blocks share a request. */
export const PIECE_BYTES = 500_000;

/** Bytes of a row of entries as it travels. */
export const bytesOfRow = (row: readonly Entry[]) => encoder.encode(JSON.stringify(row)).length + 1;

const encoder = new TextEncoder();
