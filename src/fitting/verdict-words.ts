import { isProblem, type Outcome } from "../outcome/problem.ts";
import type { MetricKey } from "../shots/metrics.ts";
import { buildGroup } from "./build-group.ts";
import { type Comparison, compareBuilds } from "./compare-builds.ts";
import type { Decision } from "./decide.ts";
import { goalMeasured } from "./goal-measured.ts";
import { groupDistances } from "./group-distances.ts";
import { heldAgainst } from "./held-against.ts";
import { listWords } from "./list-words.ts";
import { outOfHundred } from "./out-of-hundred.ts";
import { shownFigure } from "./plain-sentences.ts";
import type { Goal, Session } from "./session.ts";

/** The verdict as a player is told it. No sentence names a probability test. */
export interface VerdictWords {
  /** "Clear: 105 g mid-launch suits best overall." */
  readonly headline: string;
  /** Why, with the two or three figures behind it. */
  readonly reasons: readonly string[];
  /** What the choice costs against the runner-up; empty where it costs nothing that shows. */
  readonly costs: readonly string[];
  /** What to hit to be surer. */
  readonly next: string;
}

const GOAL_WORDS: Readonly<Record<Exclude<Goal, "overall">, string>> = {
  carry: "the longest carry",
  tight: "the tightest group",
  window: "flight in the target windows",
};

/** Says a decision in words, or why there is none yet. A comparison that is known already need not be made again. */
export function verdictWords(
  session: Session,
  decision: Outcome<Decision>,
  comparison = isProblem(decision) ? null : compareBuilds(session),
): VerdictWords {
  if (isProblem(decision) || comparison === null) {
    const why = isProblem(decision) ? [decision.message] : [];
    return { headline: "No verdict yet", reasons: why, costs: [], next: "" };
  }
  return {
    headline: headline(session, decision),
    reasons: reasons(session, decision, comparison),
    costs: costs(session, decision, comparison),
    next: nextWords(decision),
  };
}

function headline(session: Session, { verdict, best, runnerUp, goal }: Decision): string {
  const purpose = `for ${goal === "overall" ? goalMeasured(session, goal) : GOAL_WORDS[goal]}`;
  if (verdict === "clear") return `Clear: ${best.build} suits this player best ${purpose}.`;
  if (verdict === "leaning") return `Leaning to ${best.build} ${purpose}; not proved yet.`;
  return `Too close to call between ${best.build} and ${runnerUp.build} ${purpose}.`;
}

function reasons(session: Session, decision: Decision, comparison: Comparison): string[] {
  const { best, runnerUp, chances } = decision;
  const of = chances.builds.length === 2 ? "the two" : `the ${chances.builds.length}`;
  const lines = [
    `On these shots ${best.build} has about ${outOfHundred(best.chance)} chances in 100 of being the best of ${of}; ${runnerUp.build} has ${outOfHundred(runnerUp.chance)}.`,
  ];
  const other = heldAgainst(session, decision);
  const compared = (key: MetricKey, what: string) => {
    const [mine, theirs] = [best.build, other].map((name) => metricsOf(comparison, name)?.get(key)?.mean);
    if (mine === undefined || theirs === undefined) return;
    const [own, others] = [mine, theirs].map((value) => shownFigure(value, key, session.units));
    lines.push(`${what}: ${own} on average, ${own === others ? "as" : `against ${others}`} with ${other}.`);
  };
  compared("carry", "Carry");
  const [mine, theirs] = [best.build, other].map((name) => buildGroup(session, name));
  const group = groupDistances(mine!, theirs!, session.units);
  if (group) {
    const shots = group.of === "half" ? "Half of its shots land within" : "Its shots land on average";
    const beside = group.mine === group.theirs ? "as" : `against ${group.theirs}`;
    const from = group.of === "half" ? "of" : "from";
    lines.push(`${shots} ${group.mine} ${from} the middle of its group, ${beside} with ${other}.`);
  }
  return lines;
}

/** What a lower figure of a metric takes from the player. */
const LOSSES: readonly { readonly key: MetricKey; readonly less: string }[] = [
  { key: "carry", less: "shorter carry" },
  { key: "ballSpeed", less: "less ball speed" },
  { key: "height", less: "lower flight" },
  { key: "landingAngle", less: "shallower landing, so more roll and less hold on the green" },
];

/** A difference this many of its own errors wide is worth a word; smaller ones come and go. The figure is ours. */
const WORTH_SAYING = 1.5;

function costs(session: Session, decision: Decision, comparison: Comparison): string[] {
  const { best, runnerUp } = decision;
  // Carry and group of these two stand among the reasons: their figures need no telling twice.
  const told = heldAgainst(session, decision) === runnerUp.build;
  const [mine, others] = [best.build, runnerUp.build].map((name) => metricsOf(comparison, name));
  const said = LOSSES.flatMap(({ key, less }) => {
    const [a, b] = [mine?.get(key), others?.get(key)];
    if (a?.sd == null || b?.sd == null) return [];
    const error = Math.sqrt(a.sd ** 2 / a.n + b.sd ** 2 / b.n);
    if (b.mean - a.mean <= WORTH_SAYING * error) return [];
    const [own, theirs] = [a.mean, b.mean].map((value) => shownFigure(value, key, session.units));
    if (own === theirs) return [];
    return [told && key === "carry" ? less : `${less} (${own} against ${theirs})`];
  });
  const [group, other] = [best.build, runnerUp.build].map((name) => buildGroup(session, name));
  if (group?.meanRadius != null && other?.meanRadius != null && group.meanRadius > 1.3 * other.meanRadius) {
    const [own, theirs] = [group.meanRadius, other.meanRadius].map((value) =>
      shownFigure(value, "offline", session.units),
    );
    // A mean and a half may differ on which group is the wider one: then the mean needs its figures.
    const shown = told && groupDistances(group, other, session.units)?.wider;
    const figures = shown ? "" : ` (${own} from the middle on average, against ${theirs})`;
    if (own !== theirs) said.push(`a wider group${figures}`);
  }
  return said.length === 0 ? [] : [`What ${best.build} costs against ${runnerUp.build}: ${said.join("; ")}.`];
}

function nextWords({ verdict, more }: Decision): string {
  if (verdict === "clear")
    return "No more shots are needed to choose; a few on another day would confirm it.";
  if (more.each === null) {
    return `Going by these shots, even 40 more with each would hardly tell ${listWords(more.builds)} apart: choose between them by feel, by price or by what fits the rest of the set.`;
  }
  const shots = more.each === 1 ? "one more shot" : `about ${more.each} more shots`;
  return `To settle it, hit ${shots} each with ${listWords(more.builds)}, if the builds go on performing as they have so far.`;
}

function metricsOf(comparison: Comparison, name: string) {
  return comparison.builds.find((build) => build.name === name)?.metrics;
}
