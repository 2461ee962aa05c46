import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";

interface SectionProps {
  readonly title: string;
  /** What the section comes to, in a few words, seen also while it is closed. */
  readonly brief?: string;
  readonly alert?: boolean;
  readonly startOpen: boolean;
  readonly id: string;
  readonly children: () => ComponentChildren;
}

/** A part of the screen that opens and closes. What is inside is made only while it is open. */
export function Section({ title, brief, alert, startOpen, id, children }: SectionProps) {
  const [open, setOpen] = useState(startOpen);
  return (
    <details id={id} class="section" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <h2>{title}</h2>
        {brief && <span class={alert ? "brief alert" : "brief"}>{brief}</span>}
      </summary>
      {open && <div class="body">{children()}</div>}
    </details>
  );
}
