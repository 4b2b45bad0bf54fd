import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type DatePart,
  normalDate,
  type StructuredDate,
  structuredDate,
  w3cDate,
} from '../../src/dates/index.ts';
import { date } from '../dates/arbitrary.ts';
import { describeWithSchemas } from '../support/outside.ts';

function partsOf(structured: StructuredDate): DatePart[] {
  const inRange = ({ from, to }: { from?: DatePart; to?: DatePart }) =>
    [from, to].filter((part) => part !== undefined);
  if (structured.kind === 'single') return [structured.date];
  if (structured.kind === 'range') return inRange(structured);
  return structured.members.flatMap((member) => ('from' in member ? inRange(member) : [member]));
}

const attributesOf = ({ standard, notBefore, notAfter }: DatePart) =>
  [standard, notBefore, notAfter].filter((value) => value !== undefined);

/** Runs a check over the attributes of many dates, and makes sure that there were many. */
function overMany(check: (edtf: string) => number): void {
  let checked = 0;
  fc.assert(
    fc.property(date, (edtf) => {
      checked += check(edtf);
    }),
    { numRuns: 2000 },
  );
  expect(checked).toBeGreaterThan(500);
}

describeWithSchemas('dates in EAD attributes, by the published rules', (schemas) => {
  it('EAD 2002: @normal matches the pattern of the schema', () => {
    const schema = readFileSync(join(schemas, 'ead2002', 'ead.xsd'), 'utf8');
    const [, pattern] =
      /<xs:attribute name="normal">[\s\S]*?<xs:pattern\s+value="([^"]+)"/.exec(schema) ?? [];
    if (pattern === undefined) throw new Error('The schema has no pattern for @normal.');
    const published = new RegExp(`^(?:${pattern})$`);
    expect(published.test('1962-05-14/1963')).toBe(true);
    expect(published.test('1962~')).toBe(false);
    overMany((edtf) => {
      const normal = normalDate(edtf);
      if (normal !== undefined) expect(normal, edtf).toMatch(published);
      return normal === undefined ? 0 : 1;
    });
  });

  it('EAD3: @standarddate, @notbefore and @notafter match the pattern of the Schematron', () => {
    const rules = readFileSync(join(schemas, 'ead3', 'schematron', 'ead3.sch'), 'utf8');
    const variable = (name: string) => {
      const [, value] = new RegExp(`<let name="${name}"\\s+value="'([^"]*)'"`).exec(rules) ?? [];
      if (value === undefined) throw new Error(`The Schematron has no ${name}.`);
      return value;
    };
    const [year, month, day] = [variable('isoYYYY'), variable('isoMM'), variable('isoDD')];
    const published = new RegExp(`^(?:${year}|${year}${month}|${year}${month}${day})$`);
    expect(published.test('1962-05-14')).toBe(true);
    expect(published.test('196X')).toBe(false);
    overMany((edtf) => {
      const values = partsOf(structuredDate(edtf) ?? { kind: 'set', members: [] }).flatMap(attributesOf);
      for (const value of values) expect(value, edtf).toMatch(published);
      return values.length;
    });
  });
});

// CHECKS: YYYY, YYYY-MM, YYYY-MM-DD, years 0000 to 2999. W3CDTF: W3C Note of 1997-09-15.
describe('dates in attributes', () => {
  const standard = /^[0-2]\d{3}(?:-(?:0[1-9]|1[0-2])(?:-(?:0[1-9]|[12]\d|3[01]))?)?$/;

  it('hold nothing of EDTF beyond level 0', () => {
    overMany((edtf) => {
      const structured = structuredDate(edtf);
      const values = structured ? partsOf(structured).flatMap(attributesOf) : [];
      for (const value of values) expect(value, edtf).toMatch(standard);
      const w3c = w3cDate(edtf);
      if (w3c !== undefined) expect(w3c, edtf).toMatch(standard);
      return values.length;
    });
  });

  it('bear a certainty that is one NMTOKEN', () => {
    expect(structuredDate('1962~')?.certainty).toBe('approximate');
    expect(structuredDate('1962?')?.certainty).toBe('uncertain');
    expect(structuredDate('1962%')?.certainty).toBe('approximate-uncertain');
    expect(structuredDate('1962~/1965?')?.certainty).toBe('approximate-uncertain');
    expect(structuredDate('1962')?.certainty).toBeUndefined();
  });

  // A set of one member is no dateset: the schema asks for two at least.
  it('are a set only of two or more', () => {
    overMany((edtf) => {
      const structured = structuredDate(edtf);
      if (structured?.kind === 'set') expect(structured.members.length).toBeGreaterThan(1);
      if (structured?.kind === 'range') expect(structured.from ?? structured.to).toBeDefined();
      return structured ? 1 : 0;
    });
  });

  it.each(['-0044', 'Y170000002', '3000', '../..', 'no date'])('cannot hold %s', (text) => {
    expect(structuredDate(text)).toBeUndefined();
    expect(normalDate(text)).toBeUndefined();
  });

  it.each([
    ['1962', '1962'],
    ['1962-05-14', '1962-05-14'],
    ['1975-03/1975-08', '1975-03/1975-08'],
    ['189X', '1890/1899'],
    ['1852-21', '1852-03/1852-05'],
    ['[1892,1893]', '1892/1893'],
    ['{1827,1952..1978}', '1827/1978'],
    ['1870~/1879~', '1870/1879'],
    ['1906-03-17/1907', '1906-03-17/1907'],
    ['1962/..', undefined],
    ['[..1866]', undefined],
  ])('@normal of %s is %s', (edtf, normal) => {
    expect(normalDate(edtf)).toBe(normal);
  });

  it('take a date apart', () => {
    expect(structuredDate('189X')).toEqual({
      kind: 'single',
      date: { expression: '1890s', notBefore: '1890', notAfter: '1899' },
    });
    expect(structuredDate('1975-03/1975-08')).toEqual({
      kind: 'range',
      from: { expression: '1975 March', standard: '1975-03' },
      to: { expression: '1975 August', standard: '1975-08' },
    });
    expect(structuredDate('1962/..')).toEqual({
      kind: 'range',
      from: { expression: '1962', standard: '1962' },
    });
    expect(structuredDate('[..1866]')).toEqual({
      kind: 'single',
      date: { expression: 'before 1867', notAfter: '1866' },
    });
    expect(structuredDate('{1827,1952..1978}')).toEqual({
      kind: 'set',
      members: [
        { expression: '1827', standard: '1827' },
        { from: { expression: '1952', standard: '1952' }, to: { expression: '1978', standard: '1978' } },
      ],
    });
  });

  it.each([
    ['1962-05-14', '1962-05-14'],
    ['1962', '1962'],
    ['1985-04-12T23:20:30', '1985-04-12'],
    ['1985-04-12T23:20:30+05', '1985-04-12'],
    ['1962~', undefined],
    ['196X', undefined],
    ['1962-22', undefined],
    ['1962/1963', undefined],
  ])('W3CDTF of %s is %s', (edtf, w3c) => {
    expect(w3cDate(edtf)).toBe(w3c);
  });
});
