import { describe, expect, it } from "vitest";
import type { Session } from "../../src/fitting/session.ts";
import { benchJob, type CarryOf } from "../../src/sheets/bench-job.ts";
import { benchWords } from "../../src/sheets/bench-words.ts";
import { answer, refusal } from "../club/answer.ts";
import { sessionOfShots } from "../fitting/session-of-shots.ts";
import { demoSession } from "./demo-session.ts";
import { smallJob, TWO_IRONS } from "./small-bench.ts";
import { smallSession } from "./small-session.ts";

const build = (more: object = {}): Partial<Session> => ({ builds: [{ name: "A", weight: 105, ...more }] });
const jobOf = (session: Partial<Session>, text: string | null, carryOf?: CarryOf) =>
  benchJob({ ...smallSession(), ...session }, "A", text, carryOf);

describe("benchJob(session, chosen, setText, carryOf), the set", () => {
  it("is the usual one of the club that was hit, by the table or the title", () => {
    const clubs = (title: string) =>
      answer(jobOf({ ...build(), title }, null)).request.clubs.map(({ club }) => club);
    expect(clubs("7-iron fitting")).toContain("7i");
    expect(clubs("Driver fitting")).not.toContain("7i");
    // The build's own length goes to the very club that was hit: by hand, 38 in at the 5-iron is 37.5 at the 6.
    const lengthOf = (title: string, club: string) =>
      answer(jobOf({ ...build({ length: 38 }), title }, null)).request.clubs.find((one) => one.club === club)!
        .length;
    expect([lengthOf("5-iron", "5i"), lengthOf("5-iron", "6i"), lengthOf("6-iron", "6i")]).toEqual([
      38, 37.5, 38,
    ]);
    const table = { ...smallSession().table, club: smallSession().table.club.map(() => "6-iron") };
    const named = answer(jobOf({ ...build({ length: 38 }), title: "Fitting", table }, null));
    expect(named.request.clubs.find(({ club }) => club === "6i")!.length).toBe(38);
  });

  it("is told as not there in the words that were typed, without gaps", () => {
    expect(refusal(benchJob(smallSession(), "  D ", null))).toMatch(/^"D" is not among .*"A", "B", "C"\.$/);
  });

  it("is refused in the unit shown where no set file was written in another", () => {
    const said = (units: "us" | "metric") =>
      refusal(jobOf({ ...build({ length: -10 }), units, title: "7-iron" }, null));
    expect(said("us")).toMatch(/ in\b/);
    expect(said("us")).not.toMatch(/ cm\b/);
    expect(said("metric")).toMatch(/ cm\b|centimetres/);
  });
});

describe("benchJob(session, chosen, setText, carryOf), carries", () => {
  const carries = (job: ReturnType<typeof jobOf>) => answer(job).plan.clubs.map(({ carry }) => carry);

  it("are what the caller says, and then a note tells that they were computed", () => {
    const job = jobOf({}, TWO_IRONS, ({ loft }) => 200 - loft!);
    expect(carries(job)).toEqual([167, 163]);
    expect(answer(job).notes).toEqual([expect.stringContaining("computed from the mean strike")]);
  });

  it("are the tested build's own mean at the loft that was tested, else", () => {
    const session = sessionOfShots({ A: [150, 152, 154] }, { title: "7-iron" });
    const job = benchJob({ ...session, builds: [{ name: "A", loft: 33 }] }, "A", TWO_IRONS);
    expect(carries(job)).toEqual([152, undefined]);
    expect(answer(job).notes).toEqual([
      expect.stringContaining("computed from the mean strike"),
      expect.stringMatching(/^Clubs without a carry .* too far from the tested one/),
    ]);
  });

  it("stay those of the set file, without a note where all are", () => {
    const text = TWO_IRONS.replace("loft; lie", "loft; lie; carry").replace("62\n", "62; 160\n");
    const all = jobOf({}, text.replace("62.5\n", "62.5; 150\n"), () => 1);
    expect([carries(all), answer(all).notes]).toEqual([[160, 150], undefined]);
    const some = jobOf({}, text, () => 1);
    expect([carries(some), answer(some).notes?.length]).toEqual([[160, 1], 1]);
  });

  it("carry no note where there are none", () => {
    expect([carries(jobOf({}, TWO_IRONS)), answer(jobOf({}, TWO_IRONS)).notes]).toEqual([
      [undefined, undefined],
      undefined,
    ]);
  });
});

describe("benchJob(session, chosen, setText, carryOf), the bin", () => {
  it("is warned of where a shaft is out of tolerance, over or under", () => {
    const warnings = (bin: string) => smallJob(`bin; ${bin}\n${TWO_IRONS}`).warnings;
    expect(warnings("103; 107.5")).toEqual([
      expect.stringMatching(/^Club 7: shaft 1 .* 103 g, is 2\.0 g under /),
      expect.stringMatching(/^Club 8: shaft 2 .* 107\.5 g, is 2\.5 g over /),
    ]);
    // A gram off is usual (common practice, no source).
    expect(warnings("104; 106")).toEqual([]);
    expect(smallJob(`tolerance; shaft; 3\nbin; 103; 107.5\n${TWO_IRONS}`).warnings).toEqual([]);
  });
});

describe("benchWords(job)", () => {
  const words = (facts: Partial<Session>) => benchWords(smallJob(TWO_IRONS, facts))("Cut 0.5 in of A 6.0");

  it("says lengths and figures as the job's place writes them, and names as they are", () => {
    expect(words({})).toBe("Cut 0.5 in of A 6.0");
    expect(words({ units: "metric", decimalMark: "," })).toBe("Cut 1,27 cm of A 6,0");
    const job = { ...smallJob(TWO_IRONS, { decimalMark: "," }), player: "6.0", units: undefined };
    expect(benchWords(job)("Cut 0.5 in of A 6.0")).toBe("Cut 0,5 in of A 6.0");
    expect(benchWords({ ...job, player: "", build: { name: "A 6.0" } })("Cut 0.5 in of A 6.0")).toBe(
      "Cut 0,5 in of A 6.0",
    );
    expect(benchWords({ ...job, decimalMark: undefined })("Cut 0.5 in")).toBe("Cut 0.5 in");
  });
});

it("takes the demo's chosen build in one step to six irons", () => {
  const { request } = answer(benchJob(demoSession(), "105 g mid-launch", null));
  expect(request.clubs.map(({ club }) => club)).toEqual(["5i", "6i", "7i", "8i", "9i", "PW"]);
});
