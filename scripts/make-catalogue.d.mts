export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly helpUrl: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly description: string;
    readonly type: string;
    readonly dimensionality?: string;
    readonly optional?: boolean;
    readonly repeating?: boolean;
  }[];
  readonly result: { readonly type?: string; readonly dimensionality?: string };
  readonly options?: object;
}

export interface FunctionsJson {
  readonly allowCustomDataForDataTypeAny: boolean;
  readonly allowErrorForDataTypeAny: boolean;
  readonly functions: readonly FunctionMetadata[];
}

export interface FoundFunction extends FunctionMetadata {
  readonly file: string;
  readonly functionName: string;
  readonly example: string;
}

export interface StaleFile {
  readonly path: string;
  readonly name: string;
  readonly old: string;
  readonly text: string;
}

export const NAMESPACE: string;
export function readFunctions(): Promise<readonly FoundFunction[]>;
export function makeFunctionsJson(where: { readonly origin: string }): Promise<FunctionsJson>;
export function makeFunctionsPage(where?: { readonly support?: string }): Promise<string>;
export function signatureOf(made: Pick<FunctionMetadata, 'name' | 'parameters'>): string;
export function describeReadme(
  readme: string,
  functions: readonly FoundFunction[],
): string | undefined;
export function findStale(): Promise<{
  readonly noMarkers: boolean;
  readonly stale: readonly StaleFile[];
}>;
