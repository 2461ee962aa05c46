import { useState } from "preact/hooks";
import type { DeskAction } from "./desk.ts";

/** More rows of the same table, taken in while the player is still hitting. A paste goes in at once. */
export function AddShots({ dispatch }: { readonly dispatch: (action: DeskAction) => void }) {
  const [text, setText] = useState("");
  const nothing = text.trim() === "";
  const add = (more: string) => {
    if (more.trim() === "") return;
    dispatch({ does: "add", text: more });
    setText("");
  };
  return (
    <div class="add">
      <label for="more-shots">More shots: paste rows of the same table</label>
      <div class="row">
        <input
          id="more-shots"
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
          onPaste={(event) => {
            const pasted = event.clipboardData?.getData("text/plain") ?? "";
            if (pasted.trim() === "" || text !== "") return;
            event.preventDefault();
            add(pasted);
          }}
          onKeyDown={(event) => event.key === "Enter" && add(text)}
        />
        {/* Not disabled: the press that adds empties the box, and the keyboard would lose its place. */}
        <button type="button" id="add-shots" aria-disabled={nothing} onClick={() => add(text)}>
          Add
        </button>
      </div>
    </div>
  );
}
