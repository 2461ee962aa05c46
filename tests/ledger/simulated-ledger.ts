import type { Row } from "../../src/ledger/cell.ts";
import { dayOf } from "../../src/ledger/day.ts";
import { LEDGER, SCHEMA_VERSION } from "../../src/ledger/schema.ts";
import { seededRandom } from "../../src/stats/seeded-random.ts";

/** What is true of the shots in a simulated ledger. */
export const TRUTH = {
  /** A shaft 10 g heavier: yards of carry, turns of spin, miles an hour of club speed. */
  carry: -0.8,
  spin: -45,
  clubSpeed: -0.35,
  /** Strong players are handed heavier shafts: grams for each mile an hour of club speed. */
  handed: 0.9,
} as const;

const BUILDS = ["A light", "B mid", "C heavy", "D heavy low", "E light high", "F stiff"];

/**
 * Sessions of invented players, each slice with players of its own, numbered from `first`: two to four builds each, winners that
 * are the truly longest more often than not. Heavy shafts cost carry by the truth, yet heavy hitters play them.
 */
export function simulatedLedger(sessions: number, seed: number, first = 0): Row[] {
  const random = seededRandom(seed);
  const empty = Object.fromEntries(LEDGER.columns.map(({ key }) => [key, null]));
  const rows: Row[] = [];
  for (let s = first; s < first + sessions; s++) {
    const player = Math.floor(random.uniform() * Math.max(8, sessions / 3)) + first;
    const strength = seededRandom(player + 17).normal();
    const speed = 84 + 9 * strength;
    const centre = 100 + TRUTH.handed * 9 * strength;
    const count = 2 + Math.floor(random.uniform() * 3);
    const at = Math.floor(random.uniform() * BUILDS.length);
    const date = dayOf(
      2020 + (s % 6),
      1 + Math.floor(random.uniform() * 12),
      1 + Math.floor(random.uniform() * 28),
    );
    const n = 5 + Math.floor(random.uniform() * 5);
    const builds = Array.from({ length: count }, (_, b) => {
      const offset = (b - (count - 1) / 2) * 10;
      const noise = (sd: number) => (random.normal() * sd) / Math.sqrt(n);
      const clubSpeed = speed + (TRUTH.clubSpeed * offset) / 10 + noise(1.2);
      const carry = 160 + 18 * strength + (TRUTH.carry * offset) / 10 + noise(6);
      return {
        build: BUILDS[(at + b) % BUILDS.length]!,
        weight: Math.round(centre + offset),
        clubSpeed,
        carry,
        spin: 5900 - 120 * strength + (TRUTH.spin * offset) / 10 + noise(350),
      };
    });
    const best = builds.reduce((winner, one, b) => (one.carry > builds[winner]!.carry ? b : winner), 0);
    const verdict = ["clear", "leaning", "too close to call"][Math.floor(random.uniform() * 3)]!;
    for (const [b, one] of builds.entries()) {
      rows.push({
        ...empty,
        schema: SCHEMA_VERSION,
        entry: `s${s}-${b + 1}`,
        session: `s${s}`,
        date,
        player: `Player ${player}`,
        hand: player % 9 === 0 ? "left" : "right",
        club: "7 iron",
        kind: "mid iron",
        goal: "carry",
        build: one.build,
        baseline: b === 0,
        shaftWeight: one.weight,
        shots: n,
        kept: n,
        clubSpeedMean: one.clubSpeed,
        clubSpeedSd: 1.2,
        clubSpeedN: n,
        spinMean: one.spin,
        spinSd: 350,
        spinN: n,
        carryMean: one.carry,
        carrySd: 6,
        carryN: n,
        gain: one.carry - builds[0]!.carry,
        verdict,
        chosen: b === best && verdict !== "too close to call",
        chance: b === best ? 0.7 : 0.3 / (count - 1),
        ordered: b === best && s % 2 === 0 ? one.build : null,
        source: "fitting",
      });
    }
  }
  return rows;
}
