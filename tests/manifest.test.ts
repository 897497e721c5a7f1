import { describe, expect, test } from '@jest/globals';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..');
const manifest = readFileSync(join(root, 'manifest.xml'), 'utf8');

describe('the add-in manifest', () => {
  test('has the elements of a task pane in the order that its schema asks for', () => {
    const top = [...manifest.matchAll(/^ {2}<(\w+)/gmu)].map((match) => match[1]);
    expect(top.filter((name) => name !== 'xmlns' && name !== 'xsi')).toEqual([
      'Id',
      'Version',
      'ProviderName',
      'DefaultLocale',
      'DisplayName',
      'Description',
      'IconUrl',
      'HighResolutionIconUrl',
      'SupportUrl',
      'Hosts',
      'DefaultSettings',
      'Permissions',
    ]);
  });

  test('has a GUID and a version of four numbers', () => {
    expect(manifest).toMatch(/<Id>[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}<\/Id>/u);
    expect(manifest).toMatch(/<Version>\d+\.\d+\.\d+\.\d+<\/Version>/u);
  });

  test('names only https addresses whose files the build makes', () => {
    const addresses = [...manifest.matchAll(/DefaultValue="(\w+:\/\/[^"]+)"/gu)].map(
      (match) => match[1]!,
    );
    expect(addresses.length).toBeGreaterThan(3);
    for (const address of addresses) {
      const { protocol, pathname } = new URL(address);
      expect(protocol).toBe('https:');
      const made = [join(root, 'assets', pathname), join(root, 'src', 'pane', pathname)];
      expect({ address, made: made.some((file) => existsSync(file)) }).toEqual({
        address,
        made: true,
      });
    }
  });
});
