import type { Component } from './component.ts';

/** Whether a unit is restricted by its own conditions of access, whatever holds for the units above it. */
export const isRestricted = ({ accessConditions }: Pick<Component, 'accessConditions'>): boolean =>
  accessConditions?.restricted === true;
