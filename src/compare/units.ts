import type { Component } from '../catalogue/component.ts';
import type { UnitName } from './model.ts';

/** A unit of description and where it stands. */
export interface Unit {
  component: Component;
  parent?: Unit;
  children: readonly Unit[];
  /** Its place among the units of its parent, from 0. */
  place: number;
  /** What a reader sees of it at a glance. */
  look: string;
}

/** The collection and every unit below it, each before what lies below it, in the order of the finding aid. */
export function unitsOf(collection: Component): [top: Unit, ...below: Unit[]] {
  const top: Unit = { component: collection, children: [], place: 0, look: lookOf(collection) };
  const units: [Unit, ...Unit[]] = [top];
  // By a stack of our own: some programs make chains deeper than calls may go.
  const open: Unit[] = [top];
  for (let unit = open.pop(); unit !== undefined; unit = open.pop()) {
    if (unit !== top) units.push(unit);
    const parent = unit;
    unit.children = unit.component.children.map((component, place) => ({
      component,
      parent,
      children: [],
      place,
      look: lookOf(component),
    }));
    for (let at = unit.children.length - 1; at >= 0; at--) {
      const child = unit.children[at];
      if (child !== undefined) open.push(child);
    }
  }
  return units;
}

const lookOf = ({ level, otherLevel = '', title, dates }: Component): string => {
  let look = `${level}\n${otherLevel}\n${title}`;
  for (const { type, expression, edtf } of dates) look += `\n${type} ${edtf ?? expression}`;
  return look;
};

export function nameOf({ component: { id, referenceCode, level, title, dates } }: Unit): UnitName {
  return {
    id,
    ...(referenceCode !== undefined && { referenceCode }),
    level,
    title,
    dates: dates.map(({ expression }) => expression),
  };
}
