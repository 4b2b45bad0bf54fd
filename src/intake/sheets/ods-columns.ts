import { times } from './ods-times.ts';
import { attribute } from './scan-xml.ts';

/** What the columns of a sheet say of the cells in them. */
interface OdsColumns {
  /** Those that are not shown. */
  hidden: ReadonlySet<number>;
  /** Adds the next ones. */
  add(attributes: string): void;
  /** The style of cells that have none of their own. */
  styleAt(column: number): string | undefined;
}

/** A sheet may say of all the thousands of columns beyond its last one that they are not shown; so many are noted. */
const MOST_HIDDEN = 256;

/** The columns of one sheet, as its content names them, those that stand for many written out (ODF 1.3 part 3, 19.675). */
export function odsColumns(): OdsColumns {
  const hidden = new Set<number>();
  const styles: { upTo: number; style: string }[] = [];
  let columns = 0;
  return {
    hidden,
    add(attributes) {
      const many = times(attributes, 'number-columns-repeated');
      const shown = attribute(attributes, 'visibility') ?? 'visible';
      const end = columns + Math.min(many, MOST_HIDDEN);
      for (let at = columns; shown !== 'visible' && at < end; at++) hidden.add(at);
      columns += many;
      const style = attribute(attributes, 'default-cell-style-name');
      if (style !== undefined) styles.push({ upTo: columns, style });
    },
    styleAt: (column) => styles.find(({ upTo }) => column < upTo)?.style,
  };
}
