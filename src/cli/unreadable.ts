const REASONS: Record<string, string> = {
  ENOENT: 'There is no such file.',
  EISDIR: 'This is a folder, not a file.',
  EACCES: 'You are not permitted to read this file.',
};

/** Why a file could not be read, as a sentence. */
export function unreadable(error: NodeJS.ErrnoException): string {
  return REASONS[error.code ?? ''] ?? `The file could not be read (${error.code ?? error.message}).`;
}
