import { expect, test } from 'vitest';
import { CatalogueError } from '../../src/catalogue/finding.ts';
import { findingAidToJson } from '../../src/catalogue/finding-aid-file.ts';
import { readFindingAid } from '../../src/compare/index.ts';
import { aid, unit } from './finding-aids.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

function refusal(text: string): string {
  try {
    readFindingAid(bytes(text), 'some file');
  } catch (error) {
    if (error instanceof CatalogueError) return error.message;
    throw error;
  }
  return 'read';
}

test('a finding-aid.json, with a byte order mark or without', () => {
  const one = aid([unit('u', 'Letter')]);
  const json = [...findingAidToJson(one)].join('');
  expect(readFindingAid(bytes(json), 'x')).toEqual(one);
  expect(readFindingAid(bytes(`\uFEFF${json}`), 'x')).toEqual(one);
});

test('what is none is refused in words', () => {
  expect(refusal('title,date\r\nLetter,1911\r\n')).toMatch(
    /some file: This is no finding aid .* finding-aid\.json/,
  );
  expect(refusal('')).toMatch(/no finding aid/);
  expect(refusal('{"format": "kinfonds finding aid"')).toMatch(/not whole JSON/);
  expect(refusal('PK\u0003\u0004')).toMatch(/workbook/);
});
