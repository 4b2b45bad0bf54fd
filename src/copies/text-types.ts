// Of the control characters, text holds tabs, breaks of lines and pages, and the escape of older encodings.
const CONTROL = /[\x00-\x08\x0B\x0E-\x1A\x1C-\x1F\x7F]/;

const FIELD =
  /^(?:Return-Path|Received|Delivered-To|From|To|Subject|Date|Message-ID|MIME-Version|X-[\w-]+):/i;
// RFC 5322, 3.6: only these two must be there.
const FROM_AND_DATE = [/^From:/im, /^Date:/im];

/**
 * The type of a text by its first words, or undefined where the bytes are no text in UTF-8, UTF-16 with its mark, or
 * an encoding of one byte a letter with mostly plain letters.
 */
export function textType(head: Buffer): string | undefined {
  const text = decode(head);
  if (text === undefined || text.trim() === '') return undefined;
  const begins = text.replace(/^\uFEFF?\s*/, '');
  if (/^(?:<!--[\s\S]*?-->\s*)*<(?:!doctype\s+html|html[\s>])/i.test(begins)) return 'text/html';
  if (/^(?:<\?xml[\s\S]*?\?>\s*)?(?:<!--[\s\S]*?-->\s*|<!doctype[^>]*>\s*)*<(?:\w+:)?svg[\s>]/i.test(begins))
    return 'image/svg+xml';
  if (begins.startsWith('<?xml')) return 'application/xml';
  // RFC 4155, appendix A.
  if (/^From \S+ .*\d{4}\r?\n/.test(begins)) return 'application/mbox';
  if (FIELD.test(begins) && FROM_AND_DATE.every((field) => field.test(begins))) return 'message/rfc822';
  return 'text/plain';
}

function decode(head: Buffer): string | undefined {
  if (head[0] === 0xff && head[1] === 0xfe) return clean(new TextDecoder('utf-16le').decode(head));
  if (head[0] === 0xfe && head[1] === 0xff) return clean(new TextDecoder('utf-16be').decode(head));
  const letters = head.toString('latin1');
  if (clean(letters) === undefined) return undefined;
  try {
    // The head may end in the middle of a letter, which `stream` allows.
    return new TextDecoder('utf-8', { fatal: true }).decode(head, { stream: true });
  } catch {
    const plain = letters.length - (letters.match(/[\x80-\xFF]/g)?.length ?? 0);
    return plain >= letters.length * 0.7 ? letters : undefined;
  }
}

function clean(text: string): string | undefined {
  return CONTROL.test(text) ? undefined : text;
}
