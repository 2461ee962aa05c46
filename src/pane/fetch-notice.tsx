import { useEffect, useState } from "preact/hooks";
import { fetchAgain, onMissing } from "./fetch-trouble.ts";

/** Says that a part of the pane could not be fetched, for what stands in its place waits for it. */
export function FetchNotice() {
  const [missing, setMissing] = useState(false);
  useEffect(() => onMissing(setMissing), []);
  if (!missing) return null;
  return (
    <div id="unfetched" class="notice">
      <p role="alert" class="problem">
        A part of this pane could not be fetched: the connection may be off. What you entered is safe. Where
        trying again does not help, close the pane and open it once more.
      </p>
      <div class="buttons">
        <button type="button" onClick={fetchAgain}>
          Try again
        </button>
      </div>
    </div>
  );
}
