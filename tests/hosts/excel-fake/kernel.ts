/**
 * The fake's machinery, after Excel's library: objects that stand for what is in the workbook, a
 * queue of what is asked of them, and `sync`, which carries it out in order. Strict where the true
 * one forgives or fails late: an unknown member, one of a later requirement set, and a property read
 * before it was loaded and synced all throw at once.
 */
import type { ClassMembers, MethodMember, Model, PartMember } from './members.ts';
import { bytesOf, checkPath, demand } from './demands.ts';
import { MisuseError, notLoaded, OfficeError } from './office-error.ts';
import type { Handler, Program } from './program.ts';

const MOST_BYTES = 5_000_000;
const OPERATION_BYTES = 200;

interface Operation {
  readonly label: string;
  readonly bytes: number;
  readonly run: () => void;
}

interface ObjectState {
  readonly className: string;
  readonly members: ClassMembers;
  readonly resolve: () => Model;
  readonly loaded: Map<string, unknown>;
  readonly parts: Map<string, object>;
  items: object[] | undefined;
  settled: boolean;
}

/** What one load() has met: its paths go to the same objects. */
interface Seen {
  readonly lists: Map<ObjectState, Model[]>;
  readonly proxies: Map<Model, object>;
}

export class FakeContext {
  readonly #program: Program;
  readonly #delay: boolean;
  readonly #states = new WeakMap<object, ObjectState>();
  #queue: Operation[] = [];
  #answered = 0;
  readonly workbook: object;

  constructor(program: Program, delayForCellEdit: boolean) {
    this.#program = program;
    this.#delay = delayForCellEdit;
    this.workbook = this.#object('Workbook', () => program.workbook);
  }

  readonly sync = async (): Promise<void> => {
    const queue = this.#queue;
    this.#queue = [];
    this.#answered = 0;
    if (queue.length === 0) return;
    await Promise.resolve();
    const failsAfter = await this.#program.beginRequest(this.#delay, queue.length);
    const asked = queue.reduce((sum, { bytes }) => sum + bytes + OPERATION_BYTES, 0);
    if (asked > MOST_BYTES) {
      throw new OfficeError('RequestPayloadSizeLimitExceeded', `${asked} bytes`);
    }
    for (const [index, operation] of queue.entries()) {
      if (failsAfter !== undefined && index >= failsAfter) fail(operation.label);
      operation.run();
    }
    if (failsAfter !== undefined) fail('the end');
    if (this.#answered > MOST_BYTES) {
      throw new OfficeError('ResponsePayloadSizeLimitExceeded', `${this.#answered} bytes`);
    }
    this.#program.endRequest();
  };

