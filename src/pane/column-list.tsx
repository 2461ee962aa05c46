import type { ColumnReading } from "../shots/shot-table.ts";
import { COLUMN_CHOICES, unitChoices } from "./column-choices.ts";
import type { DeskAction } from "./desk.ts";
import { whenChanged } from "./when-changed.ts";

interface ColumnListProps {
  readonly columns: readonly ColumnReading[];
  readonly dispatch: (action: DeskAction) => void;
}

/** What each column was taken for, with the two boxes that put it right. */
export function ColumnList({ columns, dispatch }: ColumnListProps) {
  return (
    <table class="columns">
      <caption>What each column was taken for</caption>
      <thead>
        <tr>
          <th scope="col">Heading</th>
          <th scope="col">Holds</th>
          <th scope="col">Unit</th>
        </tr>
      </thead>
      <tbody>
        {columns.map(({ key: holds, ...column }) => (
          <ColumnRow key={column.column} holds={holds} {...column} dispatch={dispatch} />
        ))}
      </tbody>
    </table>
  );
}

interface ColumnRowProps extends Omit<ColumnReading, "key"> {
  readonly holds: ColumnReading["key"];
  readonly dispatch: (action: DeskAction) => void;
}

const ColumnRow = whenChanged(({ dispatch, ...column }: ColumnRowProps) => {
  const name = column.header || `column ${column.column}`;
  const units = unitChoices(column.holds, column.unit);
  const correct = (correction: { key?: ColumnReading["key"]; unit?: string }) =>
    dispatch({ does: "correct", column: column.column, correction });
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>
        <select
          aria-label={`What ${name} holds`}
          value={column.holds ?? ""}
          onChange={(event) =>
            correct({ key: (event.currentTarget.value || null) as ColumnReading["key"], unit: undefined })
          }
        >
          <option value="">None of these</option>
          {COLUMN_CHOICES.map((choice) => (
            <option key={choice.key} value={choice.key}>
              {choice.label}
            </option>
          ))}
        </select>
      </td>
      <td>
        {units.length > 0 ? (
          <select
            aria-label={`Unit of ${name}`}
            value={column.unit}
            onChange={(event) => correct({ unit: event.currentTarget.value })}
          >
            {units.map((unit) => (
              <option key={unit}>{unit}</option>
            ))}
          </select>
        ) : (
          column.unit
        )}
        {column.unitFrom === "assumed" && units.length > 0 && <span class="quiet"> taken as usual</span>}
      </td>
    </tr>
  );
});
