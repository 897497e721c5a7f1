/** How the fake's classes are described: their members, and since when Excel has them. */
import type { FakeWorkbook } from './workbook-model.ts';

/** Minor version of the requirement set ExcelApi 1.x that brought the member. */
export type Since = number;
/** What an object of a class stands for; a class's members name its true type themselves. */
export type Model = unknown;

export interface ClassMembers {
  readonly values?: Readonly<Record<string, ValueMember>>;
  readonly parts?: Readonly<Record<string, PartMember>>;
  readonly methods?: Readonly<Record<string, MethodMember>>;
  readonly items?: { readonly gives: string; readonly of: (model: never, env: Env) => Model[] };
  readonly events?: Readonly<Record<string, Since>>;
}
export interface ValueMember {
  readonly since: Since;
  readonly get?: (model: never, env: Env) => unknown;
  readonly set?: (model: never, value: never, env: Env) => void;
}
export interface PartMember {
  readonly since: Since;
  readonly gives: string;
  readonly of?: (model: never, env: Env) => Model;
}
export interface MethodMember {
  readonly since: Since;
  /** Class of the object returned; absent for a method that returns none. */
  readonly gives?: string;
  /** It answers with a value that is there after the next sync (a ClientResult), not with an object. */
  readonly answers?: true;
  /** Null for the object that stands for none. */
  readonly run: (model: never, args: never[], env: Env) => Model;
}

/** What members may reach beside their own model. */
export interface Env {
  readonly workbook: FakeWorkbook;
  /** Tells that a sheet's cells have changed. */
  readonly changed: (sheetId: string) => void;
}
