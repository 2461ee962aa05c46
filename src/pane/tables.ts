/** What takes a table of the workbook and follows it, fetched when a table is asked for. */

export { FollowTable } from "./follow-table.tsx";
export { TakeTable } from "./take-table.tsx";
