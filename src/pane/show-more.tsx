interface ShowMoreProps {
  readonly of: number;
  readonly shown: number;
  readonly show: (most: number) => void;
}

const AT_A_TIME = 100;

/** The rest of a long list, a hundred at a time; nothing where all of it is shown. */
export function ShowMore({ of, shown, show }: ShowMoreProps) {
  if (shown >= of) return null;
  return (
    <button type="button" onClick={() => show(shown + AT_A_TIME)}>
      Show {Math.min(AT_A_TIME, of - shown)} more
    </button>
  );
}
