/** The numbers by which the batch protocol calls what it does, as found in the client library. */
export const ActionType = { instantiate: 1, query: 2, method: 3, setProperty: 4, trace: 5 } as const;

export const PathType = { root: 1, method: 3, property: 4, indexer: 5, reference: 6, none: 7 } as const;

export interface WireArguments {
  readonly Arguments?: readonly unknown[];
  /** Where it holds a number other than 0, the argument at the same place is the object of that path. */
  readonly ReferencedObjectPathIds?: readonly unknown[];
}

export interface WireAction {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: WireArguments;
  readonly QueryInfo?: { readonly Select?: readonly string[] };
}

export interface WirePath {
  readonly Id: number;
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: WireArguments;
}

export interface WireRequest {
  readonly Actions: readonly WireAction[];
  readonly ObjectPaths: Readonly<Record<string, WirePath>>;
}

export interface WireAnswer {
  readonly Error: null | {
    readonly Code: string;
    readonly Message: string;
    readonly Location: string;
    readonly ActionIndex: number;
  };
  readonly Results: readonly { readonly ActionId: number; readonly Value: unknown }[];
  readonly TraceIds: readonly number[];
}
