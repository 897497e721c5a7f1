/**
 * The manifest, checked offline in every way that can be: Microsoft's own validation posts it to a
 * service (npm run validate). Orders and lengths: learn.microsoft.com, "Office add-ins manifest"
 * and "Resources element", from memory [M].
 */
import { describe, expect, test } from '@jest/globals';
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

import { DEVELOPMENT_ORIGIN, readAddresses } from '../../scripts/addresses.mjs';
import { makePages } from '../../scripts/make-pages.mjs';
import { parseXml, type Element } from '../hosts/xml.ts';
import { root } from './root.ts';

const text = readFileSync(join(root, 'manifest.xml'), 'utf8');
const app = parseXml(text);

const children = (element: Element): Element[] =>
  element.children.filter((child): child is Element => typeof child !== 'string');
const all = (element: Element): Element[] => [element, ...children(element).flatMap(all)];
const named = (name: string): Element[] => all(app).filter((element) => element.name === name);
const names = (element: Element | undefined): string[] =>
  element === undefined ? [] : children(element).map((child) => child.name);
const value = (element: Element): string => element.attributes['DefaultValue'] ?? '';
const words = (element: Element | undefined): string => {
  const [first] = element?.children ?? [];
  return typeof first === 'string' ? first : '';
};

const resources = named('Resources')[0]!;
const strings = all(resources).filter(({ attributes }) => attributes['id'] !== undefined);
const byId = new Map(strings.map((element) => [element.attributes['id']!, element]));
const resids = all(app).flatMap(({ attributes }) => attributes['resid'] ?? []);

describe('The manifest', () => {
  test('has its elements in the order that the schema asks for', () => {
    expect(names(app)).toEqual([
      'Id',
      'Version',
      'ProviderName',
      'DefaultLocale',
      'DisplayName',
      'Description',
      'IconUrl',
      'HighResolutionIconUrl',
      'SupportUrl',
      'AppDomains',
      'Hosts',
      'Requirements',
      'DefaultSettings',
      'Permissions',
      'VersionOverrides',
    ]);
    const [overrides] = named('VersionOverrides');
    expect(names(overrides)).toEqual(['Hosts', 'Resources']);
    const [, host] = named('Host');
    expect(names(host)).toEqual(['Runtimes', 'AllFormFactors', 'DesktopFormFactor']);
    const [functions, ribbon] = named('ExtensionPoint');
    expect(names(functions)).toEqual(['Script', 'Page', 'Metadata', 'Namespace']);
    expect(names(named('DesktopFormFactor')[0])).toEqual([
      'GetStarted',
      'FunctionFile',
      'ExtensionPoint',
    ]);
    expect(names(named('GetStarted')[0])).toEqual(['Title', 'Description', 'LearnMoreUrl']);
    expect(names(ribbon)).toEqual(['OfficeTab']);
    expect(names(named('Group')[0])).toEqual(['Label', 'Icon', 'Control']);
    expect(names(named('Control')[0])).toEqual(['Label', 'Supertip', 'Icon', 'Action']);
    // Under a long runtime no action has a TaskpaneId (Microsoft, Configure your add-in to use a shared
    // runtime): with one, the pane would be another than the one that the functions run in [P].
    expect(named('Runtime').map((one) => one.attributes['lifetime'])).toEqual(['long']);
    expect(named('Action').map(names)).toEqual([['SourceLocation']]);
    expect(named('TaskpaneId')).toEqual([]);
    expect(names(resources)).toEqual(['bt:Images', 'bt:Urls', 'bt:ShortStrings', 'bt:LongStrings']);
  });

  test('is read by the official tools as what it is', () => {
    // In a process of its own: a package below it can't be loaded in this one.
    const script =
      "import { OfficeAddinManifest as m } from 'office-addin-manifest';" +
      "console.log(JSON.stringify(await m.readManifestFile('manifest.xml')));";
    const options = { cwd: root, encoding: 'utf8' } as const;
    const said = execFileSync(process.execPath, ['--input-type=module', '-e', script], options);
    expect(JSON.parse(said)).toMatchObject({
      id: '6f0c3b52-8d1a-4f6e-9a37-2c5e41b7d9f8',
      officeAppType: 'TaskPaneApp',
      hosts: ['Workbook'],
      permissions: 'ReadWriteDocument',
    });
  });

  test('has a GUID of its own and the version of the package, to which Excel keys its cache', () => {
    expect(words(named('Id')[0])).toMatch(
      /^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/u,
    );
    const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
      version: string;
    };
    expect(words(named('Version')[0])).toBe(`${version}.0`);
  });

  test('defines every resource that is used, uses every one that is defined, none twice', () => {
    expect(new Set(resids)).toEqual(new Set(byId.keys()));
    expect(byId.size).toBe(strings.length);
    for (const id of byId.keys()) expect(id.length).toBeLessThanOrEqual(32);
  });

  test('keeps its texts within the lengths that are allowed, and none is blank', () => {
    const lengths = (list: string): number[] =>
      named(list)
        .flatMap(children)
        .map((element) => value(element).length);
    expect(Math.max(...lengths('bt:ShortStrings'))).toBeLessThanOrEqual(125);
    expect(Math.max(...lengths('bt:LongStrings'))).toBeLessThanOrEqual(250);
    expect(value(named('Description')[0]!).length).toBeLessThanOrEqual(250);
    expect(Math.min(...strings.map((element) => value(element).length))).toBeGreaterThan(0);
  });

  test('shares one runtime between the pane, the functions and the ribbon', () => {
    const [runtime] = named('Runtime');
    const resid = runtime?.attributes['resid'];
    expect(runtime?.attributes['lifetime']).toBe('long');
    expect(names(named('Runtimes')[0])).toEqual(['Runtime']);
    const pages = ['Page', 'Action'].map((name) => children(named(name)[0]!).at(-1)!);
    const shared = [...pages, named('FunctionFile')[0]!].map(
      ({ attributes }) => attributes['resid'],
    );
    expect(shared).toEqual([resid, resid, resid]);
  });

  test('asks for a shared runtime, functions and Excel as old as they may be, and no more', () => {
    const sets = named('Set').map(({ attributes }) => [
      attributes['Name'],
      attributes['MinVersion'],
    ]);
    expect(sets).toEqual([
      ['SharedRuntime', '1.1'],
      ['CustomFunctionsRuntime', '1.2'],
      ['ExcelApi', '1.9'],
    ]);
  });

  test('puts a button with icons of its own on the Home tab', () => {
    expect(named('OfficeTab')[0]?.attributes['id']).toBe('TabHome');
    expect(named('Control')[0]?.attributes['xsi:type']).toBe('Button');
    for (const icon of named('Icon')) {
      const sizes = children(icon).map(({ attributes }) => attributes['size']);
      expect(sizes).toEqual(['16', '32', '64', '80']);
      for (const { attributes } of children(icon)) {
        expect(value(byId.get(attributes['resid']!)!)).toBe(
          `${DEVELOPMENT_ORIGIN}/icon-${attributes['size']}.png`,
        );
      }
    }
  });

  test.each([16, 32, 64, 80, 128])('has an icon of %d by as many pixels', (size) => {
    // PNG (ISO/IEC 15948) 11.2.2: width and height stand in bytes 16 to 23 of the file.
    const png = readFileSync(join(root, 'assets', `icon-${size}.png`));
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([size, size]);
  });
});

