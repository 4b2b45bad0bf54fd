import { BUILT_IN, type NumberFormat, readNumberFormat } from './number-format.ts';
import { attribute, scanXml } from './scan-xml.ts';

/** The number format of each style of cells, in the order in which cells refer to them (`s="3"`). */
export function readStyles(bytes: Uint8Array, file: string, name: string): readonly NumberFormat[] {
  const written = new Map<number, NumberFormat>();
  const styles: number[] = [];
  let inCells = false;
  scanXml(bytes, file, name, {
    open(element, attributes, empty) {
      if (element === 'numFmt') {
        const id = Number(attribute(attributes, 'numFmtId'));
        written.set(id, readNumberFormat(attribute(attributes, 'formatCode') ?? ''));
      } else if (element === 'cellXfs') inCells = !empty;
      else if (element === 'xf' && inCells) styles.push(Number(attribute(attributes, 'numFmtId') ?? 0));
    },
    close(element) {
      if (element === 'cellXfs') inCells = false;
    },
    text() {},
  });
  return styles.map((id) => {
    if (written.has(id)) return written.get(id);
    const grain = BUILT_IN[id];
    return grain === undefined ? undefined : { date: grain };
  });
}
