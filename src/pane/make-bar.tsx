import { useRef } from "preact/hooks";
import type { Session } from "../fitting/session.ts";
import { CancelButton } from "./cancel-button.tsx";
import type { Maker, Making } from "./use-making.ts";
import { writtenWords } from "./written-words.ts";

interface MakeBarProps {
  readonly maker: Maker;
  readonly session: Session | null;
}

/** The one button that everything leads to, always in sight, and what came of pressing it. */
export function MakeBar({ maker: { making, slow, make, cancel }, session }: MakeBarProps) {
  const working = making.is === "working";
  const main = useRef<HTMLButtonElement>(null);
  const compare = (shots: Session) =>
    make(async (taken, made) => {
      const { comparisonWorkbook } = await import("../sheets/comparison-workbook.ts");
      return comparisonWorkbook(shots, taken, made);
    });
  // Not disabled while it works: a button that is disabled under the finger drops the keyboard's place.
  return (
    <div class="make">
      <p role="status" class={making.is === "failed" ? "problem" : ""}>
        {sentenceOf(making)}
      </p>
      {working && slow && <progress aria-label="Sheets written" value={making.share} max={1} />}
      <div class="buttons">
        <button
          type="button"
          id="make-sheets"
          ref={main}
          class="primary"
          disabled={session === null}
          aria-disabled={working}
          onClick={() => session && !working && void compare(session)}
        >
          Make the comparison sheets
        </button>
        {working && slow && <CancelButton id="cancel-making" cancel={cancel} after={main} />}
      </div>
    </div>
  );
}

function sentenceOf(making: Making): string {
  switch (making.is) {
    case "idle":
      return "";
    case "working":
      return "Writing the sheets\u2026";
    case "done":
      return writtenWords(making);
    case "failed":
      return making.message;
  }
}
