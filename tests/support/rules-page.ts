import { RULES } from '../../src/review/rules.ts';

/** `docs/rules.md`: every rule of `kinfonds check`, by family, with its weight and what it rests on. */
export function rulesPage(): string {
  const lines = [
    '# The rules of `kinfonds check`',
    '',
    'Made from `src/review/rules.ts`. What stops the reading of a file altogether is not listed: it is said where it is',
    'found. *must* stands in the way of handing a collection over; *should* and *consider* do not; *caution* is a danger',
    'to people, to privacy or to the things, where a conservator, the receiving archive or a local authority decides.',
  ];
  for (const [family, rules] of Object.entries(RULES)) {
    lines.push('', `## ${family}`, '', '| rule | weight | when | after |', '|---|---|---|---|');
    for (const { rule, weight, when, source = '' } of rules) {
      lines.push(`| \`${rule}\` | ${weight} | ${when} | ${source} |`);
    }
  }
  return `${lines.join('\n')}\n`;
}
