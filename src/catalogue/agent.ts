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
  variants: z.array(line).optional().describe('Other names by which it occurs in the material'),
  birth: line.optional().describe('Birth or founding, as EDTF'),
  death: line.optional().describe('Death or end, as EDTF'),
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
