import type { Start } from '../catalogue/begin-template.ts';

/** Puts a question and gives the answer, blanks around it taken away; an empty one stands for what is offered. */
export type Ask = (question: string) => Promise<string>;

/** The questions with which a new catalogue begins; what an option has said is not asked. */
export async function askStart(
  given: Start,
  ask: Ask,
  prefixOf: (title: string) => string | undefined,
): Promise<Start> {
  const start: Start = { ...given };
  const put = async (key: keyof Start, question: string, offered?: string) => {
    if (start[key] !== undefined) return;
    const answer = await ask(offered === undefined ? question : `${question} [${offered}]`);
    const said = answer === '' ? offered : answer;
    if (said !== undefined) start[key] = said;
  };
  await put('title', 'What is the collection called, such as Quill family papers?');
  await put(
    'prefix',
    'With what are its reference codes to begin?',
    start.title === undefined ? undefined : prefixOf(start.title),
  );
  await put('repository', 'Who keeps it now: the family itself, or an archive?');
  return start;
}
