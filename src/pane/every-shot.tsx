import { useEffect, useState } from "preact/hooks";
import { buildPlaces } from "../fitting/build-places.ts";
import { normalizeSession } from "../fitting/normalize-session.ts";
import { MOST_FLOWN } from "../fitting/same-conditions.ts";
import type { Session } from "../fitting/session.ts";
import { sessionAir } from "../fitting/session-air.ts";
import { isProblem } from "../outcome/problem.ts";
import { inSlices } from "../slices/in-slices.ts";
import { meansByBuild } from "./build-means.ts";
import { type EvenedCarries, STANDARD_AIR } from "./evened-carries.ts";

interface EveryShot {
  /** The columns, those in standard air of every shot as soon as all were flown. */
  readonly columns: readonly EvenedCarries[];
  /** How far the flying is, from 0 to 1; null while nothing is flown. */
  readonly share: number | null;
  readonly stop: () => void;
}

/**
 * Means in standard air come at once from at most 300 shots a build. Where a build has more, every shot is then flown
 * in slices, so that the pane stays alive, and the means of all of them take their place.
 */
export function useEveryShot(session: Session, columns: readonly EvenedCarries[]): EveryShot {
  const [flown, setFlown] = useState<{ readonly of: Session; readonly column: Float64Array } | null>(null);
  const [share, setShare] = useState<number | null>(null);
  const [stopped, setStopped] = useState(false);
  const wanted = columns.some(({ heading }) => heading === STANDARD_AIR) && hasMore(session);
  useEffect(() => {
    setShare(null);
    const air = sessionAir(session.air);
    if (!wanted || stopped || isProblem(air)) return;
    const stop = new AbortController();
    setShare(0);
    void inSlices(normalizeSession(session, air), setShare, stop.signal).then((column) => {
      if (column === null || stop.signal.aborted) return;
      setShare(null);
      setFlown({ of: session, column });
    });
    return () => stop.abort();
  }, [session, wanted, stopped]);
  const known = flown?.of === session && wanted;
  return {
    columns: known ? withEvery(session, columns, flown.column) : columns,
    share,
    stop: () => setStopped(true),
  };
}

function hasMore({ table }: Session): boolean {
  return [...buildPlaces(table).values()].some(({ kept }) => kept.length > MOST_FLOWN);
}

/** The same columns with the means of all shots in standard air. */
export function withEvery(
  session: Session,
  columns: readonly EvenedCarries[],
  flown: Float64Array,
): readonly EvenedCarries[] {
  return columns.map((column) =>
    column.heading === STANDARD_AIR
      ? {
          ...column,
          meaning: `${column.meaning} Every shot was flown.`,
          carries: meansByBuild(session, flown).map(({ mean }) => mean),
        }
      : column,
  );
}

/** How far the flying is, and the button that stops it. */
export function EveryShotBar({ share, stop }: Pick<EveryShot, "share" | "stop">) {
  if (share === null) return null;
  return (
    <div id="every-shot">
      <p class="quiet" role="status">
        Standard air so far from at most {MOST_FLOWN} shots a build; flying every shot:{" "}
        {Math.floor(10 * share) * 10} %
      </p>
      <progress aria-label="Shots flown" value={share} max={1} />
      <div class="buttons">
        <button type="button" id="stop-flying" onClick={stop}>
          Leave it at that
        </button>
      </div>
    </div>
  );
}
