import {
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  parseDocument,
  visit,
  type YAMLError,
} from 'yaml';
import type { Finding, Place } from '../catalogue/finding.ts';
import { YAML_ERRORS } from './yaml-errors.ts';

/** A YAML file as plain data, and the way back from an entry to its line. */
export interface YamlSource {
  data: unknown;
  /** Line of the entry at a path, or of the nearest entry around it. */
  lineOf(path: readonly PropertyKey[]): number | undefined;
}

/** The place of the entry at a path. */
export function placeIn(source: YamlSource, file: string, path: readonly PropertyKey[]): Place {
  const line = source.lineOf(path);
  return line === undefined ? { file } : { file, line };
}

// Aliases are of no use in a file this small; a few do no harm, many grow beyond all bounds.
const MOST_ALIASES = 20;

/**
 * Reads YAML 1.2 with every error that it holds.
 * @param file the name for messages
 */
export function readYaml(text: string, file: string): { source?: YamlSource; findings: Finding[] } {
  try {
    return read(text, file);
  } catch (error) {
    // The parser and the walk over its result are recursive.
    if (!(error instanceof RangeError)) throw error;
    const found = 'The entries are nested more deeply than can be read.';
    return { findings: [{ rule: 'yaml.depth', weight: 'must', place: { file }, found }] };
  }
}

function read(text: string, file: string): { source?: YamlSource; findings: Finding[] } {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false, uniqueKeys: true });
  const place = (offset: number): Place => {
    const { line, col } = lines.linePos(offset);
    return { file, line, column: String(col) };
  };
  const findings = [...document.errors, ...document.warnings].map((error) =>
    sayYamlError(error, text, document, place),
  );
  if (findings.length > 0) return { findings: firstOfEachLine(findings) };

  const lost = unresolvedAliases(document, place);
  if (lost.length > 0) return { findings: lost };
  try {
    const data: unknown = withoutEmpty(document.toJS({ maxAliasCount: MOST_ALIASES }));
    return { source: { data, lineOf: (path) => lineOf(document, lines, path) }, findings: [] };
  } catch (error) {
    if (!(error instanceof ReferenceError)) throw error;
    const found = 'The file repeats parts of itself (with & and *) more often than any collection needs.';
    const advice = 'Write each entry out where it belongs.';
    return { findings: [{ rule: 'yaml.aliases', weight: 'must', place: { file }, found, advice }] };
  }
}

function sayYamlError(
  { code, message, pos }: YAMLError,
  text: string,
  document: Document,
  place: (at: number) => Place,
): Finding {
  const at = message.startsWith('Missing closing') ? openingQuote(document, pos[0]) : pos[0];
  const known = YAML_ERRORS.find((error) => error.code === code && message.startsWith(error.begins ?? ''));
  const plain = known ?? {
    found: `The line cannot be read as YAML (${message.replace(/\s+/g, ' ').replace(/\.$/, '')}).`,
    advice: 'If it is a text with special signs in it, put the whole text between quotation marks.',
  };
  const key = code === 'DUPLICATE_KEY' ? /^[^:\s][^:\n]*/.exec(text.slice(pos[0]))?.[0] : undefined;
  const found = key === undefined ? plain.found : `The name “${key}” stands twice.`;
  return { rule: 'yaml.syntax', weight: 'must', place: place(at), found, advice: plain.advice };
}

/** Where the text began that the end of the file cuts off. */
function openingQuote(document: Document, end: number): number {
  let at = end;
  visit(document, {
    Scalar(_, { type, range }) {
      if (type?.startsWith('QUOTE') && range && range[1] >= end - 1) at = Math.min(at, range[0]);
    },
  });
  return at;
}

function firstOfEachLine(findings: readonly Finding[]): Finding[] {
  const lines = new Map<number | undefined, Finding>();
  for (const finding of findings) if (!lines.has(finding.place.line)) lines.set(finding.place.line, finding);
  return [...lines.values()].sort((one, other) => (one.place.line ?? 0) - (other.place.line ?? 0));
}

function unresolvedAliases(document: Document, place: (at: number) => Place): Finding[] {
  const findings: Finding[] = [];
  visit(document, {
    Alias(_, alias, around) {
      const meant = alias.resolve(document);
      if (meant !== undefined && !around.includes(meant)) return;
      const found = `The text begins with an asterisk, so “*${alias.source}” was taken for a part of the file to repeat here.`;
      const advice = 'Put the whole text between quotation marks.';
      findings.push({
        rule: 'yaml.aliases',
        weight: 'must',
        place: place(alias.range?.[0] ?? 0),
        found,
        advice,
      });
    },
  });
  return findings;
}

/** An entry with nothing behind its name counts as not written. */
function withoutEmpty(data: unknown): unknown {
  if (Array.isArray(data)) return data.map(withoutEmpty);
  if (typeof data !== 'object' || data === null) return data;
  const filled = Object.entries(data).filter(([, value]) => value !== null && value !== undefined);
  return Object.fromEntries(filled.map(([key, value]) => [key, withoutEmpty(value)]));
}

function lineOf(document: Document, lines: LineCounter, path: readonly PropertyKey[]): number | undefined {
  let node: unknown = document.contents;
  let at = 0;
  for (const part of path) {
    if (isAlias(node)) node = node.resolve(document);
    if (isMap(node)) {
      const pair = node.items.find(({ key }) => isScalar(key) && String(key.value) === String(part));
      if (pair === undefined) break;
      at = (pair.key as Node).range?.[0] ?? at;
      node = pair.value;
    } else if (isSeq(node)) {
      node = node.items[Number(part)];
      at = (node as Node | undefined)?.range?.[0] ?? at;
    } else break;
  }
  return lines.linePos(at).line;
}
