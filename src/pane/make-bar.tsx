import type { RefObject } from "preact";
import { useEffect, useRef } from "preact/hooks";
import type { Session } from "../fitting/session.ts";
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
        {working && slow && <CancelButton cancel={cancel} after={main} />}
      </div>
    </div>
  );
}

interface CancelButtonProps {
  readonly cancel: () => void;
  /** Where the keyboard goes when this button goes. */
  readonly after: RefObject<HTMLButtonElement | null>;
}

/** Stops the writing. It is there only while there is something to stop, and hands the keyboard's place on. */
function CancelButton({ cancel, after }: CancelButtonProps) {
  const held = useRef(false);
  useEffect(
    () => () => {
      if (held.current) after.current?.focus();
    },
    [],
  );
  return (
    <button
      type="button"
      id="cancel-making"
      onFocus={() => {
        held.current = true;
      }}
      onBlur={(event) => {
        // A button that is taken away is blurred towards nothing.
        if (event.relatedTarget) held.current = false;
      }}
      onClick={cancel}
    >
      Cancel
    </button>
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
