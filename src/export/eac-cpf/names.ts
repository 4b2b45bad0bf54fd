import type { Agent } from '../../catalogue/agent.ts';
import { element, type XmlElement } from '../../xml/element.ts';

interface Part {
  localType?: string | undefined;
  text: string;
}

/**
 * The names of an agent: the authorized form (ISAAR(CPF) 5.1.2) first, then every other by which it is known (5.1.5).
 * None is written twice.
 */
export function nameEntries({ name, authorizedForm, nameParts, variants, source }: Agent): XmlElement[] {
  const heading = authorizedForm ?? name;
  const named: Part[] = (nameParts ?? []).map(({ type, text }) => ({
    localType: type === 'other' ? undefined : type,
    text,
  }));
  const others: Part[][] = [named, [{ text: name }], ...(variants ?? []).map((text) => [{ text }])];
  const written = new Set([heading]);
  const isNew = (parts: readonly Part[]) => {
    const text = whole(parts);
    const known = text === '' || written.has(text);
    written.add(text);
    return !known;
  };
  const taken = takenApart(heading, named);
  // Where the heading itself is taken apart, its parts need not stand again by themselves.
  if (taken !== undefined) written.add(whole(named));
  return [
    nameEntry('authorized', taken ?? [{ text: heading }], source),
    ...others.filter(isNew).map((parts) => nameEntry('alternative', parts)),
  ];
}

const whole = (parts: readonly Part[]) => parts.map(({ text }) => text).join(', ');

/** A heading as its parts: those of the name, then what tells namesakes apart, mostly their years (RDA 9.3). */
function takenApart(heading: string, named: readonly Part[]): Part[] | undefined {
  const start = whole(named);
  if (start === '' || !`${heading}, `.startsWith(`${start}, `)) return undefined;
  const rest = heading.slice(start.length + 2);
  if (rest.trim() === '') return heading === start ? [...named] : undefined;
  return [...named, { localType: /^[^,]*\d{4}[^,]*$/.test(rest) ? 'dates' : undefined, text: rest }];
}

const nameEntry = (status: string, parts: readonly Part[], vocabularySource?: string) =>
  element(
    'nameEntry',
    { status, vocabularySource },
    parts.map(({ localType, text }) => element('part', { localType }, text)),
  );
