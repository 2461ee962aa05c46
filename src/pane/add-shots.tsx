import { useState } from "preact/hooks";
import type { DeskAction } from "./desk.ts";

/** More rows of the same table, taken in while the player is still hitting. A paste goes in at once. */
export function AddShots({ dispatch }: { readonly dispatch: (action: DeskAction) => void }) {
  const [text, setText] = useState("");
  const add = (more: string) => {
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
        <button type="button" id="add-shots" disabled={text.trim() === ""} onClick={() => add(text)}>
          Add
        </button>
      </div>
    </div>
  );
}
