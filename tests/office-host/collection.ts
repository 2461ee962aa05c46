import { invalidArgument, itemNotFound } from "./service-error.ts";
import { readOnly, type WireObject } from "./wire-object.ts";

type Methods = NonNullable<WireObject["methods"]>;

/** A collection with the methods that all of them share; `find` says which item a key means. */
export function collection(
  type: string,
  items: () => readonly WireObject[],
  find?: (key: unknown) => WireObject | undefined,
  methods: Methods = {},
): WireObject {
  const get = (key: unknown) => {
    const found = find?.(key);
    if (!found) throw itemNotFound();
    return found;
  };
  return {
    type,
    items,
    item: get,
    scalars: { Count: readOnly(() => items().length) },
    methods: {
      GetItem: get,
      GetItemOrNullObject: (key: unknown) => find?.(key) ?? null,
      GetItemAt: (index: number) => {
        const found = items()[index];
        if (!found) throw invalidArgument(`${type}[${index}]`);
        return found;
      },
      GetCount: () => items().length,
      ...methods,
    },
  };
}
