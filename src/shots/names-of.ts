import type { Gathered } from "./gathered.ts";
import { columnOf } from "./section.ts";
import type { Records } from "./split-text.ts";

/** A column of names, trimmed; a club that a title line names stands for the shots below it. */
export function namesOf(text: Records, shots: Gathered, key: "club" | "shot" | "time"): string[] {
  const columns = shots.sections.map((section) => columnOf(section, key)?.index ?? -1);
  const titles: string[] = [];
  for (const title of shots.titles) titles.push(title.says === "club" ? title.text : (titles.at(-1) ?? ""));
  const names = new Array<string>(shots.size);
  for (let shot = 0; shot < shots.size; shot++) {
    const column = columns[shots.section[shot]!]!;
    if (column >= 0) names[shot] = text.cells[shots.record[shot]!]![column]?.trim() ?? "";
    else names[shot] = key === "club" ? (titles[shots.title[shot]!] ?? "") : "";
  }
  return names;
}
