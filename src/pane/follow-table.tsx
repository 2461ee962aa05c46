import { useEffect, useRef, useState } from "preact/hooks";
import type { Host } from "../hosts/host.ts";
import { isProblem } from "../outcome/problem.ts";
import type { DeskAction } from "./desk.ts";
import type { Draft } from "./draft.ts";
import type { Source } from "./follow-source.ts";
import { mergeFollowed } from "./merge-followed.ts";

interface FollowTableProps {
  readonly host: Host;
  readonly source: Source;
  readonly draft: Draft;
  readonly dispatch: (action: DeskAction) => void;
  readonly stop: () => void;
}

/** Keeps a session in step with the table it was taken from, while the player hits; ends when it is taken away. */
export function FollowTable({ host, source, draft, dispatch, stop }: FollowTableProps) {
  const [ended, setEnded] = useState("");
  const current = useRef<Pick<Draft, "text" | "ticks">>(draft);
  current.current = draft;
  useEffect(() => {
    let here = true;
    let last = source.text;
    const follow = host.follow!(source.name, (text) => {
      if (!here) return;
      if (isProblem(text)) return setEnded(text.message);
      if (text === last) return;
      // Kept at once, for the next change may come before the pane has been drawn again.
      current.current = mergeFollowed(current.current, last, text);
      last = text;
      dispatch({ does: "text", ...current.current });
    });
    void follow.then((stopFollowing) => {
      if (isProblem(stopFollowing)) setEnded(stopFollowing.message);
    });
    return () => {
      here = false;
      void follow.then(async (stopFollowing) => {
        if (!isProblem(stopFollowing)) await stopFollowing();
      });
    };
  }, [host, source, dispatch]);
  const what = source.name === undefined ? "that sheet" : `“${source.name}”`;
  return (
    <div class="follow">
      <p role="status" class={ended ? "problem" : "quiet"}>
        {ended || `Following ${what}: what changes there comes in by itself; what you change here stays.`}
      </p>
      <div class="buttons">
        <button type="button" id="stop-following" onClick={stop}>
          {ended ? "Close" : "Stop following"}
        </button>
      </div>
    </div>
  );
}
