import type { AgentLink } from '../../catalogue/agent.ts';
import type { Component, Repository } from '../../catalogue/component.ts';
import { normalDate } from '../../dates/index.ts';
import { sayExtent } from '../../housing/extent.ts';
import type { Context } from './context.ts';
import { agentNode } from './json-ld-agents.ts';
import { isSafeAddress } from './link.ts';
import { legalText } from './markup.ts';
import { sayShelved, shelved } from './place.ts';
import { termsOf } from './register.ts';
import type { Unit } from './unit.ts';

// Terms of schema.org, from memory: ArchiveComponent, ArchiveOrganization, holdingArchive and itemLocation come from
// its extension for archives, everything else from CreativeWork, Person and Organization.

/**
 * The description for machines, in pieces of JSON. A tag within it could end the script it stands in, so no `<` does
 * (HTML Standard, 4.12.1.3): `\u003C` means the same in JSON.
 */
export function* jsonLd(context: Context): Generator<string> {
  const { aid, top } = context;
  const keeper = top.component.repository;
  yield '{"@context":"https://schema.org","@graph":[';
  yield json({ ...unitNode(top, context), ...(keeper !== undefined && { holdingArchive: archive(keeper) }) });
  for (const agent of aid.people) yield `,\n${json(agentNode(agent, context))}`;
  yield* below(top, context);
  yield ']}';
}

const json = (node: object): string => legalText(JSON.stringify(node)).replaceAll('<', '\\u003C');

function* below(unit: Unit, context: Context): Generator<string> {
  for (const child of unit.children) {
    yield `,\n${json({ ...unitNode(child, context), isPartOf: reference(unit) })}`;
    yield* below(child, context);
  }
}

const reference = ({ component }: Unit) => ({ '@id': `#${component.id}` });

function unitNode(unit: Unit, context: Context) {
  const { component, children, depth } = unit;
  const { referenceCode, title, creators, people, languages, accessConditions, scopeAndContent } = component;
  const terms = termsOf(component);
  const named = (type: string) => terms.filter((term) => term.type === type).map(({ term }) => term);
  return {
    '@id': `#${component.id}`,
    '@type': children.length > 0 || depth === 0 ? ['ArchiveComponent', 'Collection'] : 'ArchiveComponent',
    name: title,
    ...some('identifier', referenceCode),
    ...some(
      'temporalCoverage',
      list(component.dates.filter(({ type }) => type === 'inclusive').map(coverage)),
    ),
    ...some(
      'itemLocation',
      unit.place.length === 0 ? undefined : shelved(unit.place).map(sayShelved).join('; '),
    ),
    ...some('creator', links(creators, context)),
    ...some('mentions', links(people, context)),
    ...some('genre', list(named('genre'))),
    ...some('contentLocation', list(named('place'))),
    ...some('keywords', list(named('subject'))),
    ...some('inLanguage', list(languages.map(({ name }) => name))),
    ...some('materialExtent', list(component.extents.map((extent) => sayExtent([extent])))),
    ...some('abstract', component.abstract),
    ...some('description', scopeAndContent),
    ...some('conditionsOfAccess', accessConditions?.statement),
    ...some('usageInfo', component.useConditions),
    ...some('creditText', component.preferredCitation),
    ...some('associatedMedia', unit.isClosed ? undefined : list(copies(component, context))),
  };
}

/** A date as ISO 8601 has it where it can be said so, else in words: what is known of time must not be lost. */
const coverage = ({ edtf, expression }: Component['dates'][number]): string =>
  (edtf === undefined ? undefined : normalDate(edtf)) ?? expression;

const links = (linked: readonly AgentLink[], { register }: Context) =>
  list(linked.flatMap(({ agent }) => (register.agents.has(agent) ? [{ '@id': `#who:${agent}` }] : [])));

const copies = ({ digitalCopies }: Component, { addressOf }: Context) =>
  digitalCopies.flatMap(({ file, mediaType }) => {
    const contentUrl = addressOf(file);
    return isSafeAddress(contentUrl)
      ? [{ '@type': 'MediaObject', contentUrl, ...some('encodingFormat', mediaType) }]
      : [];
  });

function archive({ name, address, isil, country }: Repository) {
  const street = address?.join(', ');
  return {
    '@type': 'ArchiveOrganization',
    name,
    ...some('identifier', isil),
    ...some(
      'address',
      street === undefined && country === undefined
        ? undefined
        : { '@type': 'PostalAddress', ...some('streetAddress', street), ...some('addressCountry', country) },
    ),
  };
}

const some = <Value>(key: string, value: Value | undefined): Record<string, Value> =>
  value === undefined ? {} : { [key]: value };

/** One value by itself, several as a list, none as nothing. */
const list = <Value>(values: readonly Value[]): Value | readonly Value[] | undefined =>
  values.length > 1 ? values : values[0];
