import { z } from 'zod';
import { id, line, prose } from './text.ts';

/** What ISAAR(CPF) distinguishes: a person, a family, a corporate body (any organised group that acts under a name). */
export const agentType = z.enum(['person', 'family', 'corporateBody']);

/** One person, family or corporate body, described once and pointed to from wherever it occurs. */
export const agent = z.strictObject({
  id: id.describe('Short, unique among the people; what links point to'),
  type: agentType,
  name: line.describe('The name as people say it: Ada Quill'),
  authorizedForm: line.optional().describe('The form for headings: Quill, Ada, 1902-1988'),
  nameParts: z
    .array(z.strictObject({ type: z.enum(['surname', 'forename', 'other']), text: line }))
    .optional()
    .describe('The name taken apart, in the order of the heading'),
  variants: z.array(line).optional().describe('Other names by which it occurs in the material'),
  birth: line.optional().describe('Birth or founding, as EDTF'),
  death: line.optional().describe('Death or end, as EDTF'),
  places: z
    .array(z.strictObject({ name: line, role: z.enum(['birth', 'death', 'residence', 'location']) }))
    .optional(),
  occupations: z.array(line).optional(),
  relations: z
    .array(z.strictObject({ agent: id, as: line }))
    .optional()
    .describe('Other agents, and what they are to this one: mother, husband, employer'),
  history: prose.optional().describe('Biographical or administrative history of this agent'),
  source: line
    .optional()
    .describe('Code of the authority file the heading is taken from: lcnaf, viaf, local'),
  identifier: line.optional().describe('The identifier of the heading in that file, best as an address'),
});

/** How a component points to an agent; `role` is a MARC relator term such as photographer. */
export const agentLink = z.strictObject({
  agent: id,
  role: line.optional(),
});

export type AgentType = z.infer<typeof agentType>;
export type Agent = z.infer<typeof agent>;
export type AgentLink = z.infer<typeof agentLink>;
