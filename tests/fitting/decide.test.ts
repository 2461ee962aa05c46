import { describe, expect, it } from "vitest";
import { CLEAR, type Decision, decide } from "../../src/fitting/decide.ts";
import { DEMO_FACTS, DEMO_TEXT } from "../../src/fitting/demo.ts";
import { GOALS, sessionOf } from "../../src/fitting/session.ts";
import { verdictWords } from "../../src/fitting/verdict-words.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";
import { sessionOfShots } from "./session-of-shots.ts";

const decided = (...args: Parameters<typeof sessionOfShots>) => decide(sessionOfShots(...args), "carry");

describe("decide(session, goal)", () => {
  // Each pair overlaps somewhere; with three shots a build none of them may be called clear.
  const overlapping: [string, number[], number[]][] = [
    ["a lucky three", [150, 152, 161], [160, 162, 164]],
    ["one shot of the other reaches in", [140, 141, 160], [160, 160.5, 161]],
    ["tight but touching", [150, 150.1, 150.2], [150.2, 150.3, 150.4]],
    ["far apart but for one", [100, 101, 200], [198, 199, 200.5]],
    ["equal best shots", [120, 130, 170], [168, 169, 170]],
  ];
  it.each(overlapping)("never calls three overlapping shots clear: %s", (_, worse, better) => {
    const decision = decided({ A: worse, B: better }) as Decision;
    expect(decision.verdict).not.toBe("clear");
  });

  // The chance alone would say clear here; one shot of the worse build that reaches in must hold it back.
  const six = [140, 141, 142, 143, 141, 142];
  const twelve = [140, 143.5, 141, 144.5, 142, 145.5, 143, 140.5, 144, 141.5, 145, 142.5];
  const sureButTouching: Record<string, number[]>[] = [
    { A: [150, 150.2, 157.1], B: [157, 160, 163], C: twelve },
    { A: [150, 150.5, 156], B: [155.9, 159, 160], C: six, D: six },
  ];
  it.each(sureButTouching)("holds a chance beyond 95 in 100 back where three shots overlap: %o", (shots) => {
    const decision = decided(shots) as Decision;
    expect(decision.best.chance).toBeGreaterThan(CLEAR);
    expect(decision.verdict).toBe("leaning");
  });

  it("never calls three shots clear that overlap with a third build's", () => {
    const decision = decided({
      Best: [160, 160.2, 160.4],
      Second: [150, 150.2, 150.4],
      Third: [120, 121, 160.3],
    }) as Decision;
    expect(decision.verdict).not.toBe("clear");
  });

  it("calls builds clear that lie far apart with little spread", () => {
    const decision = decided({ A: [150, 151, 149, 150.5, 150], B: [165, 166, 164, 165.5, 165] }) as Decision;
    expect(decision.verdict).toBe("clear");
    expect(decision.best.build).toBe("B");
    expect(decision.more).toEqual({ each: 0, builds: [] });
  });

  it("gives identical builds equal chances and calls them too close", () => {
    const shots = [150, 155, 152, 158];
    const decision = decided({ A: shots, B: shots, C: shots }) as Decision;
    expect(decision.verdict).toBe("too close to call");
    for (const { chance } of decision.chances.builds) expect(chance).toBeCloseTo(1 / 3, 9);
  });

  it("gives no limits for one shot a build and says so", () => {
    expect(decided({ A: [150], B: [160] })).toMatchObject({
      kind: "unavailable",
      message: expect.stringContaining("One shot a build"),
    });
  });

  it("says that one build alone cannot be compared", () => {
    expect(decided({ A: [150, 152, 154] })).toMatchObject({
      message: expect.stringContaining("at least two builds"),
    });
  });

  it("judges the tightest group by the distances from each group's own middle", () => {
    const tight = {
      Narrow: [
        [150, 0],
        [152, 1],
        [151, -1],
        [149, 0],
        [150, 1],
      ],
      Wide: [
        [150, -20],
        [170, 15],
        [140, 5],
        [160, 25],
        [135, -18],
      ],
    } as const;
    const decision = decide(sessionOfShots(tight), "tight") as Decision;
    expect(decision.best.build).toBe("Narrow");
    expect(decision.verdict).toBe("clear");
  });

  it("asks for fewer more shots the farther two builds lie apart", () => {
    const base = [148, 152, 149, 151, 150, 154, 146];
    const moreFor = (gap: number) =>
      (decided({ A: base, B: base.map((x) => x + gap) }) as Decision).more.each!;
    expect(moreFor(2)).toBeLessThan(moreFor(1.2));
    expect(moreFor(2)).toBeGreaterThan(0);
  });

  it("asks for as many more as bring each build to three shots at least, however clear one or two seem", () => {
    const moreFor = (shots: Record<string, number[]>) => (decided(shots) as Decision).more.each;
    expect(moreFor({ A: [150], B: [160, 158] })).toBe(2);
    expect(moreFor({ A: [150, 151], B: [160, 158] })).toBeGreaterThanOrEqual(1);
  });

  it("says that builds alike to a hair would not be parted by 40 more shots", () => {
    const base = [140, 160, 150, 145, 155];
    const decision = decided({ A: base, B: base.map((x) => x + 0.1) }) as Decision;
    expect(decision.more.each).toBeNull();
  });

  it("answers the same for the same table, for every goal", () => {
    const table = readShots(DEMO_TEXT) as ShotTable;
    for (const goal of GOALS) {
      const session = sessionOf(table, { ...DEMO_FACTS, goal });
      expect(decide(session)).toEqual(decide(session));
      const { chances } = decide(session) as Decision;
      expect(chances.builds.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 9);
    }
  });

  it("leaves unticked shots out", () => {
    const session = sessionOfShots({ A: [150, 151, 149, 90], B: [140, 141, 139, 140] });
    const keep = session.table.keep.map((_, i) => session.table.values.get("carry")![i] !== 90);
    const without = decide({ ...session, table: { ...session.table, keep } }, "carry") as Decision;
    expect(without.best.build).toBe("A");
    expect(without.best.n).toBe(3);
    expect((decide(session, "carry") as Decision).best.chance).toBeLessThan(without.best.chance);
  });
});

