import { HtmlValidate } from 'html-validate';

// The rules of the HTML Standard as the validator knows them; its preset of house style is left out.
const validator = new HtmlValidate({ extends: ['html-validate:standard'] });

/** What is wrong with a page, a line each. */
export async function faults(page: string): Promise<string[]> {
  const { results } = await validator.validateString(page);
  return results.flatMap(({ messages }) =>
    messages.map(({ ruleId, message, line, column }) => `${line}:${column} ${ruleId}: ${message}`),
  );
}
