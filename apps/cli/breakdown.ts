/** What is said when something breaks that no document is to blame for: one sentence, and a code of its own. */
import { printable } from './terminal.ts';

/** 1 means "falls short"; a breakdown must never be taken for a verdict. */
export const BROKEN = 4;

const reasons: Readonly<Record<string, string>> = {
  ENOTDIR: 'a file stands where a folder is needed',
  EEXIST: 'a file stands where a folder is needed',
  EISDIR: 'a folder stands where a file is needed',
  EACCES: 'it may not be written or read by you',
  EPERM: 'it may not be written or read by you',
  EROFS: 'the disk can only be read',
  ENOSPC: 'the disk is full',
  EDQUOT: 'your share of the disk is full',
  ENAMETOOLONG: 'the name is too long',
  ENOENT: 'it is not there',
  EMFILE: 'too many files are open',
};

/** One sentence for a person: the file system with its path, or a fault of this program. */
export function breakdownText(error: unknown): string {
  const { code, path, syscall, message } = error as Partial<NodeJS.ErrnoException>;
  if (code !== undefined && syscall !== undefined) {
    const reason = reasons[code] ?? 'the file system refused it';
    return `${path ?? 'A file'}: ${reason} (${code}); nothing was written there, choose another place or mend this one.`;
  }
  const what = (message ?? String(error)).split('\n')[0];
  return `A fault of this program, not of your documents: ${what}; no verdict was reached, please report it with the job that shows it.`;
}

export function reportBreakdown(error: unknown): number {
  process.stderr.write(`${printable(breakdownText(error))}\n`);
  return BROKEN;
}
