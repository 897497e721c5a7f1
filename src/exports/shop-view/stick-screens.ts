/** A screen a stick: which one it is, its bar, and its pieces in the order they are cut, each to tap off. */
import { drawStick } from '../../drawings/stick-bar.ts';
import { PAGE_PALETTE } from '../../drawings/palette.ts';
import { toSvg } from '../../drawings/to-svg.ts';
import type {
  CuttingGroup,
  CutPiece,
  CutStick,
  JobPlan,
  ProfilePlan,
} from '../../planning/job-plan.ts';
import { listCutStock } from '../../planning/cut/cut-stock.ts';
import { listJoints } from '../../planning/joints.ts';
import type { Profile } from '../../planning/job.ts';
import {
  brief,
  nameOf,
  sayRest,
  viewOf,
  wordsOfPiece,
  type PieceWords,
  type PieceReading,
} from '../../sheets/cutting/cutting-stick.ts';
import { listRippings } from '../../sheets/cutting/cutting-boards.ts';
import { sayLie } from '../../sheets/cutting/how-it-lies.ts';
import { sayStays } from '../../sheets/cutting/cutting-words.ts';
import { pieceNumbers } from '../../sheets/numbered-pieces.ts';
import { lettersOf, listLots, sayWhich, type LotLetters } from '../../sheets/stock-lots.ts';
import { printExact, printStick } from '../../sheets/words/print-length.ts';
import { CROSSCUT_CAUTION } from '../../sheets/words/standing-cautions.ts';
import { escapeHtml, paragraph, tickBox } from './markup.ts';
import type { Screen } from './screen.ts';

/** What the words of every stick go by. */
export interface StickReading extends PieceReading {
  readonly letters: LotLetters;
}

export function stickReading(plan: JobPlan): StickReading {
  return {
    shop: plan.job.shop,
    letters: lettersOf(listLots(plan)),
    joints: listJoints(plan),
    numbers: pieceNumbers(plan),
  };
}

/** What boards of a group are ripped into, before anything is crosscut; undefined where it opens none. */
export function ripScreen(
  { letters, shop }: StickReading,
  group: CuttingGroup,
  plans: readonly ProfilePlan[],
): Screen | undefined {
  const rippings = listRippings(group, listCutStock(plans), letters, shop);
  if (rippings.length === 0) return undefined;
  const boxes = rippings.map(({ words, isCut }) =>
    tickBox({ name: `rip ${words}`, value: words, notes: [], isDone: isCut }),
  );
  return {
    title: `${group.name}: rip the boards first`,
    body: `${paragraph(CROSSCUT_CAUTION, 'caution')}<ul class="ticks words">${boxes.join('')}</ul>`,
    ticks: boxes.length,
    done: rippings.filter(({ isCut }) => isCut).length,
  };
}

export function stickScreens(reading: StickReading, planned: ProfilePlan): Screen[] {
  const { profile, sticks } = planned;
  const longest = Math.max(...sticks.map(({ length }) => Number(length)));
  const stays = sayStays([planned], reading.shop);
  return sticks.map((stick, at) => ({
    title: `${profile.name}: stick ${at + 1} of ${sticks.length}`,
    body: [
      paragraph(CROSSCUT_CAUTION, 'caution'),
      ...(stays === undefined ? [] : [paragraph(stays, 'caution')]),
      stickBody(reading, profile, stick, longest),
    ].join(''),
    ticks: stick.pieces.length,
    done: stick.pieces.filter(({ isCut }) => isCut === true).length,
  }));
}

function stickBody(
  reading: StickReading,
  profile: Profile,
  stick: CutStick,
  longest: number,
): string {
  const { shop, letters } = reading;
  const words = stick.pieces.map((cut) => wordsOfPiece(cut, stick, profile, reading));
  const bar = toSvg(drawStick(viewOf(stick, words, shop, longest)), PAGE_PALETTE);
  const boxes = words.map((one, at) => pieceBox(one, at, profile, stick, reading));
  return [
    `<p class="big">${escapeHtml(printStick(stick.length, shop))}</p>`,
    paragraph(sayWhich(letters, stick), 'strong'),
    `<figure class="bar" tabindex="0" role="group" aria-label="The stick, drawn">${bar}</figure>`,
    `<ol class="ticks">${boxes.join('')}</ol>`,
    paragraph(sayRest(stick, shop), 'strong'),
  ].join('');
}

function pieceBox(
  { cut, mark, part, left, right }: PieceWords,
  at: number,
  profile: Profile,
  { id }: CutStick,
  { shop, numbers }: StickReading,
): string {
  const ends = [
    `Left: ${left.brief}, ${brief(left.point)}`,
    `Right: ${right.brief}, ${brief(right.point)}`,
  ];
  // Of what is no piece of the job it doesn't matter.
  const lie = cut.piece === undefined ? '' : sayLie(profile, 'with its set-up');
  return tickBox({
    name: `cut ${at + 1} of ${id}`,
    value: printExact(cut.length, shop),
    notes: [[mark, place(cut, numbers), part].filter(Boolean).join(', '), ...ends, lie],
    isDone: cut.isCut === true,
  });
}

/** `No. 4, Hall / north`: as Pieces has it; of what is no piece of the job, its own name. */
function place(cut: CutPiece, numbers: ReadonlyMap<string, number>): string {
  const { piece } = cut;
  if (piece === undefined) return nameOf(cut);
  const number = numbers.get(cut.id);
  const where = [piece.room, piece.run].filter((word) => word.trim() !== '').join(' / ');
  return number === undefined ? where : `No. ${number}, ${where}`;
}
