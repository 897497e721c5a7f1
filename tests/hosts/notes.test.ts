import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { recallNotes, rememberNotes } from '../../src/hosts/grid/book-metadata.ts';
import { noteIn, notesIn, withNotes, type Properties } from '../../src/hosts/notes.ts';

describe('Notes as document properties', () => {
  test('read back whole, of whatever length, in parts that Excel keeps', () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 900 }),
      fc.string({ unit: fc.constantFrom('a', ' ', '🪚', '\n'), maxLength: 900 }),
      fc.constant('x y '.repeat(200)),
    );
    fc.assert(
      fc.property(text, text, (first, second) => {
        const before = withNotes({ Client: 'Maple', Rooms: 3 }, { a: first, b: 'kept' });
        expect(notesIn(before, ['a', 'b'])).toEqual({ a: first, b: 'kept' });
        const after = withNotes(before, { a: second });
        expect(notesIn(after, ['a', 'b'])).toEqual({ a: second, b: 'kept' });
        expect(withNotes(after, { a: undefined, b: undefined })).toEqual({
          Client: 'Maple',
          Rooms: 3,
        });
        const parts = Object.keys(after).filter((key) => key.startsWith('a'));
        expect(parts.length).toBeLessThanOrEqual(Math.ceil(second.length / 128) + 1);
        for (const part of Object.values(after)) {
          expect(String(part).length).toBeLessThanOrEqual(255);
          expect(String(part)).not.toMatch(/^[\uDC00-\uDFFF]|[\uD800-\uDBFF]$/u);
        }
      }),
    );
  });

  test('are none where a part is no text, or none is there', () => {
    const properties: Properties = { a: 'one', 'a (2)': 7, b: true, c: '' };
    expect(notesIn(properties, ['a', 'b', 'c', 'd'])).toEqual({ c: '' });
    expect(noteIn(properties, 'toString')).toBeUndefined();
    expect(noteIn(properties, '__proto__')).toBeUndefined();
  });

  test('of work that an earlier version kept in the browser are recalled until kept anew', () => {
    const old = { coveledger: { notes: { columns: '{"a":1}', planned: 'x' } }, other: 1 };
    const keys = ['columns', 'planned'];
    expect(recallNotes(old, ['constructor'])['constructor']).toBeUndefined();
    expect(recallNotes(old, keys)).toEqual({ columns: '{"a":1}', planned: 'x' });
    const kept = rememberNotes(old, { columns: undefined });
    expect(recallNotes(kept, keys)).toEqual({ planned: 'x' });
    expect(kept).toMatchObject({ other: 1 });
    expect(recallNotes(rememberNotes(kept, { planned: 'y' }), keys)).toEqual({ planned: 'y' });
  });
});
