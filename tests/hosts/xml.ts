/** A small strict XML reader for tests: shares nothing with the library that writes. */
export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (Element | string)[];
}

const TOKEN = /<\?[^?]*\?>|<(\/?)([A-Za-z_][\w:.-]*)((?:\s+[\w:.-]+="[^"<]*")*)\s*(\/?)>|([^<]+)/gy;
const ENTITIES: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
};

export function parseXml(xml: string): Element {
  const root = { name: '', attributes: {}, children: [] as (Element | string)[] };
  const open = [root];
  TOKEN.lastIndex = 0;
  let end = 0;
  for (let found = TOKEN.exec(xml); found !== null; found = TOKEN.exec(xml)) {
    end = TOKEN.lastIndex;
    const [, closing, name, attributes = '', empty, text] = found;
    const inside = open.at(-1)!;
    if (text !== undefined) inside.children.push(decode(text));
    if (name === undefined) continue;
    if (closing === '/') {
      if (inside.name !== name) throw new Error(`</${name}> closes <${inside.name}>`);
      open.pop();
      continue;
    }
    const element = { name, attributes: readAttributes(attributes), children: [] };
    inside.children.push(element);
    if (empty !== '/') open.push(element);
  }
  if (end !== xml.length || open.length !== 1) {
    throw new Error(`not well-formed at ${end}: ${xml.slice(end, end + 60)}`);
  }
  const [first] = root.children.filter((child) => typeof child !== 'string');
  if (first === undefined) throw new Error('no element');
  return first;
}

export function childrenOf(element: Element | undefined, name: string): Element[] {
  return (element?.children ?? [])
    .filter((child) => typeof child !== 'string')
    .filter((child) => child.name === name);
}

/** The one child of that name on the way down a path, or undefined. */
export function childOf(element: Element | undefined, ...path: string[]): Element | undefined {
  return path.reduce<Element | undefined>((at, name) => childrenOf(at, name)[0], element);
}

export function textOf(element: Element | undefined): string {
  return (element?.children ?? [])
    .map((child) => (typeof child === 'string' ? child : textOf(child)))
    .join('');
}

function readAttributes(text: string): Record<string, string> {
  const attributes: Record<string, string> = {};
  for (const [, name, value] of text.matchAll(/([\w:.-]+)="([^"]*)"/g)) {
    if (Object.hasOwn(attributes, name!)) throw new Error(`attribute ${name!} twice`);
    attributes[name!] = decode(value!);
  }
  return attributes;
}

function decode(text: string): string {
  // eslint-disable-next-line no-control-regex -- XML 1.0 (2.2) forbids them even escaped
  if (/[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]|\p{Surrogate}/u.test(text)) {
    throw new Error('a character that XML 1.0 does not allow');
  }
  return text.replace(/&([^;\s]*);?/g, (whole, name: string) => {
    if (name.startsWith('#x')) return String.fromCodePoint(Number.parseInt(name.slice(2), 16));
    if (name.startsWith('#')) return String.fromCodePoint(Number(name.slice(1)));
    const character = ENTITIES[name];
    if (character === undefined || !whole.endsWith(';')) throw new Error(`stray ${whole}`);
    return character;
  });
}
