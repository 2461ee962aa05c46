import type { MetricKey } from "../shots/metrics.ts";
import { readHeader } from "../shots/read-header.ts";
import { squash } from "../shots/words.ts";
import { unitOf } from "../units/unit-of.ts";
import { MAIN_METRICS } from "./schema.ts";

/** What a column of somebody's own tracking sheet holds. */
export interface TrackingColumn {
  readonly heading: string;
  /** Key of a ledger column; for figures that of their mean, spread or count. Null: not understood. */
  readonly key: string | null;
  readonly metric: MetricKey | null;
  /** As the heading states it; empty where it does not. */
  readonly unit: string;
  /** Whether its figures count left as positive, against ours. */
  readonly leftPositive?: boolean;
  /** 1, 2, ... where one line holds several builds side by side; 0 where a column counts for all of them. */
  readonly block: number;
  /** The heading of an earlier column that holds the same, which goes before this one. */
  readonly twin?: string;
}

/** Headings of what is no measurement (common practice, no source), in the ways shops write them. */
const NAMES: Readonly<Record<string, string>> = {
  date: "date, day, datum, tag, fecha, fitted on, session date, date fitted, fitting date, jour",
  player: "player, player name, name, customer, client, golfer, spieler, kunde, joueur, jugador, who, member",
  club: "club, club tested, schlager, head no, iron, palo",
  build:
    "build, shaft, setup, shaft tested, shaft name, combo, configuration, schaft, varilla, manche, shaft build, tested",
  shaftWeight: "weight, shaft weight, wt, gewicht, schaftgewicht, g, peso, poids, shaft wt",
  length: "length, club length, lange, len, longueur, longitud",
  flex: "flex, stiffness",
  profile: "profile, bend profile, launch profile, profil",
  head: "head, head model, kopf",
  loft: "loft",
  swingweight: "swingweight, sw, swing weight, schwunggewicht",
  kept: "n, shots, balls, count, number of shots, anzahl, schlage, shots kept, good shots, hits, balles, bolas",
  verdict: "verdict, how sure, confidence, result, ergebnis",
  chosen: "winner, chosen, best, pick, gewahlt, won, choice",
  chance: "chance, probability, wahrscheinlichkeit",
  ordered: "ordered, order, bestellt, bought, sold, purchased, commande",
  note: "note, notes, comment, comments, remark, remarks, bemerkung, notiz, notizen",
  place: "place, location, bay, site, ort, where, store, shop",
  hand: "hand, handedness, rh lh, r l",
  tempo: "tempo",
};

/** All that a column of a tracking sheet may be taken for. */
export const TRACKING_KEYS: readonly string[] = [
  ...Object.keys(NAMES),
  ...MAIN_METRICS.flatMap((metric) => [`${metric}Mean`, `${metric}Sd`]),
];

/** A column that somebody says holds something else than its heading seems to say. */
export function correctedHeading(column: TrackingColumn, key: string | null): TrackingColumn {
  const metric = MAIN_METRICS.find((one) => key === `${one}Mean` || key === `${one}Sd`) ?? null;
  return { ...column, key, metric };
}

const BY_NAME = new Map(
  Object.entries(NAMES).flatMap(([key, names]) =>
    names.split(",").map((name) => [squash(name), key] as const),
  ),
);

const MEAN =
  /^(?:mean|avg\.?|average|ave\.?|ø|mittelwert|mittel|durchschnitt|moyenne|media)\s+|\s+(?:mean|avg\.?|average|ave\.?|ø|mittelwert|mittel)$/i;
const SPREAD =
  /^(?:sd|std\.?\s?dev\.?|stdev|spread|streuung|±|\+\/-)\s+(?:of\s+)?|\s+(?:sd|std\.?\s?dev\.?|stdev|spread|streuung|±|\+\/-)$/i;
const ASIDE = /\s*[([{]([^()[\]{}]*)[)\]}]/g;

/** Understands a heading of a tracking sheet, whatever case, unit and abbreviation it comes with. */
export function readTrackingHeading(text: string): TrackingColumn {
  const heading = text.replace(/\s+/g, " ").trim();
  const numbered = /^(.*?\S)\s*[#_]?\s*([1-9])$/.exec(heading);
  const whole = readUnnumbered(heading);
  if (whole.key !== null || !numbered) return { ...whole, heading, block: 0 };
  return { ...readUnnumbered(numbered[1]!), heading, block: Number(numbered[2]) };
}

function readUnnumbered(heading: string): Omit<TrackingColumn, "block" | "twin"> {
  const asides = [...heading.matchAll(ASIDE)].map((found) => found[1]!.trim());
  const bare = heading.replace(ASIDE, "").replace(/\s+/g, " ").trim();
  const field = BY_NAME.get(squash(bare));
  if (field) return { heading, key: field, metric: null, unit: asides[0] ?? "" };
  const spread = SPREAD.test(bare) || asides.some((aside) => /^(?:sd|±|\+\/-)/i.test(aside));
  const named = heading.replace(/\((?:sd|avg|mean)\)/gi, "").trim();
  const rest = strip(strip(named, SPREAD), MEAN);
  const { key, unit, leftPositive } = readHeader(rest);
  const metric = MAIN_METRICS.find((one) => one === key);
  if (metric) return { heading, key: `${metric}${spread ? "Sd" : "Mean"}`, metric, unit, leftPositive };
  const [first, last] = [/^(.*?)[\s,:-]+(g|gr|grams?|in|inch|inches|cm|°|deg)\.?$/i.exec(bare), squash(bare)];
  const worded = first ? BY_NAME.get(squash(first[1]!)) : BY_NAME.get(last);
  return {
    heading,
    key: worded ?? null,
    metric: null,
    unit: first?.[2] ?? unitOf(asides[0] ?? "")?.name ?? "",
  };
}

/** A word may stand before the unit as well: "Carry avg (yd)". */
function strip(text: string, words: RegExp): string {
  const aside = /\s*[([{][^()[\]{}]*[)\]}]\s*$/.exec(text)?.[0] ?? "";
  const bare = aside === "" ? text : text.slice(0, -aside.length);
  return `${bare.replace(words, "")}${aside}`;
}
