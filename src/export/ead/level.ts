import type { Component } from '../../catalogue/component.ts';

/** The name of a level for which EAD has none. The Schematron rules of EAD3: a level "otherlevel" must be named. */
export function otherLevelOf({ level, otherLevel }: Component): string | undefined {
  return level === 'otherlevel' ? (otherLevel ?? 'unnamed level') : otherLevel;
}
