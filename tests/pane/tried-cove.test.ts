import { describe, expect, test } from '@jest/globals';
import { rowForCove } from '../../src/planning/input/row-for-cove.ts';
import { answerTyped } from '../../src/pane/profile/answer-profile.ts';
import { chosenProfile, usualShop } from '../../src/pane/profile/chosen-profile.ts';
import { usualCove } from '../../src/pane/profile/cove-fields.ts';
import { DEMO_TABLES, demoHost, makePane } from './make-pane.ts';

const shop = usualShop();
const typed = { ...usualCove(shop), width: '3', depth: '1/2', offCenter: '' };

describe('The row that a person is on', () => {
  test('of Profiles or of Runs brings its cove into the pane, and of Runs its room; another changes nothing', async () => {
    const host = demoHost();
    const { store, ready } = makePane(host);
    await ready();
    const { coves, runs } = store.get().reading.found!;
    const shown = (): string => chosenProfile(store.get()).name;
    const rowOf = (where: unknown): { sheet: string; line: number } => {
      const { sheet, cell } = where as { sheet: string; cell: string };
      return { sheet, line: Number(cell.replace(/\D/gu, '')) };
    };
    const last = coves.at(-1)!;
    host.goTo(rowOf(last.where));
    expect(shown()).toBe(last.name);
    const run = runs.find(({ run: one, from }) => one.profile === coves[0]!.name && from.row)!;
    host.goTo(rowOf(run.from.row));
    expect([shown(), store.get().room]).toEqual([coves[0]!.name, run.run.room]);
    const before = store.get();
    host.goTo({ sheet: 'Stock', line: rowOf(last.where).line });
    host.goTo({ sheet: 'Runs', line: 1 });
    expect(store.get()).toBe(before);
  });
});

describe('A cove that was tried', () => {
  test('is printed without a job or a workbook, seen before; a half-typed one is not', async () => {
    const { store, actions, ready } = makePane(undefined);
    await ready();
    await actions.printCove(answerTyped({ ...typed, width: '3 1/' }, shop));
    expect(store.get().printing).toBeUndefined();
    const answer = answerTyped(typed, shop);
    await actions.printCove(answer);
    const { pages, choices } = store.get().printing!;
    expect([choices.length, pages!.blocks]).toEqual([1, 1]);
    expect(pages!.html.match(/<svg /gu)).toHaveLength(2);
    // The approach twice, each with what it is measured from, and no blanks to be cut.
    for (const text of ['41.8', '48.2', 'from the blade line', 'manual first', 'Blank 4 1/2']) {
      expect([text, pages!.html.includes(text)]).toEqual([text, true]);
    }
    expect(/0 blanks|sheet Outlines/u.exec(pages!.html)).toBeNull();
    store.send({ type: 'print put away' });
    expect(store.get().printing).toBeUndefined();
  });

  test('is added to Profiles as it was typed, and read back the same', async () => {
    const host = demoHost();
    const { store, actions, ready } = makePane(host);
    await ready();
    const tried = { ...typed, nearFlat: '0.7', blankWidth: '4 1/2', blankThickness: '32 mm' };
    store.send({ type: 'own cove typed', typed: tried });
    await actions.addCove('Hall cove', tried);
    const { reading, profile, notice } = store.get();
    expect(notice).toBe(
      'Hall cove was added on Profiles, row 7. Say there what it is made of. It was tried with another blade than Shop’s, 9 7/8" with a kerf of 1/8": the job’s set-up is for that one.',
    );
    expect(profile.chosen).toBe('Hall cove');
    const made = reading.found!.coves.find(({ name }) => name === 'Hall cove')!;
    const { profile: own } = answerTyped(tried, shop);
    expect([made.cove, Number(made.blankWidth), Number(made.nearFlat)]).toEqual([
      own!.cove,
      4.5,
      0.7,
    ]);
    expect(made.blankThickness.equals(own!.blankThickness)).toBe(true);
    await actions.addCove('hall  cove', tried);
    expect(store.get().trouble.map(({ code }) => code)).toEqual(['job.profile-twice']);
  });

  test('has its lengths with their unit, whatever the headings say, and asks for columns that lack', () => {
    const table = { ...DEMO_TABLES[0]!, name: 'Profiles', rows: [] };
    const cells = ['Blank width (mm)', 'Profile', 'Cove width', 'Make', 'Cove depth'];
    const own = { ...table, headings: { line: 1, cells } };
    const row = rowForCove(own, 'Hall cove', typed, shop);
    expect(row.ok ? [] : row.faults.map(({ code, argument }) => [code, argument])).toEqual([
      ['table.heading-missing', 'blankThickness'],
    ]);
    const whole = { ...own, headings: { line: 1, cells: [...cells, 'Blank thickness'] } };
    expect(rowForCove(whole, 'Hall cove', typed, shop)).toEqual({
      ok: true,
      value: ['4 1/2"', 'Hall cove', '3"', 'cove', '1/2"', '1 1/4"'],
    });
  });
});
