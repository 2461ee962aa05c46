/** One scalar property on the wire. Without `set` it is read-only. */
export interface Scalar {
  get(): unknown;
  set?(value: unknown): void;
}

/**
 * An object of the service as the batch protocol sees it. Names are the wire's (PascalCase). A name that is not
 * here does not exist, and asking for it fails as it fails at the service.
 */
export interface WireObject {
  readonly type: string;
  /** Children of collections have one; the library then finds them by it. */
  readonly id?: unknown;
  /** Ranges are kept between requests by a reference. */
  readonly kept?: boolean;
  readonly scalars?: Readonly<Record<string, Scalar>>;
  readonly children?: Readonly<Record<string, () => WireObject>>;
  /** Answers an object, null for a missing one, or a plain value. */
  // biome-ignore lint/suspicious/noExplicitAny: arguments arrive untyped from the wire
  readonly methods?: Readonly<Record<string, (...given: any[]) => unknown>>;
  /** For collections. */
  readonly items?: () => readonly WireObject[];
  /** For collections: by id or name; throws where there is none. */
  readonly item?: (key: unknown) => WireObject;
}

export const isWireObject = (value: unknown): value is WireObject =>
  typeof value === "object" && value !== null && "type" in value;

export const readOnly = (get: () => unknown): Scalar => ({ get });
