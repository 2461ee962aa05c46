/**
 * Text as the file's XML must hold it. A file writes a character that XML forbids as `_xHHHH_`, so text that looks
 * like such an escape itself must have its first underscore escaped, or it would be read back as something else.
 * Control characters are escaped by the library; this does what it leaves.
 *
 * Source: ECMA-376 part 1, 22.9.2.19, ST_Xstring.
 *
 * @example fileText("_x0041_") // "_x005F_x0041_"
 */
export function fileText(text: string): string {
  return NEEDS_ESCAPE.test(text)
    ? text.replace(/_(?=x[0-9A-Fa-f]{4}_)/g, "_x005F_").replace(/[\uFFFE\uFFFF]/g, escaped)
    : text;
}

/** Text for an attribute, as a table's headings are: there a line break is escaped too. */
export function fileAttribute(text: string): string {
  return fileText(text).replace(/[\n\r\t]/g, escaped);
}

/** Text as it stands between two tags, control characters and markup escaped too. */
export function fileXml(text: string): string {
  if (!NEEDS_CARE.test(text)) return text;
  return fileText(text)
    .replace(CONTROLS, escaped)
    .replace(/[&<>]/g, (character) => (character === "&" ? "&amp;" : character === "<" ? "&lt;" : "&gt;"));
}

/** Text that a spreadsheet would calculate, or take for an error, if it were typed into a cell. */
export function isAwkward(text: string): boolean {
  return AWKWARD_STARTS.includes(text.charAt(0)) && text !== "";
}

const AWKWARD_STARTS = "=+-@#'";
const NEEDS_ESCAPE = /_x[0-9A-Fa-f]{4}_|[\uFFFE\uFFFF]/;

/** What XML forbids, and the carriage return, which it would read as a line break. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
const CONTROLS = /[\u0000-\u0008\u000B-\u001F]/g;
const NEEDS_CARE = /[^ !-%'-;=?-^`-~]/;

function escaped(character: string): string {
  return `_x${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`;
}
