import type { Problem } from "../outcome/problem.ts";

interface KeepNoticeProps {
  /** Why what was kept cannot be read. */
  readonly unread: Problem | null;
  /** Why what is on the desk could not be kept. */
  readonly unkept: Problem | null;
  /** Why what was put right about a table's columns could not be remembered for the next such table. */
  readonly unremembered: Problem | null;
  readonly tryAgain: () => Promise<void>;
  readonly putAside: () => Promise<void>;
}

/** Says that sessions could not be read or kept: whoever works on must know it. Nothing where all is well. */
export function KeepNotice({ unread, unkept, unremembered, tryAgain, putAside }: KeepNoticeProps) {
  if (unread) {
    return (
      <div id="unread" class="notice">
        <p role="alert" class="problem">
          {unread.message} Nothing there is changed, and until this is settled nothing that you do here is
          kept.
        </p>
        <div class="buttons">
          <button type="button" onClick={() => void tryAgain()}>
            Try again
          </button>
          {unread.kind === "invalid" && (
            <button type="button" id="put-aside" onClick={() => void putAside()}>
              Put them aside and begin anew
            </button>
          )}
        </div>
      </div>
    );
  }
  // A workbook that keeps nothing is told of once: the columns are part of what is here.
  const trouble = unkept ?? unremembered;
  if (!trouble) return null;
  const what = unkept
    ? "What is here could not be kept for the next time:"
    : "What was put right about the columns could not be remembered for the next table of this kind:";
  return (
    <div id="unkept" class="notice">
      <p role="alert" class="problem">
        {what} {trouble.message}
      </p>
    </div>
  );
}
