import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Validation } from '../../src/xml/validation.ts';
import { SMALL_EAD3, said, smallEad3, validateSmall } from './small-file.ts';

const CANARY = 'the-canary-that-nobody-may-see';
let folder = '';
let canary = '';
/** A pipe that nobody writes to: whoever opens it for reading waits for ever, and the test with him. */
let pipe = '';
let server: Server;
let address = '';
let connections = 0;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'kinfonds-hostile-'));
  writeFileSync(join(folder, 'canary'), CANARY);
  canary = pathToFileURL(join(folder, 'canary')).href;
  if (process.platform !== 'win32') {
    execFileSync('mkfifo', [join(folder, 'pipe')]);
    pipe = pathToFileURL(join(folder, 'pipe')).href;
  }
  server = createServer((_, response) => response.end(CANARY));
  server.on('connection', () => {
    connections += 1;
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/canary`;
});
afterAll(() => {
  server.close();
  rmSync(folder, { recursive: true });
});

describe('what lies outside the file stays outside', () => {
  /** The three kinds of outside: a file, a pipe, an address. */
  const outside = () => [canary, pipe, address].filter((place) => place !== '');

  async function expectNothingRead(make: (place: string) => string): Promise<Validation[]> {
    const results: Validation[] = [];
    for (const place of outside()) {
      const result = await validateSmall(make(place));
      expect(JSON.stringify(result)).not.toContain(CANARY);
      results.push(result);
    }
    // A connection would be told of in the next turn of the event loop.
    await new Promise((next) => setTimeout(next, 20));
    expect(connections).toBe(0);
    return results;
  }

  const inside = (type: string, title = 'Letters') => smallEad3({ type, title });

  test('the file without any of it is valid', async () => {
    expect(await validateSmall(SMALL_EAD3)).toMatchObject({ valid: true, messages: [] });
  });

  test.each([
    [
      'a general entity',
      (place: string) => inside(`<!DOCTYPE ead [<!ENTITY x SYSTEM "${place}">]>`, 'a&x;b'),
    ],
    [
      'one with a public name',
      (place: string) => inside(`<!DOCTYPE ead [<!ENTITY x PUBLIC "-//x" "${place}">]>`, 'a&x;b'),
    ],
    ['a parameter entity', (place: string) => inside(`<!DOCTYPE ead [<!ENTITY % x SYSTEM "${place}"> %x;]>`)],
    [
      'an entity made by an entity',
      (place: string) =>
        inside(`<!DOCTYPE ead [<!ENTITY % y "<!ENTITY x SYSTEM '${place}'>"> %y;]>`, 'a&x;b'),
    ],
  ])('%s', async (_, make) => {
    for (const result of await expectNothingRead(make)) {
      expect(result.valid).toBe(false);
      expect(said(result)).toMatch(/stands for the content of another file.*No other file is read/s);
      expect(result.messages[0]?.line).toBe(2);
    }
  });

  test('an entity in an attribute', async () => {
    const make = (place: string) =>
      inside(`<!DOCTYPE ead [<!ENTITY x SYSTEM "${place}">]>`).replace('level="collection"', 'level="&x;"');
    for (const result of await expectNothingRead(make)) {
      expect(said(result)).toContain('stands for the content of another file');
    }
  });

  test('an outside document type is let lie, but not what it would have defined', async () => {
    for (const result of await expectNothingRead((place) => inside(`<!DOCTYPE ead SYSTEM "${place}">`))) {
      expect(result.valid).toBe(true);
    }
    for (const result of await expectNothingRead((place) =>
      inside(`<!DOCTYPE ead SYSTEM "${place}">`, 'a&nbsp;b'),
    )) {
      expect(result.valid).toBe(false);
      expect(said(result)).toContain('The entity &nbsp; is defined nowhere in this file.');
    }
  });

  test('an inclusion is an element like any other', async () => {
    const include = (place: string) =>
      `<xi:include xmlns:xi="http://www.w3.org/2001/XInclude" href="${place}" parse="text"/>`;
    for (const result of await expectNothingRead((place) =>
      SMALL_EAD3.replace('</did>', `${include(place)}</did>`),
    )) {
      expect(result.valid).toBe(false);
      expect(result.messages[0]?.path).toBe('/ead/archdesc/did/xi:include');
    }
  });

  test('a file cannot bring its own schema', async () => {
    const hint = (place: string) =>
      SMALL_EAD3.replace(
        '<ead ',
        `<ead xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xsi:schemaLocation="http://ead3.archivists.org/schema/ ${place} urn:x ${place}" `,
      );
    for (const result of await expectNothingRead(hint)) expect(result.valid).toBe(true);
    const foreign = (place: string) => hint(place).replace('</did>', '<x xmlns="urn:x"/></did>');
    for (const result of await expectNothingRead(foreign)) expect(result.valid).toBe(false);
  });

  test('a style sheet is not looked at', async () => {
    const styled = (place: string) => inside(`<?xml-stylesheet type="text/xsl" href="${place}"?>`);
    for (const result of await expectNothingRead(styled)) expect(result.valid).toBe(true);
  });
});

test('the canary itself can be read, so that these tests could fail', () => {
  expect(readFileSync(new URL(canary), 'utf8')).toBe(CANARY);
});
