import { useState } from "preact/hooks";
import { isProblem } from "../outcome/problem.ts";
import { testPlanWorkbook } from "../sheets/test-plan-sheet.ts";
import { metricOf } from "../shots/metrics.ts";
import type { UnitSet } from "../shots/unit-set.ts";
import type { DeskAction } from "./desk.ts";
import { displayOf } from "./display.ts";
import type { PlanChoice } from "./draft.ts";
import { NumberField } from "./fields.tsx";
import type { Figures } from "./figures.ts";
import { isTyping } from "./is-typing.ts";
import { type PlannedTest, plannedTest } from "./planned-test.ts";
import type { Maker } from "./use-making.ts";

interface PlanViewProps {
  readonly choice: PlanChoice;
  readonly units: UnitSet;
  readonly figures: Figures;
  readonly maker: Maker;
  readonly dispatch: (action: DeskAction) => void;
}

/** Before the first ball: which builds, how many shots, and the order that favours none. */
export function PlanView({ choice, units, figures, maker, dispatch }: PlanViewProps) {
  const tell = (plan: Partial<PlanChoice>) => dispatch({ does: "plan", plan });
  const carry = displayOf("carry", units, figures);
  const perYard = carry.value(1);
  const yards = (label: string, key: "difference" | "spread", least: number, most: number) => (
    <NumberField
      needed
      label={`${label}, ${carry.unit}`}
      value={choice[key] * perYard}
      least={least * perYard}
      most={most * perYard}
      figures={figures}
      onChange={(value) => value !== undefined && tell({ [key]: value / perYard })}
    />
  );
  const found = choice.builds.trim() === "" ? null : plannedTest(choice);
  return (
    <>
      <label for="plan-builds">Builds to try, one a line</label>
      <textarea
        id="plan-builds"
        rows={4}
        value={choice.builds}
        onInput={(event) =>
          dispatch({
            does: "plan",
            plan: { builds: event.currentTarget.value },
            typed: isTyping(event, choice.builds),
          })
        }
      />
      <fieldset>
        <legend>How many shots</legend>
        <label class="choice">
          <input
            type="radio"
            name="plan-shots"
            checked={choice.shots !== null}
            onChange={() => tell({ shots: 6 })}
          />
          So many with each build
        </label>
        {choice.shots !== null && (
          <div class="fields">
            <NumberField
              needed
              label="Shots each"
              value={choice.shots}
              least={1}
              most={40}
              figures={figures}
              onChange={(value) => value !== undefined && tell({ shots: Math.round(value) })}
            />
          </div>
        )}
        <label class="choice">
          <input
            type="radio"
            name="plan-shots"
            checked={choice.shots === null}
            onChange={() => tell({ shots: null })}
          />
          Enough to see a difference that matters
        </label>
        {choice.shots === null && (
          <>
            <div class="fields">
              {yards("Difference that matters", "difference", 1, 30)}
              {yards("Spread of single shots", "spread", 1, 40)}
            </div>
            <p class="quiet">
              In {metricOf("carry").label.toLowerCase()}, {metricOf("carry").meaning}. Spread: about two shots
              in three lie within it of their average.
            </p>
          </>
        )}
      </fieldset>
      {found !== null &&
        (isProblem(found) ? (
          <p class="problem" role="alert">
            {found.message}
          </p>
        ) : (
          <Rounds test={found} maker={maker} />
        ))}
    </>
  );
}

function Rounds({ test, maker }: { readonly test: PlannedTest; readonly maker: Maker }) {
  const [copied, setCopied] = useState("");
  const copy = async () => {
    const rows = test.rounds.map((round, i) => [i + 1, ...round].join("\t"));
    try {
      await navigator.clipboard.writeText(rows.join("\n"));
      setCopied("Copied.");
    } catch {
      setCopied("This place does not let the pane copy: put the plan on a sheet instead.");
    }
  };
  const write = () => maker.make(async (taken, made) => testPlanWorkbook(test, taken, made));
  return (
    <>
      <p id="plan-words">{test.words}</p>
      <ol class="rounds" aria-label="Rounds, builds in the order they are hit">
        {test.rounds.map((round, i) => (
          <li key={i}>{round.join(" \u203a ")}</li>
        ))}
      </ol>
      <div class="buttons">
        <button type="button" id="write-plan" onClick={() => void write()}>
          Put it on a sheet to print
        </button>
        <button type="button" id="copy-plan" onClick={() => void copy()}>
          Copy
        </button>
      </div>
      <p class="quiet" aria-live="polite">
        {copied}
      </p>
    </>
  );
}
