/** A screen of the shop view: a cove at the saw, a molding's corners, or a stick. */

export interface Screen {
  /** What it is called, in the list of all and over itself. */
  readonly title: string;
  /** Markup under the title. */
  readonly body: string;
  /** How many of its boxes there are, and are done before the file is made. */
  readonly ticks: number;
  readonly done: number;
}