  #ask(label: string, bytes: number, run: () => void): void {
    this.#queue.push({ label, bytes, run });
  }

  #object(className: string, resolve: () => Model): object {
    const members = this.#program.classes[className];
    if (members === undefined) throw new MisuseError(`the fake has no class ${className}`);
    const state: ObjectState = {
      className,
      members,
      resolve: () => {
        const model = resolve();
        if (model === null) throw new OfficeError('ItemNotFound', `no such ${className}`);
        if ((model as { deleted?: boolean }).deleted === true) {
          throw new OfficeError('ItemNotFound', `${className} was deleted`);
        }
        return model;
      },
      loaded: new Map(),
      parts: new Map(),
      items: undefined,
      settled: false,
    };
    const proxy: object = new Proxy(
      {},
      {
        get: (_, name) =>
          typeof name === 'symbol' ? undefined : this.#get(proxy, state, name, resolve),
        set: (_, name, value) => {
          this.#set(state, String(name), value);
          return true;
        },
        has: () => {
          throw new MisuseError(`"in" on ${className}`);
        },
        deleteProperty: () => {
          throw new MisuseError(`delete on ${className}`);
        },
      },
    );
    this.#states.set(proxy, state);
    return proxy;
  }

  #get(proxy: object, state: ObjectState, name: string, resolve: () => Model): unknown {
    const { members, className } = state;
    // So that an object can be awaited or returned from an async function.
    if (name === 'then') return undefined;
    if (name === 'context') return this;
    if (name === 'load') {
      return (wanted: unknown) => {
        this.#load(state, wanted, resolve);
        return proxy;
      };
    }
    if (name === 'isNullObject') {
      if (!state.settled) throw notLoaded(className, 'isNullObject');
      return resolve() === null;
    }
    if (name === 'items' && members.items !== undefined) {
      if (state.items === undefined) throw notLoaded(className, 'items');
      return state.items;
    }
    const value = members.values?.[name];
    if (value !== undefined) {
      demand(this.#program.minor, className, name, value.since);
      if (state.loaded.has(name)) return state.loaded.get(name);
      throw notLoaded(className, name);
    }
    const part = members.parts?.[name];
    if (part !== undefined) {
      demand(this.#program.minor, className, name, part.since);
      return this.#part(state, name, part);
    }
    const method = members.methods?.[name];
    if (method !== undefined) {
      demand(this.#program.minor, className, name, method.since);
      return (...args: unknown[]) => this.#call(state, name, method, args);
    }
    const event = members.events?.[name];
    if (event !== undefined) {
      demand(this.#program.minor, className, name, event);
      return { add: (call: Handler['call']) => this.#listen(name, call) };
    }
    throw new MisuseError(`${className} has no ${name} (or the fake does not know it)`);
  }

  #set(state: ObjectState, name: string, value: unknown): void {
    const member = state.members.values?.[name];
    if (member?.set === undefined) throw new MisuseError(`${state.className}.${name} can't be set`);
    demand(this.#program.minor, state.className, name, member.since);
    const { set } = member;
    const copy = structuredClone(value);
    state.loaded.set(name, copy);
    this.#ask(`${state.className}.${name} = …`, bytesOf(copy), () =>
      set(state.resolve() as never, copy as never, this.#program),
    );
  }

  #part(state: ObjectState, name: string, part: PartMember): object {
    const known = state.parts.get(name);
    if (known !== undefined) return known;
    const made = this.#object(part.gives, () => {
      const model = state.resolve();
      return part.of === undefined ? model : part.of(model as never, this.#program);
    });
    state.parts.set(name, made);
    return made;
  }

  #call(
    state: ObjectState,
    name: string,
    method: MethodMember,
    args: unknown[],
  ): object | undefined {
    if (method.answers === true) return this.#answer(state, name, method, args);
    let result: Model;
    let done = false;
    const given = method.gives;
    const proxy =
      given === undefined
        ? undefined
        : this.#object(given, () => {
            if (!done)
              throw new MisuseError(`${state.className}.${name}() is used before its turn`);
            return result;
          });
    const own = proxy === undefined ? undefined : this.#states.get(proxy);
    this.#ask(`${state.className}.${name}()`, bytesOf(args.map((one) => this.#plain(one))), () => {
      const models = args.map((one) => this.#modelOf(one));
      result = method.run(state.resolve() as never, models as never[], this.#program);
      if (result === null && !name.endsWith('OrNullObject')) {
        throw new OfficeError('ItemNotFound', `${state.className}.${name}`);
      }
      done = true;
      if (own !== undefined) own.settled = true;
    });
    return proxy;
  }

  /** A ClientResult: its value is there once it was synced. */
  #answer(state: ObjectState, name: string, method: MethodMember, args: unknown[]): object {
    const answer: { value?: unknown } = {};
    this.#ask(`${state.className}.${name}()`, bytesOf(args), () => {
      answer.value = method.run(state.resolve() as never, args as never[], this.#program);
      this.#answered += bytesOf(answer.value);
    });
    return {
      get value() {
        if (!('value' in answer)) throw notLoaded(`${state.className}.${name}()`, 'value');
        return answer.value;
      },
    };
  }

  /** Objects given as arguments stand for their models; an array is never one. */
  #modelOf(argument: unknown): unknown {
    if (typeof argument !== 'object' || argument === null) return argument;
    const state = this.#states.get(argument);
    return state === undefined ? argument : state.resolve();
  }

  #plain(argument: unknown): unknown {
    const isObject = typeof argument === 'object' && argument !== null;
    return isObject && this.#states.has(argument) ? '' : argument;
  }

  #load(state: ObjectState, wanted: unknown, resolve: () => Model): void {
    const list = typeof wanted === 'string' ? wanted.split(',') : wanted;
    if (!Array.isArray(list)) throw new MisuseError('load() needs names');
    const paths = list.map((path) => String(path).trim().split('/'));
    for (const path of paths) checkPath(this.#program, state.className, path);
    this.#ask(`${state.className}.load()`, String(wanted).length, () => {
      state.settled = true;
      if (resolve() === null) return;
      const model = state.resolve();
      const seen: Seen = { lists: new Map(), proxies: new Map() };
      for (const path of paths) this.#loadPath(state, model, path, seen);
    });
  }

  #loadPath(
    state: ObjectState,
    model: Model,
    [name = '', ...rest]: readonly string[],
    seen: Seen,
  ): void {
    const { members } = state;
    if (name === 'items' && members.items !== undefined) {
      const { gives, of } = members.items;
      const models = seen.lists.get(state) ?? of(model as never, this.#program);
      seen.lists.set(state, models);
      state.items = models.map((item: Model) => {
        const proxy = seen.proxies.get(item) ?? this.#object(gives, () => item);
        seen.proxies.set(item, proxy);
        const own = this.#states.get(proxy);
        if (own !== undefined) {
          own.settled = true;
          this.#loadPath(own, item, rest, seen);
        }
        return proxy;
      });
      return;
    }
    const value = members.values?.[name];
    if (value?.get !== undefined) {
      const got = structuredClone(value.get(model as never, this.#program));
      this.#answered += bytesOf(got);
      state.loaded.set(name, got);
      return;
    }
    const part = members.parts?.[name];
    if (part === undefined) return;
    const own = this.#states.get(this.#part(state, name, part));
    if (own === undefined) return;
    own.settled = true;
    this.#loadPath(own, own.resolve(), rest, seen);
  }

  #listen(event: string, call: Handler['call']): object {
    const handler: Handler = { event, call };
    this.#ask('event.add()', 0, () => this.#program.handlers.add(handler));
    return {
      context: this,
      remove: () => this.#ask('event.remove()', 0, () => this.#program.handlers.delete(handler)),
    };
  }
}

function fail(at: string): never {
  throw new OfficeError('GeneralException', `the fake was told to fail, at ${at}`);
}
