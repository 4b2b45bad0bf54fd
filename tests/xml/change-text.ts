/** Replaces the first place that matches. A variant that changes nothing would test nothing. */
export function swap(from: string | RegExp, to: string): (text: string) => string {
  return (text) => {
    const changed = text.replace(from, to);
    if (changed === text) throw new Error(`The sample has nothing like ${from}.`);
    return changed;
  };
}

/** Moves the first element that matches to before the first place that matches `before`. */
export function move(moved: RegExp, before: RegExp): (text: string) => string {
  return (text) => {
    const found = moved.exec(text)?.[0] ?? '';
    return swap(before, `${found}$&`)(swap(moved, '')(text));
  };
}

/** Some samples hold everything on a few lines: one element a line makes their lines worth comparing. */
export const spread = (text: string) => text.replaceAll('><', '>\n<');

/** The first element of that name, with what is in it. */
export const one = (name: string) =>
  new RegExp(`<${name}(?: [^>]*)?>[\\s\\S]*?</${name}>|<${name}(?: [^>]*)?/>`);
