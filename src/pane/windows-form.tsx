import type { Session } from "../fitting/session.ts";
import { WINDOW_METRICS } from "../fitting/target-windows.ts";
import { metricOf } from "../shots/metrics.ts";
import type { DeskAction } from "./desk.ts";
import { displayOf } from "./display.ts";
import type { Facts } from "./draft.ts";
import { NumberField } from "./fields.tsx";
import type { Figures } from "./figures.ts";

interface WindowsFormProps {
  readonly session: Session;
  /** Limits that were changed by hand. */
  readonly own: Facts["windows"];
  readonly figures: Figures;
  readonly dispatch: (action: DeskAction) => void;
}

/** Where launch, spin, height and landing should lie: the usual windows, each limit open to the shop's own. */
export function WindowsForm({ session, own, figures, dispatch }: WindowsFormProps) {
  const keys = WINDOW_METRICS.filter((key) => session.table.values.has(key) && session.windows[key]);
  if (keys.length === 0) return null;
  const tell = (windows: Facts["windows"]) => dispatch({ does: "facts", facts: { windows } });
  return (
    <fieldset id="windows">
      <legend>Target windows</legend>
      <p class="quiet">
        {Object.keys(own).length === 0
          ? "The usual ones for this club and speed (common practice). Type your shop's own over them."
          : "Some are your own."}
      </p>
      {keys.map((key) => {
        const metric = metricOf(key);
        const display = displayOf(key, session.units, figures);
        const { from, to } = session.windows[key]!;
        const times = display.value(1);
        const limit = (side: "from" | "to", label: string, least: number, most: number) => (
          <NumberField
            key={`${key} ${side} ${session.units}`}
            label={`${label}${display.unit ? `, ${display.unit}` : ""}`}
            of={metric.label}
            needed
            value={Number((side === "from" ? from * times : to * times).toFixed(metric.decimals || 1))}
            least={least * times}
            most={most * times}
            figures={figures}
            onChange={(value) => {
              const limits = { from, to, [side]: value === undefined ? undefined : value / times };
              if (value !== undefined) tell({ ...own, [key]: limits as { from: number; to: number } });
            }}
          />
        );
        return (
          <div key={key} class="window">
            <p>
              {metric.label} <small>{metric.meaning}</small>
            </p>
            {limit("from", "From", metric.least, to)}
            {limit("to", "To", from, metric.most)}
          </div>
        );
      })}
      {Object.keys(own).length > 0 && (
        <div class="buttons">
          <button
            type="button"
            id="usual-windows"
            onClick={(event) => {
              // The button goes; the first of the limits is where one would look next.
              event.currentTarget.closest("fieldset")?.querySelector("input")?.focus();
              tell({});
            }}
          >
            Back to the usual windows
          </button>
        </div>
      )}
    </fieldset>
  );
}
