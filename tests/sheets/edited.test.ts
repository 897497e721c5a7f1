/** A person types over one cell of the shop's workbook: what is concerned follows, or says that it differs. */
import { beforeAll, describe, expect, test } from '@jest/globals';
import { spawnSync } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { writeWorkbook } from '../../src/hosts/xlsx/write-workbook.ts';
import type { JobPlan } from '../../src/planning/job-plan.ts';
import { describePlan } from '../../src/sheets/describe-plan.ts';
import type { CellValue, WorkbookDescription } from '../../src/sheets/grammar/description.ts';
import { libreOfficeIsHere, recalculate } from '../hosts/libreoffice.ts';
import { readXlsxBack } from '../hosts/read-xlsx.ts';
import { paintTiny } from '../hosts/tiny-drawing.ts';
import type { WorkbookView } from '../hosts/workbook-view.ts';
import { planOf } from '../planning/make-job.ts';
import { NO_TICKS } from '../../src/planning/cut/cut-already.ts';
import { markCut } from '../../src/planning/cut/cut-from-plan.ts';
import { countLengths } from '../../src/sheets/cut-so-far.ts';
import { readTicks } from '../../src/sheets/read-ticks.ts';
import { cutRow } from './cut-places.ts';
import { cutPieces } from './cut-rows.ts';
import { columnLetters } from '../../src/core/cells/cell-range.ts';
import { BOTH, HALVES } from '../../src/sheets/cutting/cutting-columns.ts';
import { JOBS, PIECES_AT, rawRowsOf, rowWith, sheetOf } from './sheet-jobs.ts';
import { BOARDS, BOARDS_CAME, INVOICE, yardRow } from './boards-that-came.ts';
import { EDITS, sortPieces, typeInto } from './single-edits.ts';

const gnumericIsHere = (): boolean => spawnSync('ssconvert', ['--version']).status === 0;
const here = libreOfficeIsHere();
const mustRun = here || process.env['CI'] !== undefined;
if (!mustRun) console.info('Skipped: LibreOffice (soffice) is not installed on this machine.');

const TICKED = 'ticks of what is done';

/** Columns that say what two sheets differ by. */
const NO_OFF = [columnLetters(PIECES_AT.off)];
const CUT_OFF = BOTH.map(({ table }) => columnLetters(table.start('off')));
/** Where Cutting says how much is cut. */
const CUT_SO_FAR = `Cutting!${HALVES.at('lengthB', 2)}`;

