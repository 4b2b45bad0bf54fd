import { once } from '../../catalogue/once.ts';
import { id } from '../../catalogue/text.ts';

const fits = once((text: string) => id.safeParse(text).success);

/** Whether the model can hold an id as it is. */
export const isId = (text: string | undefined): text is string => text !== undefined && fits(text);
