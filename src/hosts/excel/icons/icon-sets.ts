/** Colours of an icon: its tile, what is drawn on it, and what stands out there. */
export interface IconColors {
  readonly tile: string;
  readonly drawing: string;
  readonly accent: string;
}

/**
 * The sets that are rendered, by the end of their files' names. The drawings have the colours of the first, which is
 * for the ribbon: a manifest names one set for all themes, so its tile stands out on a light ground and on a dark one.
 * The others are for pages that know which theme they are in.
 */
export const ICON_SETS = {
  any: { ending: "", colors: { tile: "#2f8a6e", drawing: "#ffffff", accent: "#fbe3a0" } },
  light: { ending: "-light", colors: { tile: "#1d5c4a", drawing: "#f3f1ea", accent: "#e9c46a" } },
  dark: { ending: "-dark", colors: { tile: "#7fcbb2", drawing: "#10241d", accent: "#5a2a00" } },
} as const satisfies Readonly<Record<string, { ending: string; colors: IconColors }>>;

export type IconSet = keyof typeof ICON_SETS;

/** Whether a word names a set of icons. */
export const isIconSet = (word: string): word is IconSet => Object.hasOwn(ICON_SETS, word);
