/** A title begins with a capital letter. */
export function capitalised(text: string): string {
  return text.charAt(0).toLocaleUpperCase('en') + text.slice(1);
}
