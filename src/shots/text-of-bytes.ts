/**
 * The text of a file as spreadsheets and launch monitors write it: UTF-16 with its mark at the start, UTF-8, or
 * Windows-1252 where the bytes are no UTF-8.
 *
 * @param part whether the bytes may end in the midst of a letter, as the beginning of a file does
 */
export function textOfBytes(bytes: Uint8Array, part = false): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return read("utf-16le", bytes, part);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return read("utf-16be", bytes, part);
  const utf8 = read("utf-8", bytes, part);
  return utf8.includes("\ufffd") ? read("windows-1252", bytes, part) : utf8;
}

function read(encoding: string, bytes: Uint8Array, part: boolean): string {
  return new TextDecoder(encoding).decode(bytes, { stream: part });
}
