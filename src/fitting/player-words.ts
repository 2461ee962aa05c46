import { mean } from "simple-statistics";
import { isProblem, type Outcome } from "../outcome/problem.ts";
import { buildGroup, missPattern, missSide } from "./build-group.ts";
import { buildValues } from "./build-values.ts";
import { CLEAR, type Decision, LEANING } from "./decide.ts";
import { goalMeasured } from "./goal-measured.ts";
import { groupDistances } from "./group-distances.ts";
import { heldAgainst } from "./held-against.ts";
import { impossibleForPlayer } from "./impossible-words.ts";
import { listWords } from "./list-words.ts";
import { driftForPlayer } from "./order-drift.ts";
import { outOfHundred, roundedNote } from "./out-of-hundred.ts";
import { shownFigure } from "./plain-sentences.ts";
import { type PlayerChange, playerChanges } from "./player-changes.ts";
import type { Goal, Session } from "./session.ts";
import { verdictWords } from "./verdict-words.ts";
import { windowReason } from "./window-reason.ts";

/** What a player takes home, in words that need no fitter beside them. */
export interface PlayerWords {
  readonly tried: readonly string[];
  /** Which build; one sentence. */
  readonly suggestion: string;
  readonly why: readonly string[];
  readonly sure: readonly string[];
  /** The two builds that `changes` stand between; null while there is no suggestion. */
  readonly between: { readonly from: string; readonly to: string } | null;
  readonly changes: readonly PlayerChange[];
  /** Every word on the page that a player may not have met. */
  readonly meanings: readonly string[];
}

const WANTED: Readonly<Record<Exclude<Goal, "overall">, string>> = {
  carry: "the longest carry, that is how far the ball flies before it lands",
  tight: "the tightest group, that is shots that land close together",
  window: "a flight that starts, climbs, spins and comes down as suits the club",
};

/** Chances that lie nearer to each other than this say the same (common sense, no source). */
const LEVEL = 0.1;

/** Says a session to the player: what was tried, what we suggest and why, how sure that is, and what changed. */
export function playerWords(session: Session, decision: Outcome<Decision>): PlayerWords {
  const tried = triedWords(session);
  if (isProblem(decision)) {
    const sure = ["Nothing is sure yet."];
    return {
      ...{ tried, suggestion: "No suggestion yet.", why: [decision.message], sure },
      ...{ between: null, changes: [], meanings: meanings(session, null) },
    };
  }
  const said = verdictWords(session, decision);
  const between = { from: heldAgainst(session, decision), to: decision.best.build };
  return {
    tried,
    suggestion: suggestion(decision),
    why: [...whyWords(session, decision, between), ...said.costs],
    sure: sureWords(session, decision, said.next),
    between,
    changes: playerChanges(session, between.from, between.to),
    meanings: meanings(session, decision),
  };
}

function triedWords(session: Session): string[] {
  const { table, builds, baseline, goal } = session;
  const counted = (name: string) => table.build.filter((build, i) => build === name && table.keep[i]).length;
  const all = builds.reduce((sum, { name }) => sum + counted(name), 0);
  const aside = table.size - all;
  const shots =
    aside === 0 ? `All ${all} count` : `${all} count; ${aside} ${aside === 1 ? "was" : "were"} set aside`;
  const others = builds.length > 1 ? ` ${baseline} is the one the others have to beat.` : "";
  return [
    `You hit ${table.size} balls with ${builds.length === 1 ? "one build" : `${builds.length} builds`}. ${shots}: ${listWords(builds.map(({ name }) => `${counted(name)} with ${name}`))}.${others}`,
    `What counted was ${goal === "overall" ? goalMeasured(session, goal) : WANTED[goal]}.`,
  ];
}

function suggestion({ verdict, best, runnerUp }: Decision): string {
  if (verdict === "clear") return `We suggest ${best.build}.`;
  if (verdict === "leaning") return `We lean towards ${best.build}; it is not proved yet.`;
  return `These shots cannot choose between ${best.build} and ${runnerUp.build}.`;
}

