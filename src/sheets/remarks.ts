import { computedRemark } from "../fitting/filled-session.ts";
import type { Session } from "../fitting/session.ts";
import type { ShotTable } from "../shots/shot-table.ts";

/** Sentences for the Remark column: what contradicts itself in a row of the pasted text, shot by shot. */
export function remarksOf(
  session: Session,
  far: readonly { readonly index: number; readonly message: string }[],
): Map<number, string> {
  const { table } = session;
  const byRow = new Map<number, number>(table.row.map((row, index) => [row, index]));
  const remarks = new Map<number, string>();
  const add = (index: number | undefined, text: string) => {
    if (index !== undefined) remarks.set(index, [remarks.get(index), text].filter(Boolean).join(" "));
  };
  for (let shot = 0; session.computed && shot < table.size; shot++) {
    const remark = computedRemark(session, shot);
    if (remark) add(shot, remark);
  }
  for (const problem of table.problems) add(byRow.get(problem.row), problem.message);
  for (const { index, message } of far) add(index, withoutPlace(message, table, index));
  return remarks;
}

/**
 * A remark without the row and the build that it is about: on the sheet it stands beside them, and rows of the pasted
 * text are not those of the sheet.
 */
function withoutPlace(message: string, { row, build }: ShotTable, shot: number): string {
  const place = `Row ${row[shot]} (${build[shot]}): `;
  if (!message.startsWith(place)) return message;
  return message.charAt(place.length).toUpperCase() + message.slice(place.length + 1);
}
