/** A file for other programs, before anybody has saved it. */

export interface ExportFile {
  /** Folders and name, with forward slashes: `lists/pieces.csv`. */
  readonly path: string;
  readonly text: string;
}
