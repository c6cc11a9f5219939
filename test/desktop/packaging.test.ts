/** What the packaged program is: checked against the packager's own schema, and against what this repository has. */
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';

const root = resolve(import.meta.dirname, '../..');
const require = createRequire(import.meta.url);
const text = readFileSync(resolve(root, 'electron-builder.yml'), 'utf8');

/** The configuration's keys at the left margin and one step in; it has no deeper structure that matters here. */
function keysOf(section: string): readonly string[] {
  const [, body = ''] = new RegExp(`^${section}:\\n((?:[ #-].*\\n)*)`, 'm').exec(text) ?? [];
  return [...body.matchAll(/^ {2}(\w+):/gm)].map(([, key]) => key!);
}

test('knows every key that it uses', () => {
  const scheme = JSON.parse(readFileSync(require.resolve('app-builder-lib/scheme.json'), 'utf8')) as {
    properties: Record<string, unknown>;
    definitions: Record<string, { properties: Record<string, unknown> }>;
  };
  const top = [...text.matchAll(/^(\w+):/gm)].map(([, key]) => key!);
  expect(top.filter((key) => !(key in scheme.properties))).toEqual([]);
  for (const [section, definition] of [
    ['mac', 'MacConfiguration'],
    ['linux', 'LinuxConfiguration'],
    ['win', 'WindowsConfiguration'],
    ['nsis', 'NsisOptions'],
    ['electronFuses', 'FuseOptionsV1'],
  ] as const) {
    const known = scheme.definitions[definition]!.properties;
    expect(keysOf(section).filter((key) => !(key in known))).toEqual([]);
  }
});

// Which way each fuse is to stand: Electron's security tutorial, "Electron Fuses".
test.each([
  ['runAsNode', false],
  ['enableNodeOptionsEnvironmentVariable', false],
  ['enableNodeCliInspectArguments', false],
  ['enableEmbeddedAsarIntegrityValidation', true],
  ['onlyLoadAppFromAsar', true],
  ['grantFileProtocolExtraPrivileges', false],
])('sets the fuse %s to %s', (fuse, on) => expect(text).toMatch(new RegExp(`^ {2}${fuse}: ${on}$`, 'm')));

test('opens pattern files, has an icon, and begins with what the build makes', () => {
  expect(text).toContain('ext: turnchain');
  // PNG, ISO/IEC 15948 §11.2.2: width and height; packagers ask for 512 or more.
  const icon = readFileSync(resolve(root, 'resources/icons/icon.png'));
  expect([icon.readUInt32BE(16), icon.readUInt32BE(20)]).toEqual([1024, 1024]);
  const { main } = JSON.parse(readFileSync(resolve(root, 'package.json'), 'utf8')) as { main: string };
  expect(main).toBe('dist/desktop/main.mjs');
  expect(existsSync(resolve(root, 'app/desktop/main.ts'))).toBe(true);
});
