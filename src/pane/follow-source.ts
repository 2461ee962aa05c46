/** The table that a session was taken from and is to be kept in step with. */
export interface Source {
  /** Of the session that it was taken into. */
  readonly draft: string;
  /** Its name; left out for the sheet that was in front. */
  readonly name?: string;
  /** What it held when it was taken. */
  readonly text: string;
}
