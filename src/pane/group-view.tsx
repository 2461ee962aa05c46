import type { Session } from "../fitting/session.ts";
import { groupPicture } from "../pictures/group-picture.ts";
import { displayOf } from "./display.ts";
import { Drawing } from "./drawing.tsx";
import type { Figures } from "./figures.ts";
import { groupsOf, groupText } from "./groups.ts";
import { Legend } from "./legend.tsx";

interface GroupViewProps {
  readonly session: Session;
  readonly figures: Figures;
}

/** The groups from above with the names beside their markers; nothing where carry or offline is missing. */
export function GroupView({ session, figures }: GroupViewProps) {
  const { table, units } = session;
  if (!table.values.has("carry") || !table.values.has("offline")) {
    return <p class="quiet">The groups can be drawn when the table has columns for carry and offline.</p>;
  }
  const carry = displayOf("carry", units, figures);
  const offline = displayOf("offline", units, figures);
  const groups = groupsOf(session, carry, offline);
  return (
    <figure>
      <Drawing
        id="groups"
        figures={figures}
        draw={(frame) => groupPicture(frame, groups, carry.unit, groupText(session, carry, offline))}
      />
      <figcaption>
        <Legend entries={groups} />
        <span class="quiet">
          Each mark is where a ball came down; faint ones are not counted. An outline is drawn to hold about
          95 of 100 shots of a group spread like the counted ones; with few shots it is rough.
        </span>
      </figcaption>
    </figure>
  );
}
