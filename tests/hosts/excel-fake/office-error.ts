/** What Excel throws: an error with a code. */
export class OfficeError extends Error {
  readonly code: string;

  constructor(code: string, message: string) {
    super(`${code}: ${message}`);
    this.code = code;
  }
}

/** A mistake in how the interface is used, which Excel's library or the types would catch. */
export class MisuseError extends TypeError {}

export function invalid(message: string): OfficeError {
  return new OfficeError('InvalidArgument', message);
}

export function notLoaded(className: string, name: string): MisuseError {
  return new MisuseError(`PropertyNotLoaded: ${className}.${name}`);
}
