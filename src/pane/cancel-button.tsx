import type { RefObject } from "preact";
import { useEffect, useRef } from "preact/hooks";

interface CancelButtonProps {
  readonly id: string;
  readonly cancel: () => void;
  /** Where the keyboard goes when this button goes. */
  readonly after: RefObject<HTMLElement | null>;
}

/** Stops what takes long. It is there only while there is something to stop, and hands the keyboard's place on. */
export function CancelButton({ id, cancel, after }: CancelButtonProps) {
  const held = useRef(false);
  useEffect(
    () => () => {
      if (held.current) after.current?.focus();
    },
    [],
  );
  return (
    <button
      type="button"
      id={id}
      onFocus={() => {
        held.current = true;
      }}
      onBlur={(event) => {
        // A button that is taken away is blurred towards nothing.
        if (event.relatedTarget) held.current = false;
      }}
      onClick={cancel}
    >
      Cancel
    </button>
  );
}
