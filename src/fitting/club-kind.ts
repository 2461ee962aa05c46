import type { ShotTable } from "../shots/shot-table.ts";

/** Clubs that are fitted to like windows. */
export type ClubKind = "driver" | "fairway" | "hybrid" | "long iron" | "mid iron" | "short iron" | "wedge";

/** What kind of club a name means: "7i", "7 iron", "Driver", "3W", "PW", "56". Null where it does not say. */
export function clubKindOf(name: string): ClubKind | null {
  const text = name.trim().toLowerCase();
  if (/driver|^d$|^1\s*w/.test(text)) return "driver";
  if (/hybrid|rescue|^\d\s*h\b/.test(text)) return "hybrid";
  if (/fairway|wood|^\d\s*w\b/.test(text)) return "fairway";
  if (/^(pw|p)$|pitching/.test(text)) return "short iron";
  if (/wedge|^(aw|gw|sw|lw|uw)$/.test(text)) return "wedge";
  const number = Number(/\d+/.exec(text)?.[0] ?? Number.NaN);
  if (number >= 46 && number <= 64) return "wedge";
  if (number >= 1 && number <= 5) return "long iron";
  if (number >= 6 && number <= 8) return "mid iron";
  return number === 9 ? "short iron" : null;
}

/** The kind of club a session is about: from its club column or title, else guessed from launch and spin. */
export function clubKindIn(
  table: ShotTable,
  title: string,
): { readonly kind: ClubKind; readonly guessed: boolean } {
  const said = /driver|(?:pitching |gap |sand |lob )?wedge|\d+[ -]?(?:iron|wood|hybrid)/i.exec(title)?.[0];
  for (const name of [...new Set(table.club), said ?? ""]) {
    const kind = name === "" ? null : clubKindOf(name);
    if (kind) return { kind, guessed: false };
  }
  const launch = medianOf(table.values.get("launch"));
  // What lifts is nearly all of the spin, so a table of back- and sidespin tells the club as well.
  const spin = medianOf(table.values.get("spin") ?? table.values.get("backspin"));
  return { kind: guess(launch, spin), guessed: true };
}

/** By where launch and spin of the clubs usually lie (common practice, no source). */
function guess(launch: number, spin: number): ClubKind {
  if (spin < 3300 && launch < 18) return "driver";
  if (launch >= 25) return "wedge";
  if (launch >= 20.5) return "short iron";
  if (spin < 4000) return "fairway";
  return launch < 14.5 ? "long iron" : "mid iron";
}

function medianOf(column: Float64Array | undefined): number {
  const sorted = (column ?? new Float64Array()).filter((value) => !Number.isNaN(value)).sort();
  return sorted.length === 0 ? Number.NaN : sorted[Math.floor(sorted.length / 2)]!;
}
