/** A text with a capital letter at its beginning, as a title has it. */
export const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
