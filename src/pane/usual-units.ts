import { UNIT_SETS, type UnitSet } from "../shots/unit-set.ts";

const KEY = "bay-and-bench:units";

/** Regions where shots are told in yards (from memory, no source); elsewhere in metres. */
const YARDS = new Set(["US", "GB", "CA", "IE", "JP"]);

/**
 * The units that a workbook begins with that knows none: those last chosen in this browser, of whatever workbook that
 * was, else those of the place. They are a person's habit and no part of a workbook, so they are not the host's to keep.
 */
export function usualUnits(locale = placeLocale(), store = browserStore()): UnitSet {
  const chosen = attempt(() => store?.getItem(KEY) ?? null);
  return UNIT_SETS.find((one) => one === chosen) ?? unitsOf(locale);
}

/** Remembers the units chosen, for workbooks to come; a browser that keeps nothing forgets them. */
export function rememberUnits(units: UnitSet, store = browserStore()): void {
  attempt(() => store?.setItem(KEY, units));
}

function placeLocale(): string {
  return Intl.NumberFormat().resolvedOptions().locale;
}

function unitsOf(locale: string): UnitSet {
  const region = attempt(() => new Intl.Locale(locale).maximize().region);
  return region === undefined || region === null || YARDS.has(region) ? "us" : "metric";
}

type Store = Pick<Storage, "getItem" | "setItem"> | null;

/** Some browsers throw at the mere mention. */
function browserStore(): Store {
  return attempt(() => globalThis.localStorage) ?? null;
}

function attempt<T>(action: () => T): T | null {
  try {
    return action();
  } catch {
    return null;
  }
}
