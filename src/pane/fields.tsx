import { useId, useState } from "preact/hooks";
import type { Figures } from "./figures.ts";

interface TextFieldProps {
  readonly label: string;
  /** Whose field it is, for those who hear it without seeing the card around it. */
  readonly of?: string;
  readonly type?: "text" | "date";
  readonly value: string;
  readonly onChange: (value: string | undefined) => void;
}

/** A line of text; an emptied one is told as undefined. */
export function TextField({ label, of, type = "text", value, onChange }: TextFieldProps) {
  const id = useId();
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
        value={value}
        onChange={(event) => onChange(event.currentTarget.value.trim() || undefined)}
      />
    </div>
  );
}

interface NumberFieldProps {
  readonly label: string;
  readonly of?: string;
  readonly value: number | undefined;
  readonly least: number;
  readonly most: number;
  readonly figures: Figures;
  readonly onChange: (value: number | undefined) => void;
}

/** A figure with either decimal mark. What cannot be right stays in the box with a line that says what would do. */
export function NumberField({ label, of, value, least, most, figures, onChange }: NumberFieldProps) {
  const id = useId();
  const [wrong, setWrong] = useState<string | null>(null);
  const shown = wrong ?? (value === undefined ? "" : figures.plain(value, 2));
  const take = (text: string) => {
    const read = figures.read(text);
    const fine = text.trim() === "" || (read >= least && read <= most);
    setWrong(fine ? null : text);
    if (fine) onChange(text.trim() === "" ? undefined : read);
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
        value={shown}
        aria-invalid={wrong !== null}
        aria-describedby={wrong === null ? undefined : `${id}-wrong`}
        onChange={(event) => take(event.currentTarget.value)}
      />
      {wrong !== null && (
        <p class="problem" id={`${id}-wrong`}>
          {figures.plain(least, 0)} to {figures.plain(most, 0)} would do.
        </p>
      )}
    </div>
  );
}
