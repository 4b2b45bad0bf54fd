const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'There is no such file.',
  EISDIR: 'This is a folder, not a file.',
  EACCES: 'You are not permitted to read this file.',
  EPERM: 'You are not permitted to read this file.',
};

/** Why a file could not be read, as a sentence. */
export function whyUnreadable(error: unknown): string {
  const { code } = error as NodeJS.ErrnoException;
  return REASONS[code ?? ''] ?? `The file could not be read (${code ?? String(error)}).`;
}
