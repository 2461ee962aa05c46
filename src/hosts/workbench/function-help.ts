import { FunctionType, type IFunctionInfo } from "@univerjs/preset-sheets-core";
import type { CatalogueEntry } from "../../functions/catalogue.ts";
import type { FunctionMetadata } from "../../functions/function-metadata.ts";
import { NAMESPACE } from "../../functions/namespace.ts";

/** Help for the list that opens while a formula is typed. A function without metadata still shows its name. */
export function functionHelp(
  catalogue: readonly CatalogueEntry[],
  metadata: readonly FunctionMetadata[],
): IFunctionInfo[] {
  return catalogue.map(({ id }) => {
    const found = metadata.find((one) => one.id === id);
    const description = found?.description ?? "";
    return {
      functionName: `${NAMESPACE}.${id}`,
      functionType: FunctionType.User,
      description,
      abstract: description.split("\n")[0] ?? "",
      functionParameter: (found?.parameters ?? []).map(({ name, description = "", optional }) => ({
        name,
        detail: description,
        example: name,
        require: optional ? 0 : 1,
        repeat: 0,
      })),
    };
  });
}
