import fc from 'fast-check';
import type { Agent } from '../../src/catalogue/agent.ts';
import { compact, maybe } from './arbitrary-component.ts';
import { edtfDate, plainDate } from './arbitrary-dates.ts';
import { nastyProse, nastyText } from './hostile-text.ts';

const agentId = (index: number) => `agent-${index + 1}`;

/** What the model lets in as the day of a birth or death: a plain date mostly, all of EDTF, and what is none. */
const dateOfLife = fc.oneof(
  { weight: 4, arbitrary: plainDate },
  { weight: 3, arbitrary: edtfDate },
  { weight: 1, arbitrary: nastyText },
);

const namePart = fc.record({
  type: fc.constantFrom(...(['surname', 'forename', 'other'] as const)),
  text: nastyText,
});

const place = fc.record({
  name: nastyText,
  role: fc.constantFrom(...(['birth', 'death', 'residence', 'location'] as const)),
});

/** An agent before it has its id: to whom it is related is told by position. */
const draft = fc
  .record({
    type: fc.constantFrom('person' as const, 'family' as const, 'corporateBody' as const),
    name: nastyText,
    authorizedForm: maybe(nastyText),
    nameParts: maybe(fc.array(namePart, { maxLength: 3 })),
    // Whether the heading is made from the parts of the name, as the program itself makes it.
    made: fc.constantFrom('', ', 1902-1988', ', approximately 1878-', ', of the ferry'),
    variants: maybe(fc.array(nastyText, { maxLength: 2 })),
    birth: maybe(dateOfLife),
    death: maybe(dateOfLife),
    places: maybe(fc.array(place, { maxLength: 3 })),
    occupations: maybe(fc.array(nastyText, { maxLength: 2 })),
    relations: maybe(fc.array(fc.record({ to: fc.nat({ max: 3 }), as: nastyText }), { maxLength: 3 })),
    history: maybe(nastyProse),
    source: maybe(fc.oneof(fc.constantFrom('lcnaf', 'viaf', 'local'), nastyText)),
    identifier: maybe(
      fc.oneof(
        fc.constantFrom('https://example.org/n79?a=1&b=2', 'https://example.org/%zz|{æ}', 'http://['),
        nastyText,
      ),
    ),
  })
  .map(({ made, ...agent }) => {
    if (made === '' || !agent.nameParts?.length) return compact(agent);
    return compact({ ...agent, authorizedForm: agent.nameParts.map(({ text }) => text).join(', ') + made });
  });

/** People, families and corporate bodies; relations point to those that are there, itself included. */
export const agents: fc.Arbitrary<Agent[]> = fc.array(draft, { maxLength: 4 }).map((list) =>
  list.map(({ relations, ...agent }, index) => ({
    id: agentId(index),
    ...agent,
    ...(relations && {
      relations: relations.map(({ to, as }) => ({ agent: agentId(to % list.length), as })),
    }),
  })),
);
