import { useId, useState } from "preact/hooks";
import { boundsWords } from "./bounds-words.ts";
import type { Figures } from "./figures.ts";

interface TextFieldProps {
  readonly label: string;
  /** Whose field it is, for those who hear it without seeing the card around it. */
  readonly of?: string;
  readonly type?: "text" | "date";
  readonly value: string;
  readonly onChange: (value: string | undefined) => void;
}

/**
 * A line of text, told when it is done with; an emptied one is told as undefined. What is being typed stays in the box
 * while the pane is drawn anew around it.
 */
export function TextField({ label, of, type = "text", value, onChange }: TextFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  return (
    <div>
      <label for={id}>
        {label}
        {of && <span class="heard"> of {of}</span>}
      </label>
      <input
        id={id}
        // The library types each kind of box apart, so a kind that is chosen at run time must be vouched for.
        {...({ type } as { type: "text" })}
        value={typed ?? value}
        onInput={(event) => setTyped(event.currentTarget.value)}
        onBlur={() => setTyped(null)}
        onChange={(event) => {
          setTyped(null);
          onChange(event.currentTarget.value.trim() || undefined);
        }}
      />
    </div>
  );
}

interface NumberFieldProps {
  readonly label: string;
  readonly of?: string;
  /** Whether there is always a figure: a box that is emptied shows the one that holds again. */
  readonly needed?: boolean;
  readonly value: number | undefined;
  readonly least: number;
  readonly most: number;
  readonly figures: Figures;
  readonly onChange: (value: number | undefined) => void;
}

/** A figure with either decimal mark. What cannot be right stays in the box with a line that says what would do. */
export function NumberField({ label, of, needed, value, least, most, figures, onChange }: NumberFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const [wrong, setWrong] = useState(false);
  const held = value === undefined ? "" : figures.plain(value, 2);
  const take = (box: HTMLInputElement) => {
    const text = box.value.trim();
    const read = figures.read(text);
    const fine = text === "" || (read >= least && read <= most);
    setWrong(!fine);
    setTyped(fine ? null : box.value);
    if (text !== "" && fine) onChange(read);
    else if (text === "" && !needed) onChange(undefined);
  };
  return (
    <div>
      <label for={id}>
        {label}
        {of && <span class="heard"> of {of}</span>}
      </label>
      <input
        id={id}
        inputMode="decimal"
        value={typed ?? held}
        aria-invalid={wrong}
        aria-describedby={wrong ? `${id}-wrong` : undefined}
        onInput={(event) => setTyped(event.currentTarget.value)}
        onBlur={() => !wrong && setTyped(null)}
        onChange={(event) => take(event.currentTarget)}
      />
      {wrong && (
        <p class="problem" role="alert" id={`${id}-wrong`}>
          {boundsWords(least, most, figures)}
        </p>
      )}
    </div>
  );
}
