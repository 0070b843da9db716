const words: Readonly<Record<string, string>> = {
  EISDIR: 'it is a folder',
  ENOTDIR: 'a part of the path is a file, not a folder',
  EEXIST: 'a file stands where the folder should be',
  EACCES: 'access is denied',
  EPERM: 'access is denied',
  EROFS: 'the disk cannot be written to',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk is full',
  ELOOP: 'it is a link that leads to itself',
  ENXIO: 'it is a pipe or a device, not a file',
  EIO: 'the disk does not answer',
};

/** Why the system refused a file, in words; never its own message, which names paths of the machine. */
export function reasonOf(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  return code === undefined ? message : (words[code] ?? `the system refuses it (${code})`);
}
