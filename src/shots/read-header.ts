import type { Dimension } from "../units/unit-names.ts";
import { unitOf } from "../units/unit-of.ts";
import { COLUMN_NAMES, type ColumnKey, type ColumnName } from "./column-names.ts";
import { squash } from "./words.ts";

/** What a heading says: what the column holds, in which unit, and whether it counts left as positive. */
export interface Heading {
  readonly key: ColumnKey | null;
  /** Whether a better-named column may take this one's place. */
  readonly weak: boolean;
  /** As this project names it; empty where the heading states none. */
  readonly unit: string;
  readonly leftPositive: boolean;
}

const BRACKETS = /[([{]([^()[\]{}]*)[)\]}]|([°º])/g;
const SEPARATORS = /[\s,;:_|\-–—]+/;
const LEFT_PLUS = /\+\s*=?\s*(l|left)\b|\b(l|left)\s*=?\s*\+(?!\s*r)/i;
const RIGHT_MINUS = /^[-−]\s*=?\s*(r|right)\b|\b(r|right)\s*=?\s*[-−](?!\s*l)/i;

/**
 * Understands one heading. The unit may stand in brackets, as a degree sign, behind a comma or dash, or as the last words.
 *
 * @example readHeader("Ball Spd - km/h") // { key: "ballSpeed", unit: "km/h", ... }
 */
export function readHeader(text: string): Heading {
  // Stryker disable all: a heading read afresh is the same heading
  let found = seen.get(text);
  if (!found) {
    found = readAfresh(text);
    if (seen.size >= ENOUGH) seen.clear();
    seen.set(text, found);
  }
  return found;
  // Stryker restore all
}

/** The same headings are looked at under every delimiter and again at every repeat. */
const seen = new Map<string, Heading>();
const ENOUGH = 1000;

function readAfresh(text: string): Heading {
  const asides: string[] = [];
  const bare = text.slice(0, 300).replace(BRACKETS, (_, aside?: string, sign?: string) => {
    asides.push(...(aside ?? sign ?? "").split(/[,;]/));
    return " ";
  });
  const unit = asides.map(unitOf).find((found) => found !== undefined);
  const leftPositive = asides.some((aside) => LEFT_PLUS.test(aside) || RIGHT_MINUS.test(aside.trim()));
  const wordy = asides.filter((aside) => !unitOf(aside)).join(" ");
  const named = lookUp(`${bare} ${wordy}`) ?? lookUp(bare);
  if (named) return heading(named, unit?.name ?? unitOf(bare)?.name ?? "", leftPositive);
  const cut = cutUnit(bare);
  if (cut) return heading(cut.name, unit?.name ?? cut.unit, leftPositive);
  const key = BY_UNIT.get(`${squash(bare)} ${unit?.dimension}`);
  if (key) return { key, weak: false, unit: unit?.name ?? "", leftPositive };
  return { key: null, weak: false, unit: unit?.name ?? "", leftPositive };
}

function lookUp(text: string): ColumnName | undefined {
  return COLUMN_NAMES.get(squash(text));
}

/** Takes up to three last words for a unit: "Carry in yds", "Spin 1000 rpm", "BallSpeedMPH". */
function cutUnit(text: string): { name: ColumnName; unit: string } | undefined {
  const parts = text
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .split(SEPARATORS)
    .filter((part) => part !== "");
  for (let last = 1; last <= 3 && last < parts.length; last++) {
    const unit = unitOf(parts.slice(-last).join(""));
    const name = lookUp(parts.slice(0, -last).join(" ").replace(/ in$/, ""));
    if (unit && name) return { name, unit: unit.name };
  }
  return undefined;
}

/** A word that means one thing by itself means another beside this unit: `Side (deg)` is a direction. */
const BY_DIMENSION: ReadonlyMap<string, ColumnKey> = new Map<string, ColumnKey>([
  ["offline angle", "direction"],
  ["offline rate", "sidespin"],
  ["direction length", "offline"],
  ["club speed", "clubSpeed"],
  ["launch speed", "ballSpeed"],
  ["total rate", "spin"],
  ["time time", "flightTime"],
  ["face length", "strikeX"],
] satisfies [`${ColumnKey} ${Dimension}`, ColumnKey][]);

/** Words that say too little by themselves, and enough beside their unit: `Ball` may be a make, `Ball [km/h]` is none. */
const BY_UNIT: ReadonlyMap<string, ColumnKey> = new Map<string, ColumnKey>([
  ["ball speed", "ballSpeed"],
  ["balle speed", "ballSpeed"],
  ["bola speed", "ballSpeed"],
  ["pelota speed", "ballSpeed"],
  ["kopf speed", "clubSpeed"],
  ["tete speed", "clubSpeed"],
  ["cabeza speed", "clubSpeed"],
] satisfies [`${string} ${Dimension}`, ColumnKey][]);

function heading(name: ColumnName, unit: string, leftPositive: boolean): Heading {
  const dimension = unitOf(unit)?.dimension;
  const key = BY_DIMENSION.get(`${name.key} ${dimension}`) ?? name.key;
  return { key, weak: name.weak, unit, leftPositive };
}
