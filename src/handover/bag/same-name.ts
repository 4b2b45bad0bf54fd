/**
 * Two names with the same key cannot lie side by side on some system: they differ only in case, or in how an accent is
 * written (Unicode normalisation), or in characters that nobody sees.
 */
export function nameKey(name: string): string {
  return (
    name
      .normalize('NFD')
      .replace(/\p{Default_Ignorable_Code_Point}+/gu, '')
      // Twice: the capital sharp s becomes the small one, and only that becomes SS.
      .toLowerCase()
      .toUpperCase()
      .toLowerCase()
      .normalize('NFC')
  );
}

/** What systems put into folders by themselves (from memory); it holds nothing of anybody's papers. */
const OF_THE_SYSTEM = /^(?:\.ds_store|\._.*|thumbs\.db|ehthumbs\.db|desktop\.ini|icon\r)$/i;

/** Whether a file is one that the system made by itself, to judge by its name. */
export function isOfTheSystem(path: string): boolean {
  return OF_THE_SYSTEM.test(path.slice(path.lastIndexOf('/') + 1));
}
