import { describe, expect, test } from "vitest";
import { comparisonJson } from "../../src/fitting/comparison-json.ts";
import { decide } from "../../src/fitting/decide.ts";
import { playerWords } from "../../src/fitting/player-words.ts";
import { type Session, sessionOf } from "../../src/fitting/session.ts";
import { unavailable } from "../../src/outcome/problem.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import { answer } from "../club/answer.ts";
import { PLAYER_SESSIONS } from "./player-sessions.ts";
import { sessionOfShots } from "./session-of-shots.ts";

const wordsOf = (session: Session) => playerWords(session, decide(session));
const all = (session: Session) => {
  const { tried, suggestion, why, sure, changes, meanings } = wordsOf(session);
  return [...tried, suggestion, ...why, ...sure, ...changes.map(({ words }) => words), ...meanings].join(
    "\n",
  );
};

// 1 yd = 0.9144 m (international yard and pound agreement, 1959).
const shownCarry = (yards: number, session: Session) =>
  session.units === "us" ? `${yards.toFixed(0)} yd` : `${(yards * 0.9144).toFixed(0)} m`;

describe.each(Object.entries(PLAYER_SESSIONS))(
  "a session that is %s, told to its player",
  (verdict, session) => {
    const { choice, builds, baseline } = comparisonJson(session);
    const words = wordsOf(session);
    const meanCarry = (name: string) => builds.find((build) => build.name === name)!.metrics.carry!.mean;

    test("has the verdict that the comparison has", () => {
      expect(choice!.verdict).toBe(verdict);
      expect(words.sure[0]!.toLowerCase()).toMatch(new RegExp(`^${verdict}`));
    });

    test("names the build that the comparison chose, or both where it could not choose", () => {
      expect(words.suggestion).toContain(choice!.build);
      const open = verdict === "too close to call";
      expect(words.suggestion.includes(choice!.runnerUp)).toBe(open);
      expect(words.between).toEqual({ from: open ? choice!.runnerUp : baseline, to: choice!.build });
    });

    test("says why with the comparison's own averages", () => {
      const { from, to } = words.between!;
      const told = words.why.join(" ");
      expect(told).toContain(`With ${to} the ball flew ${shownCarry(meanCarry(to), session)}`);
      const theirs = shownCarry(meanCarry(from), session);
      const same = theirs === shownCarry(meanCarry(to), session);
      expect(told).toContain(same ? `as far with ${from}` : `${theirs} with ${from}`);
      for (const { metric, from: before, to: after } of words.changes) {
        const mean = (name: string) => builds.find((build) => build.name === name)!.metrics[metric]!.mean;
        expect([before, after]).toEqual([mean(from), mean(to)]);
      }
    });

    test("says how sure with the comparison's own chances", () => {
      const chances = comparisonJson(session).chanceBest.carry!;
      const said = (name: string) => {
        const rounded = Math.round(100 * chances[name]!);
        return rounded >= 99 ? "99 or more" : rounded < 1 ? "fewer than 1" : String(rounded);
      };
      const third = Object.keys(chances).find((name) => name !== choice!.build && name !== choice!.runnerUp)!;
      expect(words.sure[0]).toContain(
        `${choice!.build} has ${said(choice!.build)} chances in 100 of being the best of the 3; ${choice!.runnerUp} has ${said(choice!.runnerUp)} and ${third} ${said(third)}.`,
      );
      expect(words.sure.join(" ")).toContain("6 shots with each build");
    });

    test("uses no word of the trade without a line that explains it", () => {
      const told = all(session);
      expect(told).not.toMatch(
        /\b(SD|standard deviation|confidence|interval|p-value|Welch|baseline|dispersion)\b/i,
      );
      for (const word of ["Build", "Carry", "Group", "Chances in 100", "Right and left"])
        expect(words.meanings.join("\n")).toContain(word);
      for (const { meaning } of words.changes) expect(meaning.length).toBeGreaterThan(10);
    });

    test("leaves no gap where a figure is missing", () => {
      expect(all(session)).not.toMatch(/NaN|undefined|null|Infinity/);
    });
  },
);

