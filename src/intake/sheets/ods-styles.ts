import type { OdsStyles } from './ods-table.ts';
import { attribute, scanXml } from './scan-xml.ts';
import type { Grain } from './sheet.ts';

/** Reads how styles of cells show dates, and which styles of sheets hide them (ODF 1.3 part 3, 16.29 and 20.397). */
export function readOdsStyles(
  parts: readonly { bytes: Uint8Array; name: string }[],
  file: string,
): OdsStyles {
  /** What a style of dates shows: day, month, year. */
  const shown = new Map<string, Set<string>>();
  const dataStyles = new Map<string, string>();
  const parents = new Map<string, string>();
  const hidden = new Set<string>();
  let dates: Set<string> | undefined;
  let style = '';
  for (const { bytes, name } of parts) {
    scanXml(bytes, file, name, {
      open(element, attributes, empty) {
        if (element === 'date-style') {
          dates = new Set();
          shown.set(attribute(attributes, 'name') ?? '', dates);
          if (empty) dates = undefined;
        } else if (element === 'style') {
          style = attribute(attributes, 'name') ?? '';
          const data = attribute(attributes, 'data-style-name');
          const parent = attribute(attributes, 'parent-style-name');
          if (data !== undefined) dataStyles.set(style, data);
          else if (parent !== undefined) parents.set(style, parent);
        } else if (element === 'table-properties' && attribute(attributes, 'display') === 'false') {
          hidden.add(style);
        } else dates?.add(element);
      },
      close(element) {
        if (element === 'date-style') dates = undefined;
      },
      text() {},
    });
  }
  const grains = new Map<string, Grain>();
  for (const [cell, data] of dataStyles) {
    const parts = shown.get(data);
    if (parts !== undefined) grains.set(cell, grainOf(parts));
  }
  for (const [cell, parent] of parents) {
    const grain = grains.get(parent);
    if (grain !== undefined) grains.set(cell, grain);
  }
  return { grains, hidden };
}

function grainOf(parts: ReadonlySet<string>): Grain {
  if (parts.has('day')) return parts.has('year') ? 'day' : 'no year';
  if (parts.has('year')) return parts.has('month') ? 'month' : 'year';
  return parts.has('month') ? 'no year' : 'day';
}
