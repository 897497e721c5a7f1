/** The words of a job as it was read: every field typed, every default filled in, nothing computed. */
import type { Where } from '../core/faults/fault.ts';
import type { Cove } from '../core/cove/cove.ts';
import type { Degrees } from '../core/units/angle.ts';
import type { ExactInches } from '../core/units/length.ts';
import type { ClearStretch } from './clear-stretches.ts';
import type { OnWall } from './on-wall.ts';
import type { CellsOf, MadeRun, TrimRow, WallPlace, WallRow } from './room-rows.ts';
import type { Shop, ShopCells } from './shop.ts';
import type { TitleBlock } from './title-block.ts';
import type { HoursRow } from './work/hours-row.ts';
import type { WorkRow } from './work/work-row.ts';

export const MEASURES = ['wall', 'opening', 'long point', 'short point', 'finished'] as const;
export type MeasuredAs = (typeof MEASURES)[number];

export const END_KINDS = ['square', 'inside miter', 'outside miter', 'cope', 'return'] as const;
export type EndKind = (typeof END_KINDS)[number];

export const MAKES = ['cove', 'crown cove', 'buy'] as const;
export type Make = (typeof MAKES)[number];

/** What a miter goes through: the face of a molding that lies flat, or the thickness of one that stands. */
export const MITERS_ACROSS = ['face', 'thickness'] as const;

export const OPENING_KINDS = ['door', 'window', 'cased opening'] as const;
export type OpeningKind = (typeof OPENING_KINDS)[number];

export const STOCK_KINDS = ['stick', 'board'] as const;
export const PRICE_PER = ['piece', 'foot', 'board foot', 'metre', 'cubic metre'] as const;
export type PricePer = (typeof PRICE_PER)[number];

export interface RunEnd {
  readonly kind: EndKind;
  /** Angle of the wall corner at this end, seen from the room or from outside as the end is. */
  readonly corner: Degrees;
}

export interface Run {
  readonly room: string;
  readonly run: string;
  readonly profile: string;
  readonly length: ExactInches;
  readonly measuredAs: MeasuredAs;
  /** Between the opening and the molding, at each mitered end of a run measured as an opening. */
  readonly reveal: ExactInches;
  readonly quantity: number;
  readonly left: RunEnd;
  readonly right: RunEnd;
  readonly onePiece: boolean;
  readonly match: string;
  readonly done: boolean;
  readonly note: string;
  /** Its length. */
  readonly where: Where;
  readonly cells: CellsOf<RunCell>;
  /** Both of a run that Trim asks for, or that stands in place of one; absent: Trim knows nothing of it. */
  readonly made?: MadeRun;
  readonly onWall?: OnWall;
}

export const RUN_CELLS = ['profile', 'measuredAs', 'quantity', 'match'] as const;
export type RunCell = (typeof RUN_CELLS)[number];

export interface Opening {
  readonly room: string;
  /** The wall that the room's runs of this name lie on; empty where the opening cuts nothing. */
  readonly wall: string;
  readonly kind: OpeningKind;
  readonly width: ExactInches;
  readonly height: ExactInches;
  readonly sidesCased: number;
  readonly reveal: ExactInches;
  readonly casing?: string;
  readonly apron?: string;
  readonly stool?: string;
  /** From the wall's left corner to the opening's left edge. */
  readonly position?: ExactInches;
  /** From the floor to a window's opening; absent for what reaches the floor, and where it isn't known. */
  readonly sill?: ExactInches;
  /** How far a stool's ends stand out beyond the casing. */
  readonly horn: ExactInches;
  /** The room that its second side is in; absent: that room's list knows nothing of it. */
  readonly otherRoom?: string;
  /** As `wall`, in the other room; empty where the opening cuts nothing there. */
  readonly otherWall: string;
  /** As `position`, on the other room's wall and seen from there. */
  readonly otherPosition?: ExactInches;
  readonly quantity: number;
  readonly where: Where;
  readonly cells: CellsOf<OpeningCell>;
}

export const OPENING_CELLS = [
  'casing',
  'apron',
  'stool',
  'quantity',
  'wall',
  'height',
  'sill',
  'position',
  'otherRoom',
  'otherWall',
  'otherPosition',
] as const;
export type OpeningCell = (typeof OPENING_CELLS)[number];

interface Molding {
  readonly name: string;
  /** From the wall; absent for what stands upright or lies flat. */
  readonly spring?: Degrees;
  /** Of a ceiling that it goes up along its wall, from level; absent where all is level. */
  readonly slope?: Degrees;
  /**
   * Of a molding at a spring angle: how far it reaches down the wall and out along the ceiling, where
   * that isn't what its width and spring give (bought stock, whose back bevels take their share).
   */
  readonly drop?: ExactInches;
  readonly projection?: ExactInches;
  /** Absent: by how a run is measured, see computeCutLength. */
  readonly miterAcross?: (typeof MITERS_ACROSS)[number];
  readonly place: WallPlace;
  readonly species: string;
  /** A thickness class such as 5/4, or empty. */
  readonly thicknessClass: string;
  readonly offcutAllowancePercent?: number;
  readonly note: string;
  /** Its name. */
  readonly where: Where;
  readonly cells: CellsOf<ProfileCell>;
}