describe("verdictWords(session, decision)", () => {
  const sentences = (session: ReturnType<typeof sessionOfShots>) => {
    const words = verdictWords(session, decide(session, "carry"));
    return [words.headline, ...words.reasons, ...words.costs, words.next];
  };

  it("says clear, leaning or too close to call in its headline, with the builds by name", () => {
    expect(sentences(sessionOfShots({ A: [150, 151, 149, 150], B: [165, 166, 164, 165] }))[0]).toMatch(
      /^Clear: B /,
    );
    expect(sentences(sessionOfShots({ A: [150, 158, 146, 152], B: [155, 160, 151, 158] }))[0]).toMatch(
      /^(Leaning to B|Too close to call between B and A)/,
    );
  });

  it("names no test and no p in any sentence", () => {
    const session = sessionOfShots({ A: [150, 158, 146, 152], B: [155, 160, 151, 158] });
    for (const sentence of sentences(session)) {
      expect(sentence).not.toMatch(
        /\bp\s*[<=]|p-value|signific|null hypothesis|Welch|Dunnett|ANOVA|posterior/i,
      );
    }
  });

  it("says what the choice costs: a wider group than the runner-up's", () => {
    const session = sessionOfShots({
      Long: [
        [170, -15],
        [172, 16],
        [169, -12],
        [171, 14],
        [170, 10],
      ],
      Straight: [
        [160, 1],
        [161, 0],
        [159, -1],
        [160, 0.5],
        [161, -0.5],
      ],
    });
    expect(sentences(session).join(" ")).toMatch(/What Long costs against Straight: .*wider group/);
  });

  it("hands on the reason where there is no verdict", () => {
    const session = sessionOfShots({ A: [150], B: [160] });
    expect(verdictWords(session, decide(session))).toMatchObject({ headline: "No verdict yet" });
  });
});
