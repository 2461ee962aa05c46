/**
 * The library on npm ends with ExcelApi 1.15, while the spreadsheet loads a hosted one that goes on. The members of
 * ExcelApi 1.18 that the product uses are added here as that library has them: the set is checked first, then an
 * action goes into the batch. Without this an assignment would be a plain property and nothing would be sent.
 */
export function addNewerMembers(): void {
  const { ActionFactory, BatchApiHelper, Utility } = OfficeExtension as unknown as Internals;
  const check = (member: string) => Utility.throwIfApiNotSupported(member, "ExcelApi", "1.18", "Excel");
  Object.defineProperty(Excel.Range.prototype, "control", {
    configurable: true,
    get: () => undefined,
    set(this: Excel.Range, value: unknown) {
      check("Range.control");
      ActionFactory.createSetPropertyAction(this.context, this, "Control", value, 0);
    },
  });
  Object.defineProperty(Excel.Worksheet.prototype, "notes", {
    configurable: true,
    get(this: Excel.Worksheet) {
      check("Worksheet.notes");
      // A collection of comments on the client side; only the wire's names tell notes from these.
      const notes = BatchApiHelper.createPropertyObject(Excel.CommentCollection, this, "Notes", true, 4);
      return {
        add: (cell: unknown, content: string) =>
          BatchApiHelper.createMethodObject(
            Excel.Comment,
            notes,
            "Add",
            0,
            [cell, content],
            false,
            true,
            null,
            0,
          ),
      };
    },
  });
}

/** Leaves the library as npm has it: a spreadsheet may promise a set that the loaded library does not know. */
export function removeNewerMembers(): void {
  Reflect.deleteProperty(Excel.Range.prototype, "control");
  Reflect.deleteProperty(Excel.Worksheet.prototype, "notes");
}

interface Internals {
  ActionFactory: {
    createSetPropertyAction(
      context: unknown,
      parent: unknown,
      name: string,
      value: unknown,
      flags: number,
    ): void;
  };
  BatchApiHelper: {
    createPropertyObject(type: unknown, parent: unknown, name: string, many: boolean, flags: number): unknown;
    createMethodObject(type: unknown, parent: unknown, name: string, ...rest: unknown[]): unknown;
  };
  Utility: { throwIfApiNotSupported(member: string, set: string, version: string, host: string): void };
}
