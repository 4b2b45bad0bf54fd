/** The lists of a component that has nothing in them yet. */
export const nothing = () => ({
  otherIdentifiers: [],
  dates: [],
  extents: [],
  creators: [],
  languages: [],
  containers: [],
  digitalCopies: [],
  generalNotes: [],
  people: [],
  accessPoints: [],
});
