/** A kind of message of libxml2 (2.9 to 2.15), and how to say it to a person. */
export interface Phrase {
  engine: RegExp;
  /** `element` is the tag as people see it, `<did>`; `subject` is it, or the attribute of it; then the groups of the pattern. */
  says: (about: { element: string; subject: string }, ...found: string[]) => string;
}