describe("the player's words", () => {
  test("leave right and left as they are seen for a left-handed player: looking from the ball to the target", () => {
    const rows = ["A", "B"].flatMap((name, b) =>
      [150, 152, 151, 153, 152].map((carry, i) => `${name}\t${carry + b}\t${8 + i}`),
    );
    const table = answer(readShots(["Build\tCarry (yd)\tOffline (yd)", ...rows].join("\n")));
    for (const leftHanded of [false, true]) {
      const told = all(sessionOf(table, { leftHanded, goal: "carry" }));
      expect(told).toContain("mostly right of the target");
    }
  });

  test("tell a left-handed player which side is right, and others nothing of it", () => {
    expect(all(PLAYER_SESSIONS.leaning)).toContain("left-handed player, right is the side you stand on");
    expect(all(PLAYER_SESSIONS.clear)).not.toContain("left-handed");
  });

  test("say that chances are rounded where those that stand there make 99, and nothing of it where they make 100", () => {
    // 24 + 43 + 32, and 8 + 78 + 14.
    expect(wordsOf(PLAYER_SESSIONS["too close to call"]).sure[0]).toMatch(/ 24\. Each is rounded, .* 100\.$/);
    expect(wordsOf(PLAYER_SESSIONS.leaning).sure[0]).toMatch(/ 8\.$/);
  });

  test("say why there is no suggestion yet", () => {
    const words = playerWords(PLAYER_SESSIONS.clear, unavailable("Hit at least two with each."));
    expect(words.suggestion).toBe("No suggestion yet.");
    expect(words.why).toEqual(["Hit at least two with each."]);
    expect([words.between, words.changes]).toEqual([null, []]);
  });

  test("say which side the other build's shots came down on, where that changed", () => {
    const carries = [150, 153.5, 151, 154, 149.5, 152];
    const told = (sides: readonly number[]) => {
      const shots = carries.map((carry, i) => [carry, sides[i]!] as const);
      const straight = carries.map((carry, i) => [carry + 9, [2, -3, 1, -1, 3, -2][i]!] as const);
      return wordsOf(sessionOfShots({ Now: shots, Trial: straight }, { goal: "carry" })).why.join(" ");
    };
    expect(told([-9, -12, -8, -11, -10, -9])).toContain(
      "Shots with Now came down mostly left of the target.",
    );
    expect(told([9, 12, 8, 11, 10, 9])).toContain("Shots with Now came down mostly right of the target.");
    expect(told([-2, 3, 1, -3, 2, -1])).not.toContain("Shots with Now came down");
    expect(told([2, 3, 1, -3, 2, -1])).toContain("Of the two builds it did best");
  });

  test("explain no chances where none stand on the page", () => {
    const { meanings } = playerWords(PLAYER_SESSIONS.clear, unavailable("Hit at least two with each."));
    expect(meanings.map((meaning) => meaning.slice(0, 5))).toEqual(["Build", "Carry", "Right"]);
  });

  test("count shots that were set aside", () => {
    const { table } = PLAYER_SESSIONS.clear;
    const session = {
      ...PLAYER_SESSIONS.clear,
      table: { ...table, keep: table.keep.map((_, i) => i !== 0) },
    };
    expect(wordsOf(session).tried[0]).toContain(
      "You hit 18 balls with 3 builds. 17 count; 1 was set aside: 5 with 100 g",
    );
  });
});

describe("a session with a figure that no shot can have", () => {
  const good = { A: [150, 151, 152], B: [160, 161, 162] };

  test("tells its player to have it put right before going by the page", () => {
    const session = (A: number[]) => sessionOfShots({ ...good, A }, { goal: "carry" });
    expect(wordsOf(session([150, 1502, 152])).sure.at(-1)).toMatch(/cannot be right/);
    expect(all(session(good.A))).not.toContain("cannot be right");
  });
});
