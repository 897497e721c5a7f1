/** The one record that the page keeps in the browser's own storage (IndexedDB). */

const DATABASE = 'coveledger';
const PLACE = 'work';
const KEY = 'now';

export interface BrowserStore {
  /** Whatever is there; undefined for nothing. */
  read(): Promise<unknown>;
  /**
   * Writes where the record that is there still has the turn that was last known; else it was
   * written by another tab, and stays.
   */
  write(record: TurnedRecord, lastTurn: number | undefined): Promise<'written' | 'overtaken'>;
  /** Whatever is there goes; nothing tells whether it came to its end. */
  writeAtOnce(record: TurnedRecord): void;
}

export interface TurnedRecord {
  readonly turn: number;
}

/** @throws what the browser throws where storage is forbidden or of a later version */
export async function openBrowserStore(): Promise<BrowserStore> {
  const database = await openDatabase();
  // A later version of the page, in another tab, is not kept waiting.
  database.onversionchange = () => database.close();
  const start = (mode: IDBTransactionMode): IDBTransaction => database.transaction(PLACE, mode);
  return {
    read: () => answerOf(start('readonly').objectStore(PLACE).get(KEY) as IDBRequest<unknown>),
    write: (record, lastTurn) =>
      new Promise((resolve, reject) => {
        const transaction = start('readwrite');
        const place = transaction.objectStore(PLACE);
        const asked = place.get(KEY) as IDBRequest<TurnedRecord | undefined>;
        let outcome: 'written' | 'overtaken' = 'written';
        transaction.oncomplete = () => resolve(outcome);
        transaction.onabort = () => reject(reasonOf(transaction.error));
        asked.onsuccess = () => {
          const there = asked.result;
          if (there !== undefined && there.turn !== lastTurn) outcome = 'overtaken';
          else place.put(record, KEY);
        };
      }),
    writeAtOnce: (record) => {
      const transaction = start('readwrite');
      transaction.objectStore(PLACE).put(record, KEY);
      transaction.commit();
    },
  };
}

function openDatabase(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(DATABASE, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(PLACE);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(reasonOf(request.error));
    request.onblocked = () => reject(new Error('another tab holds it'));
  });
}

function answerOf<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(reasonOf(request.error));
  });
}

function reasonOf(error: DOMException | null): Error {
  return error ?? new Error('it was broken off');
}