describe('The manifest of a build', () => {
  const addresses = (xml: string): string[] =>
    [...xml.matchAll(/(?:DefaultValue="|<AppDomain>)(\w+:\/\/[^"<]+)/gu)].map((match) => match[1]!);

  test('names https addresses alone, each of a file that the build makes', async () => {
    const pages = await makePages(readAddresses());
    const made = new Set([...Object.keys(pages), 'main.js', '']);
    for (const address of addresses(pages['manifest.xml'])) {
      const { origin, pathname } = new URL(address);
      const name = pathname.slice(1);
      const there = made.has(name) || existsSync(join(root, 'assets', name));
      expect({ address, origin, there }).toEqual({
        address,
        origin: DEVELOPMENT_ORIGIN,
        there: true,
      });
    }
  });

  test('has the names of the functions under its namespace', async () => {
    const pages = await makePages(readAddresses());
    const { functions } = JSON.parse(pages['functions.json']) as { functions: { id: string }[] };
    const namespace = value(byId.get('Functions.Namespace')!);
    for (const { id } of functions) {
      expect(pages['functions.html']).toContain(`${namespace}.${id}`);
    }
    expect(functions.length).toBeGreaterThan(10);
  });

  test('is rewritten in every address for another origin and another place of support', async () => {
    const given = readAddresses({
      origin: 'https://trim.example/',
      support: 'https://help.example/coves',
    });
    const pages = await makePages(given);
    const found = addresses(pages['manifest.xml']);
    expect(found.filter((one) => !one.startsWith('https://trim.example'))).toEqual([
      'https://help.example/coves',
    ]);
    expect(found).toHaveLength(addresses(text).length);
    // What a message says of such an address is no address.
    for (const [name, page] of Object.entries(pages)) {
      if (name !== 'help.html')
        expect([name, String(page).includes('localhost')]).toEqual([name, false]);
    }
    expect(pages['functions.html']).toContain('https://help.example/coves');
  });

  test('is refused for an origin that no add-in is served from', () => {
    expect(() => readAddresses({ origin: 'http://trim.example' })).toThrow(/begins with https/u);
    expect(() => readAddresses({ origin: true })).toThrow(/origin=true/u);
    expect(() => readAddresses({ support: 'shop' })).toThrow(/support=shop/u);
  });
});
