/** What functions.json says of a function; made from its doc comment, and the spreadsheet's help too. */
export interface FunctionMetadata {
  readonly id: string;
  readonly description?: string;
  readonly helpUrl?: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly description?: string;
    readonly optional?: boolean;
  }[];
}
