import { UNIT_NAMES, type UnitName } from "./unit-names.ts";

const BY_SPELLING = new Map<string, UnitName>();
for (const unit of UNIT_NAMES) {
  BY_SPELLING.set(unit.name, unit);
  for (const spelling of unit.spellings) BY_SPELLING.set(spelling, unit);
}

const NOISE = /[\s.\u00a0\u2009\u202f]/g;

/**
 * The unit that a spelling means, whatever its case, spaces and full stops; undefined where it means none.
 * `ms` is metres per second, as it stands in tables of speeds.
 *
 * @example unitOf("Yds.")?.name // "yd"
 * @example unitOf("1000 rpm")?.name // "krpm"
 */
export function unitOf(spelling: string): UnitName | undefined {
  return BY_SPELLING.get(spelling.replace(NOISE, "").toLowerCase());
}
