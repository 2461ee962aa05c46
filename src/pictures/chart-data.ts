/** Figures of a chart's series, in the order of the plan; null where a cell holds none. */
export interface ChartData {
  readonly series: readonly {
    /** Numbers of a scatter's points, texts that name bars. */
    readonly x: readonly (number | string | null)[];
    readonly y: readonly (number | null)[];
  }[];
}

/** Pixels across and down. */
export interface Size {
  readonly width: number;
  readonly height: number;
}
