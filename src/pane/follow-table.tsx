import { useEffect, useRef, useState } from "preact/hooks";
import type { Host } from "../hosts/host.ts";
import { isProblem } from "../outcome/problem.ts";
import type { DeskAction } from "./desk.ts";
import type { Draft } from "./draft.ts";
import type { Source } from "./follow-source.ts";
import { isStillOf } from "./is-still-of.ts";
import { type KeptLine, keptAlso, keptSentence, stillKept } from "./kept-line.ts";
import { mergeFollowed } from "./merge-followed.ts";
import { takeTheirs } from "./take-theirs.ts";

interface FollowTableProps {
  readonly host: Host;
  readonly source: Source;
  readonly draft: Draft;
  readonly dispatch: (action: DeskAction) => void;
  readonly stop: () => void;
}

/**
 * Keeps a session in step with the table it was taken from, while the player hits. Lines that the table changes and
 * the pane had changed as well stay, and are named, with a way to have the table's. It ends when it is taken away,
 * when the host has nothing more to tell, and when the session no longer holds that table.
 */
export function FollowTable({ host, source, draft, dispatch, stop }: FollowTableProps) {
  const [ended, setEnded] = useState("");
  const [kept, setKept] = useState<readonly KeptLine[]>([]);
  const last = useRef(source.text);
  const current = useRef<Pick<Draft, "text" | "ticks">>(draft);
  current.current = draft;
  const what = source.name === undefined ? "that sheet" : `“${source.name}”`;
  const isOver = () => {
    if (isStillOf(current.current.text, last.current)) return false;
    setEnded(`This session does not hold ${what} any more, so it is not followed any longer.`);
    return true;
  };
  useEffect(() => {
    last.current = source.text;
    setEnded("");
    setKept([]);
  }, [source]);
  useEffect(() => {
    if (!ended) isOver();
  }, [source, draft.text]);
  useEffect(() => {
    if (ended) return;
    let here = true;
    const follow = host.follow!(source.name, (text) => {
      if (!here) return;
      if (isProblem(text)) return setEnded(text.message);
      if (text === last.current || isOver()) return;
      const { kept: stayed, ...merged } = mergeFollowed(current.current, last.current, text);
      // Kept at once, for the next change may come before the pane has been drawn again.
      current.current = merged;
      last.current = text;
      setKept((earlier) => keptAlso(earlier, stayed));
      dispatch({ does: "text", ...merged });
    });
    void follow.then((stopFollowing) => {
      if (here && isProblem(stopFollowing)) setEnded(stopFollowing.message);
    });
    return () => {
      here = false;
      void follow.then(async (stopFollowing) => {
        if (!isProblem(stopFollowing)) await stopFollowing();
      });
    };
  }, [host, source, dispatch, ended]);
  const stayed = stillKept(kept, draft.text);
  return (
    <div class="follow">
      <p role="status" class={ended ? "problem" : "quiet"}>
        {ended || `Following ${what}: what changes there comes in by itself; what you change here stays.`}
      </p>
      <p role="status" id="kept-lines">
        {keptSentence(stayed)}
      </p>
      <div class="buttons">
        {stayed.length > 0 && (
          <button
            type="button"
            id="take-theirs"
            onClick={() => {
              setKept([]);
              dispatch({ does: "text", ...takeTheirs(draft, stayed) });
            }}
          >
            Take the table’s
          </button>
        )}
        <button type="button" id="stop-following" onClick={stop}>
          {ended ? "Close" : "Stop following"}
        </button>
      </div>
    </div>
  );
}