export const PROFILE_CELLS = [
  'coveWidth',
  'coveDepth',
  'offCenter',
  'blankWidth',
  'blankThickness',
  'nearFlat',
  'species',
  'offcutAllowance',
] as const;
export type ProfileCell = (typeof PROFILE_CELLS)[number];

/** A molding as the yard sells it. Its size is known where Profiles gives it. */
export interface BoughtProfile extends Molding {
  readonly make: 'buy';
  readonly blankWidth?: ExactInches;
  readonly blankThickness?: ExactInches;
}

/** A cove that this shop cuts, from blanks of this size. */
interface Coved extends Molding {
  readonly cove: Cove;
  readonly blankWidth: ExactInches;
  readonly blankThickness: ExactInches;
  /** Of the blank's face, by the near rail; absent: as wide as the far one. */
  readonly nearFlat?: ExactInches;
}

export interface FlatCoveProfile extends Coved {
  readonly make: 'cove';
}

/** A cove that stands between wall and ceiling. */
export interface CrownCoveProfile extends Coved {
  readonly make: 'crown cove';
  readonly spring: Degrees;
}

export type CoveProfile = FlatCoveProfile | CrownCoveProfile;
export type Profile = BoughtProfile | CoveProfile;

export interface StockItem {
  /** A profile's or a species' name. */
  readonly for: string;
  readonly kind: (typeof STOCK_KINDS)[number];
  readonly thicknessClass: string;
  /** As it was typed; absent where none was. */
  readonly grade?: string;
  readonly width?: ExactInches;
  /** Of one stick or board, or of its clear stretch that this row stands for. */
  readonly length: ExactInches;
  /** Of a whole stick or board, or for what `per` says of it, clear or not. */
  readonly price: number;
  readonly per: PricePer;
  readonly have: number;
  /** How many may be bought, counted as clear ones; null is as many as needed. */
  readonly buyMost: number | null;
  /**
   * Which percent of a bought board's face can be used, above 0 and below 100. Absent: all of it. Only of boards
   * that are bought: what is wrong with one on the rack can be seen.
   */
  readonly yieldPercent?: number;
  /** Of a board or stick with defects: which part of it this is. A row of Stock for each. */
  readonly stretch?: ClearStretch;
  /** What it is for. */
  readonly where: Where;
  readonly cells: CellsOf<StockCell>;
}

export const STOCK_CELLS = ['kind', 'thicknessClass', 'width', 'length', 'per', 'defects'] as const;
export type StockCell = (typeof STOCK_CELLS)[number];

export interface Job {
  readonly titleBlock: TitleBlock;
  readonly shop: Shop;
  readonly shopCells: ShopCells;
  readonly profiles: readonly Profile[];
  /** Those that Walls and Trim make first, those of Runs in the places of which they stand; then the others of Runs. */
  readonly runs: readonly Run[];
  readonly openings: readonly Opening[];
  readonly walls: readonly WallRow[];
  readonly trim: readonly TrimRow[];
  readonly stock: readonly StockItem[];
  /** What is typed, and the usual rows, see usual-work.ts. */
  readonly work: readonly WorkRow[];
  /** What the job took in truth; it changes no plan, no hour and no price. */
  readonly hours: readonly HoursRow[];
  /** What may be added, or made otherwise: runs and openings stand as the options that are taken up have them. */
  readonly options: readonly JobOption[];
}

/** What an option does to a molding in a room. Without `instead` it adds it. */
export interface OptionChange {
  readonly room: string;
  readonly profile: string;
  readonly instead?: string;
}

/** A row, or several, of Options. */
export interface JobOption {
  readonly name: string;
  /** For the client. */
  readonly note: string;
  readonly changes: readonly OptionChange[];
  /** The job with it taken up too, which has no options itself; absent where it is in the job already. */
  readonly job?: Job;
  readonly where: Where;
}

/** Where one table looks up another, names that look alike are: case and the number of spaces don't matter. */
export function sameName(one: string, other: string): boolean {
  return nameKey(one) === nameKey(other);
}

/** Characters of no width, which come along with copied text. */
const UNSEEN = /[\u00ad\u200b-\u200f\u2060\ufeff]/gu;

export function nameKey(name: string): string {
  return name.normalize('NFC').replace(UNSEEN, '').trim().replace(/\s+/gu, ' ').toLowerCase();
}
