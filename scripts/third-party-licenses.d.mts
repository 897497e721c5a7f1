export interface BundledPackage {
  readonly folder: string;
  readonly name: string;
  readonly version: string;
  readonly license?: unknown;
  readonly author?: string | { readonly name: string };
  readonly files: readonly string[];
}
export const LICENSES_FILE: string;
export function packagesOf(files: readonly string[]): BundledPackage[];
export function sayLicenses(packages: readonly BundledPackage[]): string;
export function licenseOf(one: BundledPackage): string | undefined;
export function isPermissive(license: string | undefined): boolean;