function whyWords(
  session: Session,
  decision: Decision,
  { from, to }: { readonly from: string; readonly to: string },
): string[] {
  const { verdict, best, runnerUp, chances, goal } = decision;
  const open = verdict === "too close to call";
  const measured = goalMeasured(session, goal);
  const level = best.chance - runnerUp.chance < LEVEL;
  const lines = !open
    ? [
        `Of the ${chances.builds.length === 2 ? "two" : chances.builds.length} builds it did best for ${measured}.`,
      ]
    : level
      ? [`${to} and ${from} came out level for ${measured}.`]
      : [`${to} did a touch better for ${measured}, but by too little to choose by.`];
  const carries = [to, from].map((name) => buildValues(session.table, name, "carry"));
  if (carries.every((values) => values.length > 0)) {
    const [mine, theirs] = carries.map((values) => shownFigure(mean(values), "carry", session.units));
    lines.push(
      mine === theirs
        ? `With ${to} the ball flew ${mine} on average before it landed, and as far with ${from}.`
        : `With ${to} the ball flew ${mine} on average before it landed, against ${theirs} with ${from}.`,
    );
  }
  const groups = [to, from].map((name) => buildGroup(session, name));
  const group = groupDistances(groups[0]!, groups[1]!, session.units);
  if (group) {
    const shots =
      group.of === "half" ? `Half the shots with ${to} landed within` : `Shots with ${to} landed on average`;
    const beside = group.mine === group.theirs ? "the same as" : `against ${group.theirs}`;
    const away = group.of === "half" ? "of" : "from";
    lines.push(
      `${shots} ${group.mine} ${away} the middle of their group, ${beside} with ${from}.`,
      `Where shots with ${to} came down: ${missPattern(groups[0]!)}.`,
    );
    // A line that changed is a reason of its own, which neither carry nor the size of a group tells.
    const [side, other] = groups.map((one) => missSide(one!));
    if (other && side !== other) lines.push(`Shots with ${from} came down ${other}.`);
  }
  if (goal === "window" || goal === "overall") lines.push(...windowReason(session, from, to));
  return lines;
}

function sureWords(session: Session, decision: Decision, next: string): string[] {
  const { verdict, best, chances } = decision;
  const first = outOfHundred(best.chance);
  const others = chances.builds.filter((one) => one !== best).sort((a, b) => b.chance - a.chance);
  const rest = listWords(
    others.map(({ build, chance }, i) => `${build} ${i === 0 ? "has " : ""}${outOfHundred(chance)}`),
  );
  const rounded = roundedNote(chances.builds.map(({ chance }) => chance));
  const counts = chances.builds.map(({ n }) => n);
  const [fewest, most] = [Math.min(...counts), Math.max(...counts)];
  const each = fewest === most ? String(fewest) : `${fewest} to ${most}`;
  return [
    `${SAID[verdict]} As far as these shots can tell, ${best.build} has ${first} chances in 100 of being the best of the ${chances.builds.length === 2 ? "two" : chances.builds.length}; ${rest}.${rounded && ` ${rounded}`}`,
    `This rests on ${each} ${most === 1 ? "shot" : "shots"} with each build on one day. Another day could change the order.`,
    next,
    ...driftForPlayer(session),
    ...impossibleForPlayer(session),
  ];
}

const SAID: Readonly<Record<Decision["verdict"], string>> = {
  clear: "Clear.",
  leaning: "Leaning, not clear.",
  "too close to call": "Too close to call.",
};

/** Words are explained that stand on the page: without a verdict no chances do. */
function meanings({ leftHanded }: Session, decision: Decision | null): string[] {
  const chances = `Chances in 100: if a hundred players were told the same on shots like these, for about so many it would be right. From ${100 * CLEAR} we say clear, from ${100 * LEANING} leaning, below that too close to call.`;
  const sides = leftHanded
    ? "Right and left are as you see them looking from the ball to the target. For you as a left-handed player, right is the side you stand on."
    : "Right and left are as you see them looking from the ball to the target.";
  return [
    "Build: one way of putting the club together, named here by its shaft.",
    "Carry: how far the ball flies before it lands. Group: where all the shots with one build came down.",
    ...(decision ? [chances] : []),
    sides,
  ];
}
