import { readFile } from "node:fs/promises";
import { invalid, type Outcome } from "../../outcome/problem.ts";
import { textOfBytes } from "../../shots/text-of-bytes.ts";
import { fileTrouble } from "./file-trouble.ts";
import { readXlsxText } from "./read-xlsx.ts";

/**
 * The table in a file as text: text in any of the usual encodings as it is, of a workbook the first sheet that suits.
 * A workbook of the older form is refused with what to save it as.
 */
export async function readTableFile(
  file: string,
  suits?: (text: string) => boolean,
): Promise<Outcome<string>> {
  let bytes: Uint8Array;
  try {
    bytes = await readFile(file);
  } catch (refused) {
    return invalid(fileTrouble("read", file, refused));
  }
  if (beginsWith(bytes, ZIP)) return readXlsxText(new Uint8Array(bytes), suits);
  if (beginsWith(bytes, OLD_WORKBOOK)) {
    return invalid(
      `${file} is a workbook of the older form, or one with a password; saved as .xlsx without, or as CSV, it would do.`,
    );
  }
  return textOfBytes(bytes);
}

/** First bytes of an archive, which an .xlsx is. Source: .ZIP File Format Specification 6.3.10, 4.3.7. */
const ZIP = [0x50, 0x4b, 0x03, 0x04];
/** First bytes of an .xls, and of an .xlsx behind a password. Source: [MS-CFB] 2.2. */
const OLD_WORKBOOK = [0xd0, 0xcf, 0x11, 0xe0];

function beginsWith(bytes: Uint8Array, mark: readonly number[]): boolean {
  return mark.every((byte, i) => bytes[i] === byte);
}
