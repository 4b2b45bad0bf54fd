import type { Component } from '../../catalogue/component.ts';

/** A value of an element: a text, or a text by an encoding scheme of DCMI terms (W3CDTF, DCMIType). */
export type Value = string | { readonly text: string; readonly scheme: string };

/** What a value may need to know beside the unit. */
export interface About {
  /** Whether the unit, or one that it lies in, is restricted. */
  isClosed: boolean;
  /** Whether the unit is asked for what holds for a part of it, which says nothing of its own. */
  forPart: boolean;
  /** The unit it lies in; undefined for the collection. */
  parent: Component | undefined;
  recordId: string;
  /** The name of an agent in the form for headings; undefined for no known agent. */
  nameOf: (agentId: string) => string | undefined;
}

/** By what a record is known: the reference code, else the id that the unit has in the finding aid. */
export const identifierOf = ({ referenceCode, id }: Component): string => referenceCode ?? id;