(mustRun ? describe : describe.skip)(
  'After a change of one cell, recalculated by LibreOffice',
  () => {
    let plan: JobPlan;
    let workbook: WorkbookDescription;
    const saved = new Map<string, WorkbookView>();
    const SORTED = 'the order of Pieces';
    const SORTED_AND_CHANGED = 'the order of Pieces, then a piece on Cutting';

    const valueAt = (edit: string, at: string): CellValue | null => {
      const [sheet, cell = ''] = at.split('!');
      const found = saved.get(edit)!.sheets.find(({ name }) => name === sheet)!;
      return found.cells[cell]?.value ?? null;
    };

    beforeAll(async () => {
      // Where CI lacks it, this fails: a check that can't run there is no check.
      expect(here).toBe(true);
      plan = await planOf(JOBS['demo']!);
      workbook = describePlan(plan);
      const books = new Map(
        Object.entries(EDITS).map(([name, { typed }]) => [
          name,
          typeInto(workbook, typed(workbook)),
        ]),
      );
      books.set(SORTED, sortPieces(workbook, 5));
      const cut = cutRow(workbook, 3);
      books.set(SORTED_AND_CHANGED, typeInto(sortPieces(workbook, 5), [[cut.at, cut.length + 1]]));
      const names = [...books.keys()];
      const files: Record<string, Uint8Array> = {};
      for (const [at, name] of names.entries()) {
        files[`edit-${at}`] = await writeWorkbook(books.get(name)!, { paint: paintTiny });
      }
      const recalculated = await recalculate(files);
      for (const [at, name] of names.entries()) {
        saved.set(name, readXlsxBack(recalculated[`edit-${at}`]!, false));
      }
    }, 240_000);

    test.each(Object.keys(EDITS))('of %s, every sheet says on top whether all agree', (name) => {
      const { first } = EDITS[name]!;
      for (const sheet of ['Production', 'Pieces', 'Cutting']) {
        const said = String(valueAt(name, `${sheet}!A2`));
        if (first === undefined) expect([sheet, said]).toEqual([sheet, 'All sheets agree.']);
        else {
          expect([sheet, said]).toEqual([sheet, expect.stringContaining(`first: ${first}. See`)]);
          expect(said).toMatch(/^The sheets differ in \d+ of 21 checks/u);
        }
      }
    });

    test.each(Object.keys(EDITS))(
      'of %s, Client says whether it is behind, and the price now',
      (name) => {
        const price = String(valueAt(name, 'Client!A3') ?? '');
        const now = valueAt(name, 'Client!G3');
        if (EDITS[name]!.behind === undefined) {
          expect([price, now ?? '']).toEqual(['', '']);
          return;
        }
        expect(price).toMatch(/^Not as the shop’s sheets: plan again/u);
        const { cells } = saved.get(name)!.sheets.find((sheet) => sheet.name === 'Office')!;
        const [at = ''] =
          Object.entries(cells).find(([, { value }]) => value === 'Price ($)') ?? [];
        expect(now).toBe(cells[`C${at.replace(/\D/gu, '')}`]?.value);
      },
    );

    test('a piece that differs is marked in its row of Pieces and of Cutting, and no other', () => {
      for (const [name, { off }] of Object.entries(EDITS)) {
        if (off === undefined) continue;
        const wanted = off(workbook);
        for (const [at, value] of Object.entries(wanted)) {
          expect([name, at, valueAt(name, at)]).toEqual([name, at, value]);
        }
      }
      const marked = (name: string, sheet: string, columns: readonly string[]): number[] => {
        const { cells } = saved.get(name)!.sheets.find((one) => one.name === sheet)!;
        return Object.entries(cells).flatMap(([at, { value, formula }]) =>
          columns.includes(at.replace(/\d+$/u, '')) &&
          formula !== null &&
          typeof value === 'number' &&
          value !== 0
            ? [value]
            : [],
        );
      };
      const one = 'a piece on Cutting, by a sixteenth';
      expect(marked(one, 'Pieces', NO_OFF)).toEqual([-0.063]);
      // The row of the piece, and the row of its profile at the end.
      expect(marked(one, 'Cutting', CUT_OFF)).toEqual([-0.063, -0.063]);
      expect(marked('nothing at all', 'Cutting', CUT_OFF)).toEqual([]);
    });

    test('boards that came are tallied by surface measure and by the plain rule, and the invoice against it', () => {
      const first = yardRow(workbook);
      const at = (letter: string, row: number) => valueAt(BOARDS_CAME, `Yard!${letter}${row + 1}`);
      expect(BOARDS.map((_, row) => at('H', first + row))).toEqual(
        BOARDS.map(([, , face]) => face),
      );
      expect(BOARDS.map((_, row) => at('I', first + row))).toEqual(
        BOARDS.map(([, , face]) => face),
      );
      for (const [row, [wide, long]] of BOARDS.entries()) {
        expect(at('K', first + row)).toBeCloseTo((wide * long) / 12, 9);
      }
      const sheet = sheetOf(workbook, 'Yard');
      const figure = (label: string): number => Number(at('E', rowWith(sheet, label)));
      const tally = BOARDS.reduce((all, [, , face]) => all + face, 0);
      expect(figure('Tally of what came')).toBe(tally);
      const due = (tally / 0.93) * 1.15;
      expect(figure('To be billed')).toBeCloseTo(due, 9);
      expect(figure('Billed too much')).toBeCloseTo(INVOICE.billed - due, 9);
      expect(figure('That is, in money')).toBeCloseTo((INVOICE.billed - due) * INVOICE.price, 2);
      // A row that nobody has typed in counts nothing.
      expect(at('H', first + BOARDS.length) ?? '').toBe('');
    });

    test('a list of pieces that is sorted otherwise still agrees, and still finds what differs', () => {
      expect(valueAt(SORTED, 'Production!A2')).toBe('All sheets agree.');
      expect(valueAt(SORTED_AND_CHANGED, 'Cutting!A2')).toMatch(/first: Pieces to cut: listed/u);
      expect(valueAt(SORTED_AND_CHANGED, cutRow(workbook, 3).off)).toBe(1);
    });

    (gnumericIsHere() ? test : test.skip)(
      'Gnumeric comes to the same verdicts',
      async () => {
        const folder = await mkdtemp(join(tmpdir(), 'coveledger-gnumeric-'));
        try {
          for (const name of ['nothing at all', 'a piece on Cutting, by a sixteenth', TICKED]) {
            const book = typeInto(workbook, EDITS[name]!.typed(workbook));
            const path = join(folder, 'book.xlsx');
            await writeFile(path, await writeWorkbook(book, { paint: paintTiny }));
            const csv = join(folder, '%n.csv');
            const ran = spawnSync('ssconvert', ['--recalc', '--export-file-per-sheet', path, csv]);
            expect([name, ran.status]).toEqual([name, 0]);
            for (const [at, sheet] of book.sheets.entries()) {
              if (!['Production', 'Pieces', 'Cutting'].includes(sheet.name)) continue;
              const [, line = ''] = (await readFile(join(folder, `${at}.csv`), 'utf8')).split('\n');
              expect([name, sheet.name, line]).toEqual([
                name,
                sheet.name,
                expect.stringContaining(String(valueAt(name, `${sheet.name}!A2`))),
              ]);
              if (sheet.name === 'Cutting')
                expect(line).toContain(String(valueAt(name, CUT_SO_FAR)));
            }
          }
        } finally {
          await rm(folder, { recursive: true, force: true });
        }
      },
      120_000,
    );

    test('ticks are counted on each sheet as they are made, and as the next plan reads them', () => {
      const name = TICKED;
      const said = (edit: string): unknown[] => {
        const { cells } = saved.get(edit)!.sheets.find((sheet) => sheet.name === 'Production')!;
        const values = Object.values(cells).flatMap(({ value }) => (value === null ? [] : [value]));
        const steps = values.find((value) => /^\d+ of \d+ done$/u.test(String(value)));
        const beside = (label: string) => values[values.indexOf(label) + 1];
        return [
          valueAt(edit, 'Pieces!I2'),
          beside('Pieces done or cut'),
          valueAt(edit, CUT_SO_FAR),
          beside('Sticks cut or begun'),
          beside('Lengths cut'),
          valueAt(edit, 'Client!A2'),
          steps,
        ];
      };
      const { done, sticks } = plan.totals;
      const listed = plan.pieces.length;
      const lengths = cutPieces(sheetOf(workbook, 'Cutting')).length;
      const job = String(valueAt('nothing at all', 'Client!A2'));
      expect(job).toMatch(/ pieces\.$/u);
      const saidOf = (more: number, sticksCut: number, cut: number, steps: number): unknown[] => [
        `${done + more} of ${listed} done or cut`,
        `${done + more} of ${listed}`,
        `${sticksCut} of ${sticks} sticks cut or begun, ${cut} of ${lengths} lengths`,
        `${sticksCut} of ${sticks}`,
        `${cut} of ${lengths}`,
        sticksCut === 0 ? job : `${job} ${sticksCut} of ${sticks} sticks cut or begun.`,
        expect.stringMatching(new RegExp(`^${steps} of \\d+ done$`, 'u')),
      ];
      expect(said('nothing at all')).toEqual(saidOf(0, 0, 0, 0));
      const typed = typeInto(workbook, EDITS[name]!.typed(workbook));
      const { cuts, sticks: whole } = readTicks(plan, {
        cutting: rawRowsOf(sheetOf(typed, 'Cutting')),
        pieces: [],
      })!;
      const marked = markCut(plan, { ...NO_TICKS, cuts, sticks: whole });
      expect([whole.size, cuts.size]).toEqual([1, 1]);
      expect(said(name)).toEqual(saidOf(2, marked.totals.sticksCut, countLengths(marked).cut, 1));
    });
  },
);
