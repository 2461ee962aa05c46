import { convert } from "./convert.ts";

/** A workbook as LibreOffice prints it. */
export function toPdf(bytes: Uint8Array): Promise<Uint8Array> {
  return convert(bytes, "pdf");
}
