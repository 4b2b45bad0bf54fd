import { addTo } from '../../catalogue/add-to.ts';
import type { Finding } from '../../catalogue/finding.ts';
import { nameKey } from './same-name.ts';
import type { Tree } from './tree.ts';

/**
 * Finds a file under another form of its name: in case, in Unicode normalisation, in what is encoded by per cent. Between
 * being packed and being verified a bag may have been on a system that keeps names in another form.
 */
export function otherForms(tree: Tree): (path: string, written: string) => string | undefined {
  let forms: Map<string, string[]> | undefined;
  return (path, written) => {
    if (tree.files.has(written)) return written;
    forms ??= byKey(tree.files.keys());
    const alike = forms.get(nameKey(path)) ?? [];
    return alike.length === 1 ? alike[0] : alike.find((there) => there.normalize() === path.normalize());
  };
}

function byKey(paths: Iterable<string>): Map<string, string[]> {
  const forms = new Map<string, string[]>();
  for (const path of paths) addTo(forms, nameKey(path), path);
  return forms;
}

/**
 * Says that a file was found under another form of its name.
 * @param already the path that is listed for the same file, where there is one
 */
export function foundInOtherForm(path: string, foundAs: string, already: string | undefined): Finding {
  const how =
    path.normalize() === foundAs.normalize() ? 'in how its accents are written' : 'in case or encoding';
  const found =
    already === undefined
      ? `The file was found as ${foundAs}, which differs ${how}; strict checkers say that it is missing.`
      : `It is listed beside ${already} and differs from it ${how} only; here the two are one file.`;
  // RFC 8493, 6: on names that systems hold for the same (the section from memory).
  return { rule: 'bag.other-form', weight: 'should', place: { file: path }, found, source: 'RFC 8493, 6' };
}

/** Says of payload files which of them cannot lie side by side on some systems, though they do on this. */
export function* sameElsewhere(tree: Tree): Generator<Finding> {
  for (const [first = '', ...others] of byKey(tree.files.keys()).values()) {
    for (const file of others) {
      const found = `Its name differs from ${first} in case or in how its accents are written only; on some systems one would replace the other.`;
      yield { rule: 'bag.same-elsewhere', weight: 'consider', place: { file }, found, source: 'RFC 8493, 6' };
    }
  }
}
