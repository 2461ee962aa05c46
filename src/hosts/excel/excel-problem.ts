import { type Problem, unavailable } from "../../outcome/problem.ts";
import { Stopped } from "./stopped.ts";

const SENTENCES: Readonly<Record<string, string>> = {
  AccessDenied: "The workbook is protected. Take the protection off and try again.",
  InvalidOperationInCellEditMode: "A cell is being edited. Press Enter or Escape there and try again.",
  InvalidSelection: "Something other than cells is selected. Select the cells of the table and try again.",
  RequestPayloadSizeLimitExceeded: "That is more than the spreadsheet takes at once. Compare fewer shots.",
  ResponsePayloadSizeLimitExceeded:
    "That is more than the spreadsheet hands out at once. Select fewer cells.",
};

/** What went wrong in the spreadsheet as one sentence, whatever was thrown. */
export function excelProblem(error: unknown, then = ""): Problem {
  const code = error instanceof Object && "code" in error ? String(error.code) : "";
  const message = error instanceof Error ? error.message : String(error);
  const sentence =
    (error instanceof Stopped ? "Stopped." : SENTENCES[code]) ??
    `The spreadsheet answered with an error${code && ` (${code})`}: ${message}`;
  return unavailable(then ? `${sentence} ${then}` : sentence);
}
