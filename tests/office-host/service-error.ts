/** An error as the service answers it; the client library turns it into an `OfficeExtension.Error`. */
export class ServiceError extends Error {
  readonly code: string;

  constructor(code: string, message: string) {
    super(message);
    this.code = code;
  }
}

export const itemNotFound = () => new ServiceError("ItemNotFound", "The requested resource doesn't exist.");

export const itemAlreadyExists = () =>
  new ServiceError("ItemAlreadyExists", "A resource with the same name or identifier already exists.");

export const invalidArgument = (what: string) =>
  new ServiceError(
    "InvalidArgument",
    `The argument is invalid or missing or has an incorrect format. (${what})`,
  );
