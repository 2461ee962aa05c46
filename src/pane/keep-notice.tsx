import type { Problem } from "../outcome/problem.ts";

interface KeepNoticeProps {
  /** Why what was kept cannot be read. */
  readonly unread: Problem | null;
  /** Why what is on the desk could not be kept. */
  readonly unkept: Problem | null;
  readonly tryAgain: () => Promise<void>;
  readonly putAside: () => Promise<void>;
}

/** Says that sessions could not be read or kept: whoever works on must know it. Nothing where all is well. */
export function KeepNotice({ unread, unkept, tryAgain, putAside }: KeepNoticeProps) {
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
  if (!unkept) return null;
  return (
    <div id="unkept" class="notice">
      <p role="alert" class="problem">
        What is here could not be kept for the next time: {unkept.message}
      </p>
    </div>
  );
}
