import type { Draw } from "./draw.ts";
import { hostileFigure, hostileText, placeFigures } from "./hostile-text.ts";

/** A text as nobody should paste it. */
export interface HostileTable {
  readonly text: string;
  /** What truly parts the cells. */
  readonly delimiter: string;
  /** The line, counted from 1, in which each record begins; null where damage leaves that open. */
  readonly starts: readonly number[] | null;
}

const HEADINGS = [
  "Club Speed",
  "Ball Speed (mph)",
  "Smash",
  "Launch Angle [°]",
  "Spin Rate",
  "Carry (m)",
  "Carry",
  "Total",
  "Offline",
  "Side L/R",
  "Height",
  "Face to Path",
  "Club Path",
  "Ballgeschwindigkeit",
  "Décollage",
  "Vuelo",
  "Build",
  "Shaft",
  "Club",
  "Shot",
  "Time",
  "Keep",
  "Notes",
  "",
] as const;
const UNITS = ["mph", "[yds]", "(m)", "rpm", "°", "deg", "ft", "", "furlongs"];

type Row = readonly string[];

/**
 * table := preamble* header units? (shot | title | summary | header | ruled | blank)*, each part at times missing, too
 * wide or too narrow, then cells quoted or not, lines ended in any way, and at times damaged as a whole.
 */
export function hostileTable(draw: Draw): HostileTable {
  const delimiter = draw.one(["\t", "\t", ";", ",", "|", ",", "^", " "]);
  const rows = tableRows(draw);
  const ends = draw.one(["\n", "\n", "\r\n", "\r", "mixed"]);
  let line = 1;
  let text = draw.once(8) ? "\ufeff" : "";
  const starts: number[] = [];
  for (const [at, row] of rows.entries()) {
    starts.push(line);
    const written = row.map((cell) => asCell(cell, delimiter, draw)).join(delimiter);
    line += 1 + (written.match(/\r\n|\r|\n/g)?.length ?? 0);
    const last = at === rows.length - 1 && draw.once(2);
    text += written + (last ? "" : ends === "mixed" ? mixedEnd(written, draw) : ends);
  }
  // A lone empty record at the end cannot be told from the last line's end.
  const clear = rows.at(-1)?.join("") !== "";
  return draw.once(5)
    ? { text: damaged(text, draw), delimiter, starts: null }
    : { text, delimiter, starts: clear ? starts : null };
}

function tableRows(draw: Draw): Row[] {
  const width = draw.once(3000) ? 10_000 : 1 + draw.below(14);
  const cells = (make: () => string, count = width) => Array.from({ length: count }, make);
  const header = cells(() => (draw.once(5) ? hostileText(draw) : draw.one(HEADINGS)));
  // Half the tables keep to one place's habit, so that the reader takes it for theirs; the others mix all of them.
  const figure = draw.once(2) ? placeFigures(draw) : () => hostileFigure(draw);
  const shot = () =>
    header.map((name) => (/Build|Shaft|Club$|Time|Notes/.test(name) ? hostileText(draw) : figure()));
  const rows: Row[] = [];
  for (let count = draw.below(3); count > 0; count--) rows.push([hostileText(draw)]);
  if (!draw.once(12)) rows.push(header);
  if (draw.once(4)) rows.push(cells(() => draw.one(UNITS)));
  for (let count = draw.below(width > 1000 ? 4 : 12); count > 0; count--) {
    rows.push(
      draw.one<() => Row>([
        shot,
        shot,
        shot,
        shot,
        () => ["Shaft:", hostileText(draw)],
        () => [hostileText(draw)],
        () => ["Average", ...shot().slice(1)],
        () => (draw.once(3) ? header : cells(() => draw.one(HEADINGS))),
        () => cells(() => draw.one(["---", "===", ":--"])),
        () => cells(() => ""),
        () => shot().slice(0, draw.below(width + 1)),
        () => [...shot(), ...cells(() => hostileFigure(draw), 1 + draw.below(5))],
      ])(),
    );
  }
  if (draw.once(1000) && rows.length > 0)
    rows[draw.below(rows.length)] = [hostileText(draw).padEnd(1_000_000, "1 MB ")];
  return rows;
}

/** A newline right behind a carriage return would be one end with it, so an empty line takes both. */
function mixedEnd(line: string, draw: Draw): string {
  return line === "" ? "\r\n" : draw.one(["\n", "\r\n", "\r"]);
}

/** Marks that people and programs set around a cell beside the one that counts; the last leaves it open. */
const QUOTES = ["\u201c\u201d", "\u201e\u201c", "\u00ab\u00bb", "''", "``", '""', "'", '"'];

/** Quoted where it must be, sometimes where it need not, now and then in other marks or with line breaks inside. */
function asCell(cell: string, delimiter: string, draw: Draw): string {
  const marks = draw.once(25) ? draw.one(QUOTES) : "";
  const marked = `${marks[0] ?? ""}${cell}${marks[1] ?? ""}`;
  const text = draw.once(60) ? `${marked}\n${marked}` : marked;
  const must = text.includes(delimiter) || /["\r\n]/.test(text);
  return must || draw.once(15) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** As after a wrong encoding, a cut, or a hand that slipped. */
function damaged(text: string, draw: Draw): string {
  const at = draw.below(text.length + 1);
  return draw.one<() => string>([
    () => new TextDecoder("windows-1252").decode(new TextEncoder().encode(text)),
    () => new TextDecoder("utf-8").decode(Uint8Array.from(text, (letter) => letter.charCodeAt(0) & 0xff)),
    () => new TextDecoder("utf-16le").decode(new TextEncoder().encode(text)),
    () => [...text].join("\u0000"),
    () => text.slice(0, at),
    () => text.slice(at),
    () => `${text.slice(0, at)}"${text.slice(at)}`,
    () =>
      `${text.slice(0, at)}${draw.one(["\u0000", "\n", "\r", "\t", ";", "\ufffd", "\ufeff"]).repeat(1 + draw.below(50))}${text.slice(at)}`,
    () => text.replaceAll("\n", " "),
    () => text + text,
    () => text.replace(/\d/g, (digit) => String.fromCharCode(0xff10 + Number(digit))),
  ])();
}
