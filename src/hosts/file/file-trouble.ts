/** What went wrong with a file, as a person would put it and with what would do; other trouble in the system's own words. */
const WORDS: Readonly<Record<string, (file: string) => string>> = {
  "read ENOENT": (file) => `There is no file ${file}; the name of a table that is there would do.`,
  "write ENOENT": (file) =>
    `${file} cannot be written: its folder is not there; make it first, or name another.`,
  "read EISDIR": (file) => `${file} is a folder; the name of a file in it would do.`,
  "write EISDIR": (file) => `${file} is a folder; the name of a file would do.`,
  "write EEXIST": (file) => `${file} is there already and is left as it is; another name would do.`,
  "write EBUSY": (file) => `${file} cannot be written while another program has it open; close it there.`,
};

/**
 * A sentence for a file that could not be read or written.
 *
 * @example fileTrouble("read", "shots.csv", error) // "There is no file shots.csv; the name of a table that is there would do."
 */
export function fileTrouble(doing: "read" | "write", file: string, error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  const said = WORDS[`${doing} ${code}`];
  if (said) return said(file);
  return `${file} cannot be ${doing === "read" ? "read" : "written"}: ${message}.`;
}
